import { MASS_RULES } from '../model/rule-ids.ts';
import type { Step } from './step.ts';

/**
 * Is a mass so near its limit that it counts as thin?
 *
 * need x 100 > have x (100 - thinPercent): use > 1 - thinPercent/100 without rounding that fraction. Equality is not
 * thin: 900 kg of 1000 kg at 10 % is clear.
 */
export function isThin(needKg: number, haveKg: number, thinPercent: number): boolean {
  return needKg * 100 > haveKg * (100 - thinPercent);
}

/** Marks a passing mass step as thin where it is; every other step is left as it is. */
export function markThin<S extends Step>(step: S, thinPercent: number): S {
  if (step.outcome !== 'pass' || !MASS_RULES.some((rule) => rule === step.rule)) return step;
  const { need, have } = step;
  if (typeof need !== 'number' || typeof have !== 'number')
    throw new Error(`${step.rule}: pass without masses`);
  return isThin(need, have, thinPercent) ? { ...step, outcome: 'thin' } : step;
}
