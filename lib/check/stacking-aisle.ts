import type { Truck, TruckKind } from '../model/truck.ts';

/** What the sweep of a truck with a load depends on. */
export type Sweep = { loadDepthMm: number; loadWidthMm: number; aisleClearanceMm: number };

/**
 * The aisle a truck needs to turn square into the face; or why it cannot be said, and the maker's stated aisle, which
 * is the least that it can be.
 */
export type StackingAisle =
  | { kind: 'known'; mm: number; by: 'formula' | 'stated'; formulaMm: number | null }
  | { kind: 'unknown'; cause: 'no-turning-data' | 'load-inside-wheels'; atLeastMm: number | null };

/**
 * How wide an aisle does this truck need with this load, mm?
 *
 * By the formula for its kind, and never less than the maker's statedAisleMm where there is one. Order pickers and
 * narrow-aisle trucks are never reckoned: statedAisleMm alone. A reach truck or stacker with a load no deeper than its
 * load distance (equality included) has its legs, of unstated size, sweep: unknown, though no less than what is stated.
 * Source: VDI 2198 / FEM 4.005 (from memory).
 */
export function stackingAisle(truck: Truck, sweep: Sweep): StackingAisle {
  const stated = truck.statedAisleMm;
  if (!isReckoned(truck.kind) || truck.turning === null) {
    if (stated === null) return { kind: 'unknown', cause: 'no-turning-data', atLeastMm: null };
    return { kind: 'known', mm: stated, by: 'stated', formulaMm: null };
  }
  const straddles = truck.kind !== 'counterbalance';
  if (straddles && sweep.loadDepthMm <= truck.turning.loadDistanceMm) {
    return { kind: 'unknown', cause: 'load-inside-wheels', atLeastMm: stated };
  }
  const formulaMm = straddles
    ? straddleAisleMm(truck.turning, sweep)
    : counterbalanceAisleMm(truck.turning, sweep);
  const statedCounts = stated !== null && stated > formulaMm;
  return {
    kind: 'known',
    mm: statedCounts ? stated : formulaMm,
    by: statedCounts ? 'stated' : 'formula',
    formulaMm,
  };
}

/**
 * What is there to hold against an aisle of this clear width, mm? The aisle that is needed; where that cannot be said,
 * the least that it can be, if the aisle is narrower even than that (the truck certainly cannot turn); else null.
 */
export function certainAisleMm(needed: StackingAisle, clearWidthMm: number): number | null {
  if (needed.kind === 'known') return needed.mm;
  return needed.atLeastMm !== null && needed.atLeastMm > clearWidthMm ? needed.atLeastMm : null;
}

function isReckoned(kind: TruckKind): boolean {
  return kind === 'counterbalance' || kind === 'reach' || kind === 'stacker';
}

type Turning = NonNullable<Truck['turning']>;

/**
 * Wa + x + l6 + a where b12 <= 2 b13 (equality included); else Wa + sqrt((l6 + x)^2 + (b12/2 - b13)^2) + a, never
 * less than the former.
 */
export function counterbalanceAisleMm(turning: Turning, sweep: Sweep): number {
  const { outsideRadiusMm, loadDistanceMm, insideOffsetMm } = turning;
  const { loadDepthMm, loadWidthMm, aisleClearanceMm } = sweep;
  const straight = outsideRadiusMm + loadDistanceMm + loadDepthMm + aisleClearanceMm;
  if (loadWidthMm <= 2 * insideOffsetMm) return straight;
  const along = loadDepthMm + loadDistanceMm;
  const across = loadWidthMm / 2 - insideOffsetMm;
  return Math.max(straight, outsideRadiusMm + Math.sqrt(along * along + across * across) + aisleClearanceMm);
}

/** Wa + sqrt((l6 - x)^2 + (b12/2)^2) + a, for trucks whose load travels between or behind the load wheels. */
export function straddleAisleMm(turning: Turning, sweep: Sweep): number {
  const along = sweep.loadDepthMm - turning.loadDistanceMm;
  const across = sweep.loadWidthMm / 2;
  return turning.outsideRadiusMm + Math.sqrt(along * along + across * across) + sweep.aisleClearanceMm;
}
