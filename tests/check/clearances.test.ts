import { describe, expect, it } from 'vitest';
import { clearancesFor } from '../../lib/check/clearances.ts';

const all = (x3Mm: number, x4Mm: number, yMm: number) => ({ x3Mm, x4Mm, yMm });

describe('clearances', () => {
  // EN 15620:2008, from memory
  it.each([
    { beamTopMm: 0, is: all(75, 75, 75) },
    { beamTopMm: 3000, is: all(75, 75, 75) },
    { beamTopMm: 3001, is: all(75, 75, 100) },
    { beamTopMm: 6000, is: all(75, 75, 100) },
    { beamTopMm: 6001, is: all(75, 75, 125) },
    { beamTopMm: 9000, is: all(75, 75, 125) },
    { beamTopMm: 9001, is: all(100, 100, 150) },
    { beamTopMm: 13000, is: all(100, 100, 150) },
    { beamTopMm: 13001, is: all(100, 100, 150) },
  ])(
    'class 400 and 300B at $beamTopMm mm step up to the next row, past the last keep it',
    ({ beamTopMm, is }) => {
      expect(clearancesFor('400', beamTopMm, 1000)).toMatchObject(is);
      expect(clearancesFor('300B', beamTopMm, 1000)).toMatchObject(is);
    },
  );

  it.each([
    { beamTopMm: 9000, is: all(75, 75, 75) },
    { beamTopMm: 9001, is: all(100, 100, 100) },
    { beamTopMm: 20000, is: all(100, 100, 100) },
  ])('class 300A at $beamTopMm mm', ({ beamTopMm, is }) => {
    expect(clearancesFor('300A', beamTopMm, 1000)).toMatchObject(is);
  });

  // AS 4084 as its guides describe it: 100 mm with the top of the load below 6 m, 125 mm from there
  it.each([
    { beamTopMm: 4999, yMm: 100 },
    { beamTopMm: 5000, yMm: 125 },
    { beamTopMm: 5001, yMm: 125 },
  ])('AS 4084 with a 1000 mm load on a beam at $beamTopMm mm: Y $yMm', ({ beamTopMm, yMm }) => {
    expect(clearancesFor('AS4084', beamTopMm, 1000)).toEqual({ x3Mm: 75, x4Mm: 100, yMm });
  });
});
