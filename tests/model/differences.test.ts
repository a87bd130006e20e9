import { describe, expect, it } from 'vitest';
import { differences } from '../../lib/model/differences.ts';
import { makeBay, makeRun, makeTruck } from '../site-builder.ts';

describe('the differences of two facts', () => {
  it('are none between equal facts, whatever the order of their keys', () => {
    expect(differences(makeTruck(), makeTruck())).toEqual([]);
    expect(differences({ a: 1, b: null }, { b: undefined, a: 1 })).toEqual([]);
    expect(differences(null, undefined)).toEqual([]);
  });

  it('name the leaf, not the fact around it', () => {
    const before = makeTruck();
    const ratings = before.plate.ratings.map((rating, at) =>
      at === 1 ? { ...rating, capacityKg: 900 } : rating,
    );
    expect(differences(before, { ...before, plate: { ...before.plate, ratings } })).toEqual([
      { path: ['plate', 'ratings', '2', 'capacityKg'], before: 1000, after: 900 },
    ]);
  });

  it('tell entries apart by id: one put in ahead is one addition', () => {
    const before = makeRun();
    const after = { ...before, bays: [makeBay('a0', { levels: [] }), ...before.bays] };
    expect(differences(before, after).map(({ path }) => path.slice(0, 2))).toEqual([
      ['bays', 'a0'],
      ['bays', 'a0'],
      ['bays', 'a0'],
    ]);
  });

  it('tell levels apart by their number', () => {
    const before = makeBay('a1');
    const levels = before.levels.map((level) =>
      level.level === 2 ? { ...level, condition: 'red' as const } : level,
    );
    expect(differences(before, { ...before, levels })).toEqual([
      { path: ['levels', '2', 'condition'], before: 'sound', after: 'red' },
    ]);
  });

  it('name every leaf of what came or went', () => {
    expect(differences(null, { id: 'd', xMm: 0 })).toEqual([
      { path: ['id'], before: undefined, after: 'd' },
      { path: ['xMm'], before: undefined, after: 0 },
    ]);
    expect(differences({ hold: { reason: 'Horn' } }, { hold: null })).toEqual([
      { path: ['hold', 'reason'], before: 'Horn', after: undefined },
    ]);
  });

  it('take a plain value and a list of plain values as one fact', () => {
    expect(differences('crates', 'drums')).toEqual([{ path: [], before: 'crates', after: 'drums' }]);
    expect(differences({ mustKnow: ['a', 'b'] }, { mustKnow: ['a'] })).toEqual([
      { path: ['mustKnow'], before: ['a', 'b'], after: ['a'] },
    ]);
    expect(differences(0, -0)).toEqual([]);
    expect(differences(0, null)).toEqual([{ path: [], before: 0, after: null }]);
  });
});
