import { describe, expect, it } from 'vitest';
import { agrees, answersAround, differenceOf } from './reference-check.ts';
import { CHAPTERS } from './registry.ts';

for (const { title, checks, limits } of CHAPTERS) {
  describe(title, () => {
    for (const check of checks) {
      const { quantity, inputs, published, unit, source, confidence } = check;
      it(`${quantity} for ${inputs} is ${published} ${unit} (${source}; ${confidence})`, () => {
        const off = differenceOf(check);
        expect(agrees(check), `ours ${check.ours()}, published ${published}, off by ${off}`).toBe(true);
      });
    }

    for (const limit of limits) {
      const { quantity, unit, expected, source, confidence } = limit;
      it(`${quantity}: ${expected.join(', ')} around ${limit.limit} ${unit} (${source}; ${confidence})`, () => {
        expect(answersAround(limit)).toEqual([...expected]);
      });
    }
  });
}

describe('the registry of checks', () => {
  const all = CHAPTERS.flatMap(({ checks, limits }) => [...checks, ...limits]);

  it('names each check once', () => {
    const ids = all.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('names a source for every check', () => {
    expect(all.filter(({ source }) => source.trim() === '')).toEqual([]);
  });

  it('tells a wrong figure from a right one', () => {
    const check = CHAPTERS[0]!.checks[0]!;
    expect(agrees(check)).toBe(true);
    expect(agrees({ ...check, published: 25.5 })).toBe(false);
    expect(agrees({ ...check, ours: () => Number.NaN })).toBe(false);
    expect(agrees({ ...check, ours: () => 'none' })).toBe(false);
  });
});
