import { describe, expect, it } from 'vitest';
import { readRackQuery } from '../../app/rack-advice/rack-query.ts';
import { makeIndex } from '../site-builder.ts';

const index = makeIndex();
const paths = (raw: Record<string, string>) => readRackQuery(index, raw).refused.map(({ path }) => path);

describe('readRackQuery', () => {
  it('finds the bay with its run and reads the stiffness in cm4', () => {
    const { bay, inertiaMm4, refused } = readRackQuery(index, { bay: 'a2', inertia: '130' });
    expect([bay?.run.id, bay?.bayIndex, inertiaMm4, refused]).toEqual(['a', 1, 1_300_000, []]);
  });

  it('asks nothing of an empty address', () => {
    expect(readRackQuery(index, { bay: ' ' })).toEqual({
      bay: null,
      inertiaMm4: null,
      offset: null,
      damage: null,
      plate: null,
      refused: [],
    });
  });

  it('reads a bend in the units of the address', () => {
    const { damage } = readRackQuery(index, { bow: '0.2', kind: 'bracing', length: '20 in', units: 'lb-in' });
    expect(damage?.bowMm).toBeCloseTo(5.08, 10);
    expect(damage).toMatchObject({ kind: 'bracing', lengthMm: 508 });
  });

  it.each([
    { offset: '549', refused: [] },
    { offset: '550', refused: [] },
    { offset: '551', refused: ['$.offset'] },
  ])('takes a centre between the beams of a frame 1100 mm deep: $offset mm off', ({ offset, refused }) => {
    expect(paths({ bay: 'a1', mass: '800', offset })).toEqual(refused);
  });

  it.each([
    { raw: { bay: 'a9' }, path: '$.bay' },
    { raw: { inertia: '0' }, path: '$.inertia' },
    { raw: { inertia: 'stiff' }, path: '$.inertia' },
    { raw: { bow: '-4' }, path: '$.bow' },
    { raw: { bow: '4', length: '0' }, path: '$.length' },
    { raw: { bow: '4', kind: 'beam' }, path: '$.kind' },
  ])('refuses $raw at $path', ({ raw, path }) => {
    expect(readRackQuery(index, raw).refused.map((refusal) => refusal.path)).toEqual([path]);
  });
});
