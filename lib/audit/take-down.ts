import { UNKNOWN_KG } from '../grid/load-columns.ts';
import type { LocationSummary } from '../grid/summary.ts';
import { UNPROVEN } from '../grid/tally.ts';
import type { AuditCase, StoredLoad } from './audit-case.ts';

/**
 * How many of these trucks can take a stored load down? Those for which the lift is clear or thin.
 *
 * A pallet that was never weighed is unproven for all of them; `once-weighed` says that one of them could take it if it
 * were light enough: then weighing is what is missing, not a truck.
 */
export function takers(
  { site }: AuditCase,
  summary: LocationSummary,
  { at }: StoredLoad,
): { kind: 'counted'; count: number } | { kind: 'once-weighed' } {
  const weighed = site.loads.assessedKg[site.standing[at]!] !== UNKNOWN_KG;
  if (!weighed && summary.best[at] === UNPROVEN && summary.bestMostKg[at]! > 0)
    return { kind: 'once-weighed' };
  return { kind: 'counted', count: summary.clear[at]! + summary.thin[at]! };
}

/** How many stored loads no truck, one truck or more can take down; and those that must be weighed before it can be said. */
export type TakeDownCounts = { none: number; one: number; more: number; unweighed: number };

export function countTakeDown(audit: AuditCase, summary: LocationSummary): TakeDownCounts {
  const counts: TakeDownCounts = { none: 0, one: 0, more: 0, unweighed: 0 };
  for (const one of audit.stored) {
    const by = takers(audit, summary, one);
    if (by.kind === 'once-weighed') counts.unweighed += 1;
    else counts[by.count === 0 ? 'none' : by.count === 1 ? 'one' : 'more'] += 1;
  }
  return counts;
}
