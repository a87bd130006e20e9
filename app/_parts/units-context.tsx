'use client';

import { createContext, type ReactNode, useContext } from 'react';
import type { ShownUnits } from '@/app/_parts/units-cookie.ts';

const UnitsContext = createContext<ShownUnits>('metric');

export function UnitsProvider({ units, children }: { units: ShownUnits; children: ReactNode }) {
  return <UnitsContext.Provider value={units}>{children}</UnitsContext.Provider>;
}

/** The units that client parts show figures in; server parts call readUnits. */
export function useUnits(): ShownUnits {
  return useContext(UnitsContext);
}
