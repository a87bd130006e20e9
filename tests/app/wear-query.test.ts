import { describe, expect, it } from 'vitest';
import { readWearQuery } from '../../app/wear/wear-query.ts';
import { makeIndex } from '../site-builder.ts';

const index = makeIndex();

describe('readWearQuery', () => {
  it('takes the blade length of the named truck, unless another was measured', () => {
    expect(readWearQuery(index, { truck: 'counter-1', tips: '20' }).forks).toEqual({
      bladeLengthMm: 1200,
      tipDifferenceMm: 20,
    });
    expect(readWearQuery(index, { truck: 'counter-1', blade: '1000' }).forks.bladeLengthMm).toBe(1000);
  });

  it('leaves out what was measured only in part', () => {
    expect(readWearQuery(index, { heel: '45', pitch: '25.4', stamp: '' })).toMatchObject({
      forks: {},
      chain: null,
      cylinder: null,
      refused: [],
    });
  });

  it('reads chain and cylinder', () => {
    const { chain, cylinder } = readWearQuery(index, {
      pitch: '1 in',
      pins: '13',
      chain: '310',
      stamp: '2019-06',
      rule: 'europe',
    });
    expect(chain).toEqual({ pitchMm: 25.4, pinsCounted: 13, measuredMm: 310 });
    expect(cylinder).toEqual({ stamped: '2019-06', rule: 'europe' });
  });

  it.each([
    { raw: { truck: 'counter-9' }, path: '$.truck' },
    { raw: { pins: '1' }, path: '$.pins' },
    { raw: { pins: '12.5' }, path: '$.pins' },
    { raw: { pitch: '25.4', pins: '13', chain: '300' }, path: '$.chain' },
    { raw: { stamp: '06/2019' }, path: '$.stamp' },
    { raw: { stamp: '2019-06', rule: 'moon' }, path: '$.rule' },
    { raw: { blade: '0' }, path: '$.blade' },
  ])('refuses $raw at $path', ({ raw, path }) => {
    expect(readWearQuery(index, raw).refused.map((refusal) => refusal.path)).toEqual([path]);
  });
});
