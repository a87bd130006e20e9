import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';
import { takersOf } from './take-down.ts';

/**
 * Which stored loads can only one truck take down, so that its loss strands them? Counted among the trucks that may be
 * used at the time asked about, or, without a time, among all.
 */
export function oneTruck(audit: AuditCase): Finding[] {
  const answer = audit.fit ?? audit.fleet;
  const takers = takersOf(audit, answer);
  return audit.stored.flatMap((one, at) => {
    const by = takers[at]!;
    if (by.kind !== 'counted' || by.count !== 1) return [];
    return makeFinding({
      kind: 'one-truck',
      severity: 'plan',
      subject: { of: 'stored-load', location: one.place.id, load: one.load.id },
      figures: figuresOf(2, 1, 'trucks'),
      source: ruleSource('truck-fit'),
      advice: 'keep-that-truck-running',
      truck: audit.index.site.trucks[answer.bestTruck[one.at]!]!.id,
    });
  });
}
