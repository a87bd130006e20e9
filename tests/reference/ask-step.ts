import { checkLift } from '../../lib/check/check-lift.ts';
import type { Context, Step } from '../../lib/check/step.ts';
import type { Load } from '../../lib/model/load.ts';
import type { SitePolicy } from '../../lib/model/policy.ts';
import type { Aisle, Run } from '../../lib/model/racking.ts';
import type { RuleId } from '../../lib/model/rule-ids.ts';
import type { Site } from '../../lib/model/site.ts';
import type { Truck } from '../../lib/model/truck.ts';
import { makeContext, makeCounterbalance, makeIndex, makeLoad, makeRun, placeOf } from '../site-builder.ts';

/** What differs from the plain test site in one question. */
export type Asked = {
  truck?: Truck;
  load?: Load;
  location?: string;
  run?: Run;
  aisle?: Partial<Aisle>;
  policy?: SitePolicy;
  /** Loads that stand somewhere, by location. */
  standing?: Record<string, Load>;
  frameTypes?: Site['frameTypes'];
  context?: Partial<Context>;
};

/** The step that a user reads for one rule, by the whole lift check. */
export function askStep(rule: RuleId, asked: Asked): Step {
  const { truck = makeCounterbalance(), load = makeLoad(), run = makeRun(), standing = {} } = asked;
  const index = makeIndex({
    site: { name: 'Reference site', policy: asked.policy ?? {} },
    aisles: [
      { id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: 90_000, sprinklerMm: 90_000, ...asked.aisle },
    ],
    runs: [run],
    ...(asked.frameTypes === undefined ? {} : { frameTypes: asked.frameTypes }),
    trucks: [truck],
    checks: [],
    loads: [...new Map([load, ...Object.values(standing)].map((entry) => [entry.id, entry])).values()],
    stock: Object.entries(standing).map(([location, entry]) => ({ location, load: entry.id })),
  });
  const place = placeOf(index, asked.location ?? 'a1-1-1');
  const answer = checkLift(index, { truck, load, place, context: makeContext(asked.context) });
  return answer.steps.find((step) => step.rule === rule)!;
}

/** What the rule needs, as a number; NaN when it is not one, so that no check passes by accident. */
export function needOf(rule: RuleId, asked: Asked): number {
  const { need } = askStep(rule, asked);
  return typeof need === 'number' ? need : Number.NaN;
}

/** What there is, as a number; NaN when it is not one. */
export function haveOf(rule: RuleId, asked: Asked): number {
  const { have } = askStep(rule, asked);
  return typeof have === 'number' ? have : Number.NaN;
}
