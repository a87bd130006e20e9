import type { LiftAnswer } from '@/lib/check/step.ts';

/** Which lines of the plate does this verdict rest on? Their places in the plate's list, from 0. */
export function usedPlateLines(answer: Pick<LiftAnswer, 'steps'>): number[] {
  const lines = answer.steps
    .flatMap((step) => step.haveFrom)
    .filter((origin) => origin.of === 'plate')
    .flatMap((origin) => {
      const line = /^ratings\[(\d+)\]/.exec(origin.field)?.[1];
      return line === undefined ? [] : [Number(line)];
    });
  return [...new Set(lines)];
}
