import type { LiftAnswer, Outcome, Step } from '@/lib/check/step.ts';

const ATTENTION_FIRST: readonly Outcome[] = ['fail', 'unknown', 'thin', 'pass'];

/** The steps in the order in which a person should read them: what decided, what stands in the way, what passes. */
export type StepOrder = { governing: Step; others: readonly Step[]; notAsked: readonly Step[] };

/** Within an outcome the rules keep their own order. Throws when the governing rule has no step (a bug). */
export function stepOrder(answer: Pick<LiftAnswer, 'governing' | 'steps'>): StepOrder {
  const governing = answer.steps.find((step) => step.rule === answer.governing);
  if (governing === undefined) throw new Error(`no step for the governing rule ${answer.governing}`);
  const rest = answer.steps.filter((step) => step !== governing);
  return {
    governing,
    others: ATTENTION_FIRST.flatMap((outcome) => rest.filter((step) => step.outcome === outcome)),
    notAsked: rest.filter((step) => step.outcome === 'not-applicable'),
  };
}
