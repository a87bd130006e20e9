import { describe, expect, it } from 'vitest';
import { PLAIN_LIFT_QUERY } from '../../app/_parts/lift-query.ts';
import { type RacksQuery, readRacksQuery, writeRacksQuery } from '../../app/racks/racks-query.ts';

function read(address: string) {
  const parameters = new URLSearchParams(address);
  return readRacksQuery(
    Object.fromEntries([...parameters.keys()].map((key) => [key, parameters.getAll(key)])),
  );
}

const plain: RacksQuery = {
  lift: PLAIN_LIFT_QUERY,
  run: null,
  row: 1,
  trucks: [],
  view: 'drawing',
  figure: 'most',
};

describe('readRacksQuery', () => {
  it('shows the drawing of the front row for all trucks when the address says nothing', () => {
    expect(read('')).toEqual({ query: plain, refused: [] });
  });

  it('asks each truck once, in the order named', () => {
    expect(read('truck=T2&truck=T1&truck=T2&truck=').query.trucks).toEqual(['T2', 'T1']);
  });

  it('passes on what the lift refuses', () => {
    expect(read('run=A&operation=throw').refused.map(({ path }) => path)).toEqual(['$.operation']);
  });
});

describe('writeRacksQuery', () => {
  it.each<RacksQuery>([
    plain,
    { ...plain, run: 'A & B', row: 2, trucks: ['T 1', 'T&2'], view: 'table', figure: 'spare' },
    {
      ...plain,
      lift: {
        ...PLAIN_LIFT_QUERY,
        location: 'a1-0-1',
        load: { kind: 'known', id: 'L 7' },
        operation: 'place',
      },
    },
  ])('is read back as what was written (%#)', (query) => {
    expect(read(writeRacksQuery(query))).toEqual({ query, refused: [] });
  });
});
