import type { SiteIndex } from '../model/site-index.ts';
import { checkLift } from './check-lift.ts';
import type { Lift } from './lift-case.ts';
import { type LiftAnswer, VERDICTS } from './step.ts';

/**
 * Which truck of the site should take this load? One answer per truck, best first.
 *
 * clear, thin, unproven, refuse; within a verdict the largest margin: the most kilograms beyond this load (mostKg,
 * since all trucks are asked about one load), those that cannot be said last; then the order of the site.
 */
export function rankTrucks(index: SiteIndex, lift: Omit<Lift, 'truck'>): LiftAnswer[] {
  return index.site.trucks
    .map((truck) => checkLift(index, { ...lift, truck }))
    .sort((a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || spareFirst(a, b));
}

function spareFirst(a: LiftAnswer, b: LiftAnswer): number {
  return (b.mostKg ?? -1) - (a.mostKg ?? -1);
}
