import { describe, expect, it } from 'vitest';
import {
  readTyped,
  readWidths,
  shownTyped,
  shownWidths,
  typedFault,
} from '../../app/rack-shape/read-typed.ts';
import { plainChange, readChange, type TypedChange } from '../../app/rack-shape/typed-change.ts';
import type { RunChangeKind } from '../../lib/rack-shape/run-change.ts';
import { makeRun } from '../site-builder.ts';

describe('a typed figure', () => {
  it.each([
    ['', null],
    ['1200', 1200],
    ['1 200', 1200],
    ['1,5', 1.5],
    ['1,25 m', 1250],
    ['1,2500 m', 1250],
    ['1,250', 'unread'],
    ['1,250.5', 'unread'],
    ['1,2,3', 'unread'],
    ['12 ft', 3657.6],
    ['0', 'unread'],
    ['tall', 'unread'],
  ])('%j is read as a length of %j mm', (text, value) => {
    expect(readTyped(text, 'length', 'metric')).toBe(value);
  });

  it('says why a comma is not read, and stays quiet about what is', () => {
    expect(typedFault('1,250', 'length', 'metric')).toContain('thousand or a decimal');
    expect(typedFault('tall', 'length', 'metric')).toContain('Not read');
    expect(typedFault('1,25', 'length', 'metric')).toBeNull();
  });

  it('is a whole number where pieces are counted', () => {
    expect(['12', '1.5', '-1', '1,000'].map((text) => readTyped(text, 'count', 'metric'))).toEqual([
      12,
      'unread',
      'unread',
      'unread',
    ]);
  });

  it('in pounds and inches is exact by their definitions of 1959: 0.45359237 kg, 25.4 mm', () => {
    expect(readTyped('5290', 'mass', 'lb-in')).toBe(2399.5036373);
    expect(readTyped('106.5', 'length', 'lb-in')).toBe(2705.1);
    expect(shownTyped(3048, 'length', 'lb-in')).toBe('120');
  });

  it('that is a capacity is never shown larger than it is', () => {
    expect(shownTyped(2399.99, 'mass', 'metric')).toMatch(/^2.399\.9$/);
  });
});

describe('widths', () => {
  it.each<[string, readonly number[] | 'unread', string | null]>([
    ['2700', [2700], '2.700'],
    ['2 x 2700; 1350', [2700, 2700, 1350], '2 x 2.700; 1.350'],
    ['2,7 m ; 3×1,35 m', [2700, 1350, 1350, 1350], '2.700; 3 x 1.350'],
    ['', [], ''],
    ['2700; wide', 'unread', ''],
    ['0 x 2700', [], ''],
  ])('%j', (text, widths, shown) => {
    expect(readWidths(text, 'metric')).toEqual(widths);
    expect(shownWidths(widths, 'metric')).toMatch(new RegExp(`^${shown}$`));
  });
});

describe('a typed change', () => {
  const run = makeRun();
  const read = (kind: RunChangeKind, part: Partial<TypedChange> = {}) =>
    readChange({ ...plainChange(run, kind), ...part });

  it('lacks what nobody has typed', () => {
    expect(read('move-beam')).toEqual({
      state: 'incomplete',
      refusals: [{ field: 'beamTopMm', fault: { is: 'missing' } }],
    });
    for (const kind of ['level-facts', 'bay-facts', 'frame-type'] as const)
      expect(read(kind)).toEqual({ state: 'incomplete', refusals: [] });
  });

  it('that cannot be read is never taken for one that was left out', () => {
    expect(read('level-facts', { maxUnitKg: 'unread', pairCapacityKg: 2000 })).toEqual({
      state: 'incomplete',
      refusals: [{ field: 'maxUnitKg', fault: { is: 'not-read' } }],
    });
  });

  it('names only the facts that it changes', () => {
    expect(read('level-facts', { pairCapacityKg: 2000, isUnitNotStated: true })).toMatchObject({
      state: 'ready',
      change: { kind: 'level-facts', facts: { pairCapacityKg: 2000, maxUnitKg: null } },
    });
    expect(read('bay-facts', { isBayLoadNotStated: true })).toMatchObject({
      change: { facts: { maxBayLoadKg: null } },
    });
  });

  it('begins with all bays, but takes away only the last', () => {
    expect(read('move-beam', { beamTopMm: 1600 })).toMatchObject({
      change: { range: { first: 0, last: 1 }, level: 1 },
    });
    expect(read('remove-bays')).toMatchObject({ change: { range: { first: 1, last: 1 } } });
    expect(read('frame-condition')).toMatchObject({ change: { range: { first: 0, last: 2 } } });
  });
});
