import { assessedMassKg, entryHeightMm, type Load, loadCentreMm, type PalletType } from '../model/load.ts';
import type { Policy } from '../model/policy.ts';
import { instantMs } from '../model/quantities.ts';
import type { Aisle } from '../model/racking.ts';
import { found, type Place, palletOf, type SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import type { StockView } from '../rack/stand.ts';
import type { Context } from './step.ts';

/** What one lift check is asked about. */
export type Lift = { load: Load; truck: Truck; place: Place; context: Context };

/** A lift with what several rules need from it, worked out once. */
export type LiftCase = Lift & {
  index: SiteIndex;
  policy: Policy;
  pallet: PalletType | null;
  aisle: Aisle;
  /** Which standing pallets count in sums. */
  view: StockView;
  /** null: no time given. */
  asOfMs: number | null;
  /** null: the load's mass is not known. */
  assessedKg: number | null;
  loadCentreMm: number;
  entryMm: number;
  /** Height of the fork's top face needed at this level: beam top + entry + placing clearance. */
  liftMm: number;
};

/** Resolves a lift. Throws when asOf is not a time or when an id does not resolve (a bug of the caller). */
export function makeLiftCase(index: SiteIndex, lift: Lift): LiftCase {
  const { load, place, context } = lift;
  const pallet = palletOf(index, load);
  const entryMm = entryHeightMm(pallet);
  const asOfMs = context.asOf === null ? null : instantMs(context.asOf);
  if (Number.isNaN(asOfMs)) throw new Error(`asOf is not an ISO 8601 time: ${context.asOf}`);
  if (context.from !== null) found(index.places, context.from, 'location');
  return {
    ...lift,
    index,
    policy: index.policy,
    pallet,
    aisle: found(index.aisles, place.run.aisleId, 'aisle'),
    view: { stock: context.stock, from: context.from },
    asOfMs,
    assessedKg: assessedMassKg(load, pallet, index.policy),
    loadCentreMm: loadCentreMm(load),
    entryMm,
    liftMm: liftHeightMm(place.level.beamTopMm, entryMm, index.policy.placingClearanceMm),
  };
}

/**
 * How high must the fork's top face go to set down or take up at a level, mm?
 *
 * beamTopMm + entryMm + placingClearanceMm, added in that order.
 */
export function liftHeightMm(beamTopMm: number, entryMm: number, placingClearanceMm: number): number {
  return beamTopMm + entryMm + placingClearanceMm;
}
