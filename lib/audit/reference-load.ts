import type { Load } from '../model/load.ts';
import type { Reference } from './audit-case.ts';

/**
 * The load that every location is tried with unless another is given: 1 000 kg on a 1200 x 800 mm pallet, 1000 mm high
 * with it. Our choice: policy names none, and the EUR footprint with the common one-tonne pallet is what racks and
 * trucks are most often sold for (common practice).
 */
export const DEFAULT_REFERENCE: Reference = { massKg: 1000, depthMm: 1200, widthMm: 800, heightMm: 1000 };

/** The reference as a load: weighed, uniform, entered at 100 mm as a load without a pallet type is. */
export function referenceLoad({ massKg, depthMm, widthMm, heightMm }: Reference): Load {
  return {
    id: 'reference',
    name: 'Reference load',
    palletType: null,
    items: null,
    grossKg: massKg,
    massBasis: 'weighed',
    depthMm,
    widthMm,
    heightMm,
    centreFromHeelMm: null,
    centreHeightMm: null,
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}
