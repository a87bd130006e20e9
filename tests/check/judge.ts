import type { z } from 'zod';
import { checkLift } from '../../lib/check/check-lift.ts';
import type { Context, LiftAnswer, Step } from '../../lib/check/step.ts';
import type { Load } from '../../lib/model/load.ts';
import type { RuleId } from '../../lib/model/rule-ids.ts';
import type { siteSchema } from '../../lib/model/site.ts';
import type { Truck } from '../../lib/model/truck.ts';
import { makeContext, makeIndex, makeLoad, makeTruck, placeOf } from '../site-builder.ts';

/** What a test asks: all left out is the small site's reach truck placing 800 kg of crates in a1-1-1. */
export type Ask = {
  site?: Partial<z.input<typeof siteSchema>>;
  load?: Load;
  truck?: Truck;
  at?: string;
  context?: Partial<Context>;
};

export function answerTo({ site, load, truck, at, context }: Ask = {}): LiftAnswer {
  const index = makeIndex(site);
  return checkLift(index, {
    load: load ?? makeLoad(),
    truck: truck ?? makeTruck(),
    place: placeOf(index, at ?? 'a1-1-1'),
    context: makeContext(context),
  });
}

/** One rule's step of a lift. */
export function stepOf(rule: RuleId, ask: Ask = {}): Step {
  return stepIn(answerTo(ask), rule);
}

export function stepIn(answer: LiftAnswer, rule: RuleId): Step {
  return answer.steps.find((step) => step.rule === rule)!;
}

/** Outcome, need, have and cause of a step: what a rule's table states. */
export function core({ outcome, need, have, cause }: Step) {
  return { outcome, need, have, ...(cause === undefined ? {} : { cause }) };
}
