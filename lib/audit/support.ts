import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { makeFinding, ruleSource, stepFigures } from './make-finding.ts';

/** Which stored pallets do not reach both beams? The step `pallet-support`: such a pallet can fall between them. */
export function underSupported({ notClear }: AuditCase): Finding[] {
  return notClear.flatMap(({ place, load, steps }) => {
    const step = steps.get('pallet-support')!;
    if (step.outcome !== 'fail') return [];
    return makeFinding({
      kind: 'under-supported',
      severity: 'stop',
      subject: { of: 'stored-load', location: place.id, load: load.id },
      figures: stepFigures(step),
      source: ruleSource('pallet-support'),
      advice: 'deck-or-move',
    });
  });
}
