import { describe, expect, it } from 'vitest';
import { makeBay, makeLevel, makeLoad, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

function bayOf(clearWidthMm: number, locations: string[], depthPositions: 1 | 2 = 1) {
  const levels = [makeLevel('a1', 1, { locations, depthPositions })];
  return { runs: [makeRun({ bays: [makeBay('a1', { clearWidthMm, levels }), makeBay('a2')] })] };
}
const two = ['p1', 'p2'];
const three = ['p1', 'p2', 'p3'];

describe('opening-width', () => {
  it.each([
    { widthMm: 1200, row: two, need: 2625, clearanceClass: '400', source: 'SEMA advice, 75 mm everywhere' },
    { widthMm: 800, row: three, need: 2700, clearanceClass: '400', source: 'SEMA advice, 75 mm everywhere' },
    { widthMm: 1165, row: two, need: 2580, clearanceClass: 'AS4084', source: 'AS 4084, 75 and 100 mm' },
  ] as const)(
    '$row.length loads of $widthMm mm need $need mm ($source)',
    ({ widthMm, row, need, clearanceClass }) => {
      for (const [clear, outcome] of [
        [need - 1, 'fail'],
        [need, 'pass'],
        [need + 1, 'pass'],
      ] as const) {
        const site = {
          ...bayOf(clear, [...row]),
          site: { name: 'Harbour store', policy: { clearanceClass } },
        };
        const step = stepOf('opening-width', { site, at: 'p1', load: makeLoad({ widthMm }) });
        expect(core(step)).toEqual({ outcome, need, have: clear });
      }
    },
  );

  it('counts the positions of one row where the level is two deep', () => {
    const site = bayOf(2700, ['f1', 'f2', 'r1', 'r2'], 2);
    expect(stepOf('opening-width', { site, at: 'r2', load: makeLoad({ widthMm: 1200 }) }).need).toBe(2625);
  });

  it('is asked on the floor, and not when taking down', () => {
    expect(stepOf('opening-width', { at: 'a1-0-1' }).need).toBe(1825);
    expect(stepOf('opening-width', { context: { operation: 'retrieve' } }).cause).toBe('taking-down');
  });
});
