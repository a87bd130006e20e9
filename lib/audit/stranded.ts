import type { Step } from '../check/step.ts';
import { NO_TRUCK } from '../grid/summary.ts';
import { type AuditCase, governingStep, takeDown } from './audit-case.ts';
import type { StoredLoad } from './back-in-place.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource, stepFigures, stepSource } from './make-finding.ts';
import { type Takers, takersOf } from './take-down.ts';

/**
 * Which stored loads can no truck take down?
 *
 * `stranded-for-fleet`: none of the site's trucks, even if all were fit. `stop` where the nearest of them breaks a
 * rule or its plate does not reach so far; `plan` where facts are missing that somebody may yet enter. The figures are
 * those of what stands against that truck.
 * `stranded`: one could, but none that may be used at the time asked about: `plan`. Asked only with a time.
 */
export function stranded(audit: AuditCase): Finding[] {
  const byFleet = takersOf(audit, audit.fleet);
  const byFit = audit.fit === null ? null : takersOf(audit, audit.fit);
  return audit.stored.flatMap((one, at) => {
    if (isNone(byFleet[at]!)) return strandedForFleet(audit, one);
    return byFit !== null && isNone(byFit[at]!) ? untilOneIsFit(audit, one) : [];
  });
}

function isNone(by: Takers): boolean {
  return by.kind === 'counted' && by.count === 0;
}

function strandedForFleet(audit: AuditCase, one: StoredLoad): Finding {
  const subject = { of: 'stored-load', location: one.place.id, load: one.load.id } as const;
  const column = audit.fleet.bestTruck[one.at]!;
  if (column === NO_TRUCK) {
    return makeFinding({
      kind: 'stranded-for-fleet',
      severity: 'plan',
      subject,
      figures: figuresOf(1, 0, 'trucks'),
      source: ruleSource('truck-fit'),
      advice: 'bring-in-a-truck',
    });
  }
  const answer = takeDown(audit, one, audit.index.site.trucks[column]!);
  const step = governingStep(answer);
  const beyond = answer.verdict === 'refuse' || answer.steps.some(isBeyondPlate);
  return makeFinding({
    kind: 'stranded-for-fleet',
    severity: beyond ? 'stop' : 'plan',
    subject,
    figures: stepFigures(step),
    source: stepSource(step),
    advice: beyond ? 'bring-in-a-truck' : 'enter-missing-facts',
    truck: answer.truck,
  });
}

/** A plate that does not reach so far is no missing fact: it is what the maker grants. */
function isBeyondPlate({ outcome, cause }: Step): boolean {
  return outcome === 'unknown' && (cause === 'height-beyond-plate' || cause === 'load-centre-beyond-plate');
}

function untilOneIsFit(audit: AuditCase, one: StoredLoad): Finding {
  return makeFinding({
    kind: 'stranded',
    severity: 'plan',
    subject: { of: 'stored-load', location: one.place.id, load: one.load.id },
    figures: figuresOf(1, 0, 'trucks'),
    source: ruleSource('truck-fit'),
    advice: 'return-a-truck-to-service',
    truck: audit.index.site.trucks[audit.fleet.bestTruck[one.at]!]!.id,
  });
}
