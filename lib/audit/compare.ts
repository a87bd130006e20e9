import { type Figures, type Finding, SEVERITIES } from './finding.ts';

/** What of an earlier finding is held against the one of today. */
export type Earlier = Pick<Finding, 'id' | 'severity'> & { figures: Pick<Figures, 'excess'> };

/** A finding that both audits have, as it was and as it is. */
export type Pair<Before extends Earlier> = { before: Before; now: Finding };

/** What became of the findings between two audits of one site. */
export type Comparison<Before extends Earlier> = {
  fresh: Finding[];
  gone: Before[];
  worse: Pair<Before>[];
  better: Pair<Before>[];
  unchanged: Finding[];
};

/**
 * What is new, gone, worse, better or as it was? Findings are matched by id. Worse: a graver severity; with the same
 * severity a greater excess, or one that was known and no longer is. Each list keeps the order of the audit it is from.
 */
export function compareAudits<Before extends Earlier>(
  before: readonly Before[],
  now: readonly Finding[],
): Comparison<Before> {
  const old = new Map(before.map((finding) => [finding.id, finding]));
  const ids = new Set(now.map(({ id }) => id));
  const comparison: Comparison<Before> = {
    fresh: [],
    gone: before.filter(({ id }) => !ids.has(id)),
    worse: [],
    better: [],
    unchanged: [],
  };
  for (const finding of now) {
    const was = old.get(finding.id);
    if (was === undefined) {
      comparison.fresh.push(finding);
      continue;
    }
    const change = gravity(finding, was);
    if (change > 0) comparison.worse.push({ before: was, now: finding });
    else if (change < 0) comparison.better.push({ before: was, now: finding });
    else comparison.unchanged.push(finding);
  }
  return comparison;
}

/** Above 0: `now` is graver than `was`; below: less grave. */
function gravity(now: Earlier, was: Earlier): number {
  const severity = SEVERITIES.indexOf(was.severity) - SEVERITIES.indexOf(now.severity);
  if (severity !== 0) return severity;
  const [before, after] = [was.figures.excess, now.figures.excess];
  if (before === null && after === null) return 0;
  if (after === null) return 1;
  if (before === null) return -1;
  return after - before;
}
