'use client';

import { createContext, type ReactNode, useContext } from 'react';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

const UnitsContext = createContext<DisplayUnits>('metric');

export function UnitsProvider({ units, children }: { units: DisplayUnits; children: ReactNode }) {
  return <UnitsContext.Provider value={units}>{children}</UnitsContext.Provider>;
}

/** The units that client parts show figures in; server parts call readUnits. */
export function useUnits(): DisplayUnits {
  return useContext(UnitsContext);
}
