import type { Expected, Refusal } from '../model/refusal.ts';

/** "$.trucks[2].maxLiftMm: -5 came, a number above 0 was expected." */
export function refusalSentence(refusal: Refusal): string {
  if (refusal.expected.is === 'json') return `This is not a JSON text: ${refusal.came}.`;
  return `${refusal.path}: ${refusal.came} came, ${expectedWords(refusal.expected)} was expected.`;
}

/** What to do about a list of refusals. */
export function refusalsAdvice(count: number): string {
  return count === 1
    ? 'Nothing was taken in. Mend this place and read the file again.'
    : `Nothing was taken in. Mend these ${count} places and read the file again.`;
}

/** What was expected, to stand before "was expected". */
export function expectedWords(expected: Expected): string {
  switch (expected.is) {
    case 'json':
      return 'a JSON text';
    case 'type':
      return TYPE_WORDS[expected.type] ?? expected.type;
    case 'present':
      return 'a value (this fact may not be left out)';
    case 'known-key':
      return expected.nearest === null
        ? 'only known keys'
        : `only known keys (did you mean ${expected.nearest}?)`;
    case 'one-of':
      return `${expected.values.length === 1 ? '' : 'one of '}${expected.values.map((value) => JSON.stringify(value)).join(', ')}`;
    case 'above':
      return `a number above ${expected.limit}`;
    case 'at-least':
      return `a number of at least ${expected.limit}`;
    case 'at-most':
      return `a number of at most ${expected.limit}`;
    case 'length':
      return expected.to === null
        ? `a length of at least ${expected.from}`
        : `a length of at most ${expected.to}`;
    case 'whole-number':
      return 'a whole number';
    case 'size-or-none':
      return 'a number above 0 and at most 10000000, or "none" where a survey found nothing';
    case 'time':
      return 'a time in UTC such as "2026-03-02T06:30:00Z" or a date such as "2026-03-02"';
    case 'text':
      return expected.rule;
    case 'once':
      return 'one value for each key';
    case 'unique':
      return `an id that is not used yet (it stands at ${expected.firstAt} already)`;
    case 'id-in':
      return expected.nearest === null
        ? `an id in ${expected.list}`
        : `an id in ${expected.list} (did you mean ${JSON.stringify(expected.nearest)}?)`;
    case 'frames-for-bays':
      return `a list of ${expected.bays + 1} frames for ${expected.bays} ${expected.bays === 1 ? 'bay' : 'bays'}`;
    case 'higher-than-level-below':
      return `more than the ${expected.below} of the level below (levels stand in order from the floor up)`;
    case 'floor-at-zero':
      return '0, the beam top of the floor (level 0),';
    case 'beam-above-floor':
      return 'a beam top above 0 (only level 0 is the floor)';
    case 'even-positions':
      return 'an even number of locations, front row then rear row, for 2 depth positions';
    case 'both-or-neither':
      return `a number beside ${expected.other} (both or neither)`;
    case 'at-least-field':
      return `at least ${expected.field}, ${expected.value},`;
    case 'at-most-field':
      return `at most ${expected.field}, ${expected.value},`;
    default:
      return expected satisfies never;
  }
}

const TYPE_WORDS: Record<string, string> = {
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  int: 'a whole number',
};
