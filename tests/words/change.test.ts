import { describe, expect, it } from 'vitest';
import type { CannotRevert, Conflict, Unavailable } from '../../lib/model/change.ts';
import {
  cannotRevertSentence,
  changeWords,
  conflictSentence,
  lateRevertSentence,
  unavailableSentence,
} from '../../lib/words/change.ts';
import { differenceSentence } from '../../lib/words/difference.ts';

const SPACE = '\u202f';

describe('a difference', () => {
  it.each([
    [
      ['plate', 'ratings', '3', 'capacityKg'],
      1600,
      1400,
      `plate, line 3, capacity: 1${SPACE}600${SPACE}kg became 1${SPACE}400${SPACE}kg`,
    ],
    [
      ['bays', 'a1', 'levels', '2', 'condition'],
      'sound',
      'red',
      'bay a1, level 2, condition: sound became red',
    ],
    [['hold', 'reason'], undefined, 'Horn', 'hold, reason: Horn came'],
    [['maxBayLoadKg'], 4800, null, `largest load of the bay: 4${SPACE}800${SPACE}kg went`],
    [[], 'crates', 'drums', 'crates became drums'],
    [['decked'], false, true, 'decked: no became yes'],
    [['locations'], ['a', 'b'], ['a'], 'locations: a, b became a'],
  ])('at %j reads as a sentence', (path, before, after, sentence) => {
    expect(differenceSentence({ path, before, after }, 'metric')).toBe(sentence);
  });

  it('is read in the units chosen, and never as two equal figures', () => {
    const grossKg = (before: number, after: number) =>
      differenceSentence({ path: ['grossKg'], before, after }, 'lb-in');
    expect(grossKg(453.59237, 907.18474)).toBe(
      `gross mass: 1${SPACE}000${SPACE}lb became 2${SPACE}000${SPACE}lb`,
    );
    expect(grossKg(1000, 1000.1)).toBe(`gross mass: 1${SPACE}000${SPACE}kg became 1${SPACE}000.1${SPACE}kg`);
  });
});

describe('a change', () => {
  const plain = { noun: 'truck', subject: 'reach-1', wholeSite: false, reverts: null } as const;
  it.each([
    [{ ...plain, kind: 'save' }, 'Truck reach-1 changed'],
    [{ ...plain, kind: 'revert', reverts: 7 }, 'Truck reach-1 put back (change 7 undone)'],
    [
      { ...plain, noun: 'site', subject: 'Quay', kind: 'import', wholeSite: true },
      'The whole site read in: Quay',
    ],
    [
      { ...plain, noun: 'load', subject: 'loads.csv', kind: 'import', wholeSite: true },
      'A whole list read in from loads.csv',
    ],
    [{ ...plain, noun: 'stock', subject: 'a1-1-1', kind: 'add' }, 'Location a1-1-1 filled'],
  ] as const)('%j has its words', (change, words) => {
    expect(changeWords(change)).toBe(words);
  });
});

describe('what was not done', () => {
  const conflict: Conflict = {
    noun: 'truck',
    subject: 'reach-1',
    since: 3,
    by: 'A planner',
    at: '2026-03-02T06:30:00Z',
    kind: 'save',
    base: { known: true, fact: null },
    theirs: null,
    revision: 5,
  };

  it('for a conflict names who, what and when', () => {
    expect(conflictSentence(conflict)).toMatch(
      /^A planner has changed truck reach-1 since you read it \(2026-03-02 06:30 UTC\)\. Nothing was stored\./,
    );
    expect(conflictSentence({ ...conflict, kind: 'remove' })).toContain('removed truck reach-1');
    expect(conflictSentence({ ...conflict, kind: 'import', base: { known: false } })).toContain(
      'exchanged the whole site',
    );
    expect(conflictSentence({ ...conflict, kind: 'import' })).toContain(
      'read in truck reach-1 from a file since',
    );
    expect(lateRevertSentence(conflict)).toContain('Truck reach-1 is no longer what this change made of it');
    expect(lateRevertSentence({ ...conflict, base: { known: false } })).toContain('2 times after that');
  });

  it('has a whole sentence for every reason, each its own', () => {
    const reasons: Record<Unavailable, true> = {
      'disk-full': true,
      locked: true,
      'read-only': true,
      damaged: true,
      'disk-fault': true,
    };
    const cannots: Record<CannotRevert, true> = {
      'no-such-change': true,
      'check-is-kept': true,
      'was-restored': true,
      'former-site-not-kept': true,
      'photo-not-kept': true,
    };
    const said = [
      ...Object.keys(reasons).map((reason) => unavailableSentence(reason as Unavailable)),
      ...Object.keys(cannots).map((cannot) => cannotRevertSentence(cannot as CannotRevert)),
    ];
    for (const sentence of said) expect(sentence).toMatch(/^[A-Z].{20,}\.$/);
    expect(new Set(said).size).toBe(said.length);
  });
});
