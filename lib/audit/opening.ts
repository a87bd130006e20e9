import { clearancesFor } from '../check/clearances.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { makeFinding, ruleSource, stepFigures } from './make-finding.ts';

/**
 * Which stored loads are too tall for the opening they stand in? The step `opening-height` of placing them back there.
 *
 * `stop` where not even the clearance Y of the standard is there (load height + Y > opening): it cannot be lifted off
 * without the risk of striking the beam above. `plan` where only the site's placing clearance is missing.
 */
export function tooTall({ index, notClear }: AuditCase): Finding[] {
  return notClear.flatMap(({ place, load, steps }) => {
    const step = steps.get('opening-height')!;
    if (step.outcome !== 'fail' || typeof step.have !== 'number') return [];
    const { yMm } = clearancesFor(index.policy.clearanceClass, place.level.beamTopMm, load.heightMm);
    return makeFinding({
      kind: 'load-too-tall',
      severity: load.heightMm + yMm > step.have ? 'stop' : 'plan',
      subject: { of: 'stored-load', location: place.id, load: load.id },
      figures: stepFigures(step),
      source: ruleSource('opening-height'),
      advice: 'move-to-taller-opening',
    });
  });
}

/**
 * Which stored loads are too wide for a full row of them in their bay? The step `opening-width`.
 *
 * `stop` where this load alone with its clearance at each side is wider than the bay (width + 2 X3 > clear width);
 * else `plan`: the row cannot be filled with them, though fewer may stand there.
 */
export function tooWide({ index, notClear }: AuditCase): Finding[] {
  return notClear.flatMap(({ place, load, steps }) => {
    const step = steps.get('opening-width')!;
    if (step.outcome !== 'fail') return [];
    const { x3Mm } = clearancesFor(index.policy.clearanceClass, place.level.beamTopMm, load.heightMm);
    return makeFinding({
      kind: 'load-too-wide',
      severity: load.widthMm + 2 * x3Mm > place.bay.clearWidthMm ? 'stop' : 'plan',
      subject: { of: 'stored-load', location: place.id, load: load.id },
      figures: stepFigures(step),
      source: ruleSource('opening-width'),
      advice: 'move-to-wider-bay',
    });
  });
}
