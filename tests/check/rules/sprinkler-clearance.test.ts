import { describe, expect, it } from 'vitest';
import { core, stepOf } from '../judge.ts';

const aisle = (sprinklerMm: number | 'none' | null) => ({
  aisles: [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: 'none' as const, sprinklerMm }],
});
const at = 'a1-2-1';

describe('sprinkler-clearance', () => {
  // 3000 + 1000 + 914 (36 in, NFPA 13, ESFR and large-drop storage sprinklers) = 4914
  it.each([
    { sprinklerMm: 4913, outcome: 'fail' },
    { sprinklerMm: 4914, outcome: 'pass' },
    { sprinklerMm: 4915, outcome: 'pass' },
  ])('4914 mm needed under sprinklers at $sprinklerMm mm: $outcome', ({ sprinklerMm, outcome }) => {
    expect(core(stepOf('sprinkler-clearance', { site: aisle(sprinklerMm), at }))).toEqual({
      outcome,
      need: 4914,
      have: sprinklerMm,
    });
  });

  it('takes 18 in (457 mm) where the policy knows them to be standard spray', () => {
    const site = { ...aisle(8500), site: { name: 'Harbour store', policy: { sprinklerClearanceMm: 457 } } };
    expect(stepOf('sprinkler-clearance', { site, at }).need).toBe(4457);
  });

  it('is not asked below the top level, where there are none, or when taking down', () => {
    expect(stepOf('sprinkler-clearance', { at: 'a1-1-1' }).cause).toBe('not-the-top-level');
    expect(stepOf('sprinkler-clearance', { site: aisle('none'), at }).cause).toBe('nothing-overhead');
    expect(stepOf('sprinkler-clearance', { at, context: { operation: 'retrieve' } }).cause).toBe(
      'taking-down',
    );
  });

  it('is unknown where they were not surveyed', () => {
    expect(core(stepOf('sprinkler-clearance', { site: aisle(null), at }))).toEqual({
      outcome: 'unknown',
      need: 4914,
      have: null,
      cause: 'sprinkler-not-surveyed',
    });
  });
});
