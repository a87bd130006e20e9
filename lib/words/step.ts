import type { Step } from '../check/step.ts';
import { type DisplayUnits, formatLength, formatMass, type Lean } from '../units/format-quantity.ts';
import { causeWords } from './cause.ts';
import { haveClause, needClause } from './number-clause.ts';
import { asSentence } from './plain-words.ts';
import { stateClause } from './state-clause.ts';

/**
 * One step as a sentence: what it needs; what it has: what is left or missing; and the cause where there is one.
 *
 * Needs are rounded up and limits down, so that no shown number flatters; what is left is rounded down and what is
 * missing up, and the sentence stays true where the two rounded figures alone would cross.
 */
export function stepSentence(step: Step, units: DisplayUnits): string {
  const cause = step.cause === undefined ? [] : [causeWords(step.cause)];
  switch (step.outcome) {
    case 'not-applicable':
      return asSentence(['not asked', ...cause].join(': '));
    case 'unknown':
      return asSentence(['not known', [...askedClauses(step, units), ...cause].join('; ')].join(': '));
    case 'pass':
    case 'thin':
    case 'fail':
      return step.unit === 'state'
        ? asSentence(stateClause(step))
        : asSentence(
            [`${knownClauses(step, units).join('; ')}${leftOver(step, units)}`, ...cause].join('; '),
          );
  }
}

/** Of an unknown step: what it needs and has, as far as it is known; of a yes/no rule the cause says all there is. */
function askedClauses(step: Step, units: DisplayUnits): string[] {
  return step.unit === 'state' ? [] : knownClauses(step, units);
}

/** What the step needs and has, as far as it is known. */
function knownClauses(step: Step, units: DisplayUnits): string[] {
  const need = shown(step, step.need, units, 'up');
  const have = shown(step, step.have, units, 'down');
  const clauses: string[] = [];
  if (need !== null) clauses.push(needClause(step, need));
  if (have !== null) clauses.push(haveClause(step, have, units));
  return clauses;
}

function shown(step: Step, value: Step['need'], units: DisplayUnits, lean: Lean): string | null {
  if (typeof value !== 'number') return value;
  switch (step.unit) {
    case 'kg':
      return formatMass(value, units, lean);
    case 'mm':
      return formatLength(value, units, lean);
    case 'row':
      return value === 1 ? 'front row' : 'rear row';
    case 'state':
      return String(value);
  }
}

function leftOver({ need, have, unit }: Step, units: DisplayUnits): string {
  if (typeof need !== 'number' || typeof have !== 'number' || unit === 'row' || unit === 'state') return '';
  const format = unit === 'kg' ? formatMass : formatLength;
  const nothing = format(0, units, 'down');
  const [excess, spare] = [format(need - have, units, 'up'), format(have - need, units, 'down')];
  if (need > have)
    return excess === nothing ? `: too much, by less than can be shown` : `: ${excess} too much`;
  return spare === nothing ? ': nothing to spare' : `: ${spare} to spare`;
}
