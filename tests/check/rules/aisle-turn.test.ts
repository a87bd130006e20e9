import { describe, expect, it } from 'vitest';
import type { TruckKind } from '../../../lib/model/truck.ts';
import { makeLoad, makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

function turning(outsideRadiusMm: number, loadDistanceMm: number, insideOffsetMm = 0) {
  return { outsideRadiusMm, loadDistanceMm, insideOffsetMm };
}
const aisle = (clearWidthMm: number) => ({
  aisles: [{ id: 'aisle-1', clearWidthMm, overheadClearMm: 'none' as const, sprinklerMm: 'none' as const }],
});

describe('aisle-turn', () => {
  // Source: VDI 2198 / FEM 4.005 forms (from memory), a = 200 mm; values by hand from those forms.
  it.each([
    {
      kind: 'counterbalance',
      turn: turning(2200, 465, 600),
      l6: 1200,
      b12: 800,
      mm: 4065.0,
      why: 'pallet lengthways',
    },
    {
      kind: 'counterbalance',
      turn: turning(2200, 465, 600),
      l6: 1000,
      b12: 1200,
      mm: 3865.0,
      why: 'b12 = 2 b13',
    },
    {
      kind: 'counterbalance',
      turn: turning(2200, 465, 500),
      l6: 1000,
      b12: 1200,
      mm: 3868.4,
      why: 'b12 > 2 b13',
    },
    {
      kind: 'counterbalance',
      turn: turning(2200, 465, 0),
      l6: 1000,
      b12: 1200,
      mm: 3983.1,
      why: 'half the width',
    },
    {
      kind: 'counterbalance',
      turn: turning(1475, 355, 0),
      l6: 1200,
      b12: 800,
      mm: 3280.6,
      why: 'three wheels',
    },
    {
      kind: 'counterbalance',
      turn: turning(1475, 355, 0),
      l6: 800,
      b12: 1200,
      mm: 2976.5,
      why: 'three wheels, crosswise',
    },
    { kind: 'reach', turn: turning(1650, 350), l6: 1200, b12: 800, mm: 2789.4, why: 'lengthways' },
    { kind: 'reach', turn: turning(1650, 350), l6: 800, b12: 1200, mm: 2600.0, why: 'crosswise' },
    { kind: 'stacker', turn: turning(1500, 700), l6: 1200, b12: 800, mm: 2340.3, why: 'lengthways' },
  ] as const)('$kind, $why: $mm mm', ({ kind, turn, l6, b12, mm }) => {
    const step = stepOf('aisle-turn', {
      truck: makeTruck({ kind, turning: turn }),
      load: makeLoad({ depthMm: l6, widthMm: b12 }),
    });
    expect(step.need).toBeCloseTo(mm, 1);
    expect(step.needFrom[0]).toMatchObject({ of: 'formula', subject: 'VDI 2198 stacking aisle' });
  });

  it.each([
    { clearWidthMm: 2599, outcome: 'fail' },
    { clearWidthMm: 2600, outcome: 'pass' },
    { clearWidthMm: 2601, outcome: 'pass' },
  ])('2600 mm needed in an aisle of $clearWidthMm mm: $outcome', ({ clearWidthMm, outcome }) => {
    const load = makeLoad({ depthMm: 800, widthMm: 1200 }); // 1650 + sqrt(450^2 + 600^2) + 200 = 2600
    expect(stepOf('aisle-turn', { site: aisle(clearWidthMm), load })).toMatchObject({
      outcome,
      need: 2600,
      have: clearWidthMm,
    });
  });

  it.each([
    { statedAisleMm: 2599, need: 2600 },
    { statedAisleMm: 2601, need: 2601 },
  ])('a stated aisle of $statedAisleMm mm is a floor under the formula', ({ statedAisleMm, need }) => {
    const load = makeLoad({ depthMm: 800, widthMm: 1200 });
    expect(stepOf('aisle-turn', { load, truck: makeTruck({ statedAisleMm }) }).need).toBe(need);
  });

  it.each(['order-picker', 'narrow-aisle'] as const)('%s: the stated aisle alone', (kind: TruckKind) => {
    expect(stepOf('aisle-turn', { truck: makeTruck({ kind, statedAisleMm: 1700 }) }).need).toBe(1700);
    expect(stepOf('aisle-turn', { truck: makeTruck({ kind }) })).toMatchObject({
      outcome: 'unknown',
      need: null,
      cause: 'no-turning-data',
    });
  });

  it('takes the stated aisle without turning data, and is unknown without either', () => {
    expect(stepOf('aisle-turn', { truck: makeTruck({ turning: null, statedAisleMm: 3000 }) })).toMatchObject({
      outcome: 'pass',
      need: 3000,
    });
    expect(stepOf('aisle-turn', { truck: makeTruck({ turning: null }) }).cause).toBe('no-turning-data');
  });

  it.each([
    { depthMm: 699, cause: 'load-inside-wheels' },
    { depthMm: 700, cause: 'load-inside-wheels' },
    { depthMm: 701, cause: undefined },
  ])('a stacker with its load face at 700 mm and a load of $depthMm mm: $cause', ({ depthMm, cause }) => {
    const truck = makeTruck({ kind: 'stacker', turning: turning(1500, 700) });
    const step = stepOf('aisle-turn', { truck, load: makeLoad({ depthMm }) });
    expect(step.cause).toBe(cause);
    expect(step.outcome).toBe(cause === undefined ? 'pass' : 'unknown');
  });

  it.each([
    { statedAisleMm: 2599, outcome: 'unknown', need: null, cause: 'load-inside-wheels' },
    { statedAisleMm: 2600, outcome: 'unknown', need: null, cause: 'load-inside-wheels' },
    { statedAisleMm: 2601, outcome: 'fail', need: 2601 },
    { statedAisleMm: null, outcome: 'unknown', need: null, cause: 'load-inside-wheels' },
  ])(
    'a load inside the wheel line in an aisle of 2600 mm, $statedAisleMm mm stated as the least: $outcome',
    ({ statedAisleMm, ...expected }) => {
      const truck = makeTruck({ kind: 'stacker', turning: turning(1500, 700), statedAisleMm });
      const load = makeLoad({ depthMm: 600 });
      expect(core(stepOf('aisle-turn', { site: aisle(2600), truck, load }))).toEqual({
        have: 2600,
        ...expected,
      });
    },
  );
});
