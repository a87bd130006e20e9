import { assessedMassKg } from '../model/load.ts';
import type { Bay, Level } from '../model/racking.ts';
import { palletOf, type SiteIndex } from '../model/site-index.ts';

/**
 * Which standing pallets count: with `as-is` all but the one at `from` (the pallet that is being moved, if any);
 * with `empty` none.
 */
export type StockView = { stock: 'as-is' | 'empty'; from: string | null };

/** What stands somewhere: how many pallets, and their assessed mass; null when one of them has no known mass. */
export type Standing = { count: number; kg: number | null };

export const NOTHING_STANDS: Standing = { count: 0, kg: 0 };

/**
 * What stands on one level (both rows of a double-deep level)?
 *
 * One canonical order, so that every engine gets the same double: level = running sum from 0 over its locations as
 * the site lists them; bay = running sum from 0 over its beam levels as listed; frame = left bay + right bay; a load
 * that is being placed is added last.
 */
export function standingOnLevel(index: SiteIndex, level: Level, view: StockView): Standing {
  if (view.stock === 'empty') return NOTHING_STANDS;
  let count = 0;
  let kg: number | null = 0;
  for (const location of level.locations) {
    if (location === view.from) continue;
    const load = index.stockAt.get(location);
    if (load === undefined) continue;
    count += 1;
    const mass = assessedMassKg(load, palletOf(index, load), index.policy);
    kg = kg === null || mass === null ? null : kg + mass;
  }
  return { count, kg };
}

/** What stands on the beam levels of a bay? Its floor does not load the beams or the frames. */
export function standingOnBay(index: SiteIndex, bay: Bay, view: StockView): Standing {
  let sum = NOTHING_STANDS;
  for (const level of bay.levels) {
    if (level.level === 0) continue;
    sum = addStanding(sum, standingOnLevel(index, level, view));
  }
  return sum;
}

/** The two together, the left one first; unknown if either is. */
export function addStanding(left: Standing, right: Standing): Standing {
  return {
    count: left.count + right.count,
    kg: left.kg === null || right.kg === null ? null : left.kg + right.kg,
  };
}

/**
 * How much may still be added to what stands before a limit is passed, kg? limitKg - othersKg, never below 0.
 *
 * Stepped down by one bit where rounding would make othersKg + room exceed limitKg, so that the answer itself passes
 * the comparison it comes from.
 */
export function roomKg(limitKg: number, othersKg: number): number {
  let room = limitKg - othersKg;
  while (room > 0 && othersKg + room > limitKg) room *= 1 - Number.EPSILON;
  return Math.max(0, room);
}
