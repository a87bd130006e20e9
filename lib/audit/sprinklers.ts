import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { makeFinding, ruleSource, stepFigures } from './make-finding.ts';

/** 18 in: no storage sprinkler works with less above the goods (NFPA 13, standard spray; from memory). */
export const LEAST_SPRINKLER_CLEARANCE_MM = 457;

/**
 * Which stored loads come too near the sprinklers? The step `sprinkler-clearance`, on the top level of a bay.
 *
 * `stop` where less than 457 mm is left, which no kind of storage sprinkler is good for; else `plan`.
 */
export function nearSprinklers({ notClear }: AuditCase): Finding[] {
  return notClear.flatMap(({ place, load, steps }) => {
    const step = steps.get('sprinkler-clearance')!;
    if (step.outcome !== 'fail' || typeof step.have !== 'number') return [];
    const topMm = place.level.beamTopMm + load.heightMm;
    return makeFinding({
      kind: 'near-sprinklers',
      severity: topMm + LEAST_SPRINKLER_CLEARANCE_MM > step.have ? 'stop' : 'plan',
      subject: { of: 'stored-load', location: place.id, load: load.id },
      figures: stepFigures(step),
      source: ruleSource('sprinkler-clearance'),
      advice: 'lower-the-top',
    });
  });
}
