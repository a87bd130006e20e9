import { EMPTY, NO_BAY } from '../grid/compiled-site.ts';
import { UNKNOWN_KG } from '../grid/load-columns.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource, stepFigures } from './make-finding.ts';

/**
 * Which pallet is heavier than the notice allows for one unit load? assessed > maxUnitKg, as the step `unit-load` of
 * the lift check says; equality passes.
 */
export function unitOverloads({ notClear }: AuditCase): Finding[] {
  return notClear.flatMap(({ place, load, steps }) => {
    const step = steps.get('unit-load')!;
    if (step.outcome !== 'fail') return [];
    return makeFinding({
      kind: 'unit-overload',
      severity: 'stop',
      subject: { of: 'stored-load', location: place.id, load: load.id },
      figures: stepFigures(step),
      source: ruleSource('unit-load'),
      advice: 'take-load-off',
    });
  });
}

/** What stands somewhere: the sum of the masses that are known, and how many pallets have none. */
type Weighed = { knownKg: number; unweighed: number };

/**
 * Which beam pairs, bays and frames carry more than their notice or frame table allows? The sums of lib/rack in their
 * order; equality passes; a frame carries half of the bays beside it. Pallets of unknown mass count as nothing: where
 * the rest alone is too much, that is an overload whatever they weigh.
 */
export function rackOverloads(audit: AuditCase): Finding[] {
  const { site } = audit;
  const levels = site.levels.map((level, row) => (level.level === 0 ? NOTHING : weighLevel(audit, row)));
  const bays = site.bays.map((_, bay) => sumBay(levels, site.firstLevel[bay]!, site.firstLevel[bay + 1]!));
  return [...levelOverloads(audit, levels), ...bayOverloads(audit, bays), ...frameOverloads(audit, bays)];
}

const NOTHING: Weighed = { knownKg: 0, unweighed: 0 };

function weighLevel({ site }: AuditCase, level: number): Weighed {
  let knownKg = 0;
  let unweighed = 0;
  for (let at = site.firstLocation[level]!; at < site.firstLocation[level + 1]!; at += 1) {
    const load = site.standing[at]!;
    if (load === EMPTY) continue;
    const kg = site.loads.assessedKg[load]!;
    if (kg === UNKNOWN_KG) unweighed += 1;
    else knownKg += kg;
  }
  return { knownKg, unweighed };
}

function sumBay(levels: readonly Weighed[], first: number, end: number): Weighed {
  let sum = NOTHING;
  for (let level = first; level < end; level += 1) sum = both(sum, levels[level]!);
  return sum;
}

function both(left: Weighed, right: Weighed): Weighed {
  return { knownKg: left.knownKg + right.knownKg, unweighed: left.unweighed + right.unweighed };
}

function overload(
  on: Pick<Finding, 'kind' | 'subject'> & { rule: 'beam-level' | 'bay-load' | 'frame-load' },
  weighed: Weighed,
  needKg: number,
  limitKg: number | null,
): Finding[] {
  if (limitKg === null || needKg <= limitKg) return [];
  const { kind, subject, rule } = on;
  return [
    makeFinding({
      kind,
      subject,
      severity: 'stop',
      figures: figuresOf(needKg, limitKg, 'kg', weighed.unweighed > 0 ? 'at-least' : 'exact'),
      source: ruleSource(rule),
      advice: weighed.unweighed > 0 ? 'weigh-then-take-off' : 'take-load-off',
    }),
  ];
}

function levelOverloads({ site }: AuditCase, levels: readonly Weighed[]): Finding[] {
  return levels.flatMap((weighed, row) => {
    const { level, pairCapacityKg } = site.levels[row]!;
    const { run, bay } = site.bays[site.bayOf[row]!]!;
    const subject = { of: 'level', run: run.id, bay: bay.id, level } as const;
    const on = { kind: 'beam-level-overload', rule: 'beam-level', subject } as const;
    return level === 0 ? [] : overload(on, weighed, weighed.knownKg, pairCapacityKg);
  });
}

function bayOverloads({ site }: AuditCase, bays: readonly Weighed[]): Finding[] {
  return bays.flatMap((weighed, row) => {
    const { run, bay } = site.bays[row]!;
    const subject = { of: 'bay', run: run.id, bay: bay.id } as const;
    const on = { kind: 'bay-overload', rule: 'bay-load', subject } as const;
    return overload(on, weighed, weighed.knownKg, bay.maxBayLoadKg);
  });
}

function frameOverloads({ index, site }: AuditCase, bays: readonly Weighed[]): Finding[] {
  let row = -1;
  return index.site.runs.flatMap((run) =>
    run.frames.flatMap((frame) => {
      row += 1;
      const beside = [site.frameBays[2 * row]!, site.frameBays[2 * row + 1]!];
      const weighed = beside.reduce((sum, bay) => (bay === NO_BAY ? sum : both(sum, bays[bay]!)), NOTHING);
      const ratingKg = site.frameRatingKg[row]!;
      const subject = { of: 'frame', run: run.id, frame: frame.id } as const;
      const on = { kind: 'frame-overload', rule: 'frame-load', subject } as const;
      return overload(on, weighed, weighed.knownKg / 2, Number.isNaN(ratingKg) ? null : ratingKg);
    }),
  );
}
