import type { Run } from '../model/racking.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { frameLoad } from '../rack/frame-load.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';

/**
 * Which facts does a load notice, a frame table or a survey lack?
 *
 * - a beam level without pair capacity: nothing can be proven there (`plan`);
 * - a bay or unit limit that other bays or beam levels of the same run state and this one does not (`note`: a notice
 *   may state none, and then none is asked);
 * - a gap between beams that the frame's table does not reach (`plan`);
 * - an aisle whose overhead height or sprinklers nobody surveyed (`plan` where site policy must know it, else `note`).
 *
 * A notice older than the last change of beam heights is not found: the facts for that are not in a site.
 */
export function missingNoticeFacts(audit: AuditCase): Finding[] {
  return [
    ...audit.index.site.runs.flatMap((run) => [...limitsOf(run), ...framesOf(audit, run)]),
    ...aislesOf(audit),
  ];
}

function limitsOf(run: Run): Finding[] {
  const bayStated = run.bays.some((bay) => bay.maxBayLoadKg !== null);
  const unitStated = run.bays.some((bay) => bay.levels.some(({ maxUnitKg }) => maxUnitKg !== null));
  return run.bays.flatMap((bay) => {
    const beamLevels = bay.levels.filter(({ level }) => level > 0);
    const findings: Finding[] = [];
    if (bayStated && bay.maxBayLoadKg === null && beamLevels.length > 0) {
      const subject = { of: 'bay', run: run.id, bay: bay.id } as const;
      findings.push(lacking('bay-limit-missing', 'note', subject, 'bay-load', 'notice-states-none'));
    }
    for (const { level, pairCapacityKg, maxUnitKg } of beamLevels) {
      const subject = { of: 'level', run: run.id, bay: bay.id, level } as const;
      if (pairCapacityKg === null) {
        findings.push(
          lacking('pair-capacity-missing', 'plan', subject, 'beam-level', 'pair-capacity-unknown'),
        );
      }
      if (unitStated && maxUnitKg === null) {
        findings.push(lacking('unit-limit-missing', 'note', subject, 'unit-load', 'notice-states-none'));
      }
    }
    return findings;
  });
}

function lacking(
  kind: 'bay-limit-missing' | 'pair-capacity-missing' | 'unit-limit-missing',
  severity: Finding['severity'],
  subject: Finding['subject'],
  rule: RuleId,
  cause: 'notice-states-none' | 'pair-capacity-unknown',
): Finding {
  return makeFinding({
    kind,
    severity,
    subject,
    figures: figuresOf(null, null, 'kg'),
    source: ruleSource(rule, cause),
    advice: 'ask-for-the-notice',
  });
}

function framesOf({ index }: AuditCase, run: Run): Finding[] {
  return run.frames.flatMap((frame, at) => {
    const { largestGapMm, rating } = frameLoad(index, run, at, { stock: 'empty', from: null });
    if (largestGapMm === null || rating !== null) return [];
    const ratings = index.frameTypes.get(frame.typeId)!.ratings;
    const longestMm = ratings.length === 0 ? null : Math.max(...ratings.map(({ maxGapMm }) => maxGapMm));
    return makeFinding({
      kind: 'frame-gap-beyond-ratings',
      severity: 'plan',
      subject: { of: 'frame', run: run.id, frame: frame.id },
      figures: figuresOf(largestGapMm, longestMm, 'mm'),
      source: ruleSource('frame-load', 'gap-beyond-frame-ratings'),
      advice: 'ask-the-maker-about-the-gap',
    });
  });
}

function aislesOf({ index }: AuditCase): Finding[] {
  const used = new Set(index.site.runs.map(({ aisleId }) => aisleId));
  return index.site.aisles.flatMap(({ id, overheadClearMm, sprinklerMm }) => {
    if (!used.has(id)) return [];
    const findings: Finding[] = [];
    if (overheadClearMm === null) {
      findings.push(notSurveyed(index.policy, id, 'mast', 'mast-overhead', 'overhead-not-surveyed'));
    }
    if (sprinklerMm === null) {
      findings.push(
        notSurveyed(index.policy, id, 'sprinklers', 'sprinkler-clearance', 'sprinkler-not-surveyed'),
      );
    }
    return findings;
  });
}

function notSurveyed(
  policy: AuditCase['index']['policy'],
  aisle: string,
  overhead: 'mast' | 'sprinklers',
  rule: RuleId,
  cause: 'overhead-not-surveyed' | 'sprinkler-not-surveyed',
): Finding {
  return makeFinding({
    kind: 'aisle-not-surveyed',
    severity: policy.mustKnow.includes(rule) ? 'plan' : 'note',
    subject: { of: 'aisle', aisle, overhead },
    figures: figuresOf(null, null, 'mm'),
    source: ruleSource(rule, cause),
    advice: 'survey-the-aisle',
  });
}
