import { instantMs } from '../model/quantities.ts';
import type { SiteIndex } from '../model/site-index.ts';
import type { Check, Truck } from '../model/truck.ts';

/** Is a truck fit for service at a moment, and on the strength of which check? */
export type TruckFitState =
  | { state: 'in service' | 'check failed' | 'check too old'; check: Check }
  | { state: 'held' | 'never checked'; check: null };

const MS_PER_HOUR = 3_600_000;

/**
 * Any hold: held. Else the newest check at or before asOfMs decides: failed, or older than checkValidHours (an age of
 * exactly that still counts), or in service. Of several checks at the same moment a failed one decides.
 */
export function truckFitState(index: SiteIndex, truck: Truck, asOfMs: number): TruckFitState {
  if (truck.hold !== null) return { state: 'held', check: null };
  const check = newestCheck(index.checksOf.get(truck.id) ?? [], asOfMs);
  if (check === null) return { state: 'never checked', check: null };
  if (check.result === 'fail') return { state: 'check failed', check };
  const ageMs = asOfMs - instantMs(check.at);
  return {
    state: ageMs <= index.policy.checkValidHours * MS_PER_HOUR ? 'in service' : 'check too old',
    check,
  };
}

function newestCheck(oldestFirst: readonly Check[], asOfMs: number): Check | null {
  let newest: Check | null = null;
  for (const check of oldestFirst) {
    if (instantMs(check.at) > asOfMs) break;
    const sameMoment = newest !== null && instantMs(newest.at) === instantMs(check.at);
    if (!(sameMoment && newest?.result === 'fail')) newest = check;
  }
  return newest;
}
