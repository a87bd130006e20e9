import { instantMs } from '@/lib/model/quantities.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

const HOUR_MS = 3_600_000;

/**
 * When was the last walk-round of any truck, if all are too old to count at a time? Then no truck can be clear, and a
 * reader should know why. null when one still counts (an age of exactly checkValidHours does), or none was ever made.
 */
export function lastStaleCheck(index: SiteIndex, nowIso: string): string | null {
  const nowMs = instantMs(nowIso);
  let last: string | null = null;
  for (const check of index.site.checks) {
    if (instantMs(check.at) > nowMs) continue;
    if (last === null || instantMs(check.at) > instantMs(last)) last = check.at;
  }
  if (last === null) return null;
  return nowMs - instantMs(last) > index.policy.checkValidHours * HOUR_MS ? last : null;
}
