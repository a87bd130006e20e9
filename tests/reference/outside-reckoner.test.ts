import fc from 'fast-check';
import { index as at, lusolve, matrix, subset, unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fieldDeratedKg, momentDeratedKg } from '../../lib/check/estimates/field-derating.ts';
import { bendBeam, STEEL_MODULUS_N_MM2 } from '../../lib/rack/beam-deflection.ts';
import { inchesToMm, kgToPounds, mmToInches, poundsToKg } from '../../lib/units/conversions.ts';
import { parseLengthMm, parseMassKg } from '../../lib/units/parse-quantity.ts';

const amount = fc.double({ min: 1e-3, max: 1e7, noNaN: true });
const near = (ours: number, theirs: number) => Math.abs(ours - theirs) <= 1e-12 * Math.abs(theirs);

describe('unit conversions agree with a general-purpose library', () => {
  it.each([
    { name: 'inches to millimetres', ours: inchesToMm, from: 'inch', to: 'mm' },
    { name: 'millimetres to inches', ours: mmToInches, from: 'mm', to: 'inch' },
    { name: 'pounds to kilograms', ours: poundsToKg, from: 'lbm', to: 'kg' },
    { name: 'kilograms to pounds', ours: kgToPounds, from: 'kg', to: 'lbm' },
  ])('$name', ({ ours, from, to }) => {
    fc.assert(fc.property(amount, (value) => near(ours(value), unit(value, from).toNumber(to))));
  });

  it.each([
    { text: '48 in', mm: unit(48, 'inch').toNumber('mm') },
    { text: '8 ft', mm: unit(8, 'ft').toNumber('mm') },
    { text: '1.2 m', mm: unit(1.2, 'm').toNumber('mm') },
  ])('reads $text as $mm mm', ({ text, mm }) => {
    expect(parseLengthMm(text, 'metric')).toBeCloseTo(mm, 9);
  });

  it('reads 5000 lb as the library does', () => {
    expect(parseMassKg('5000 lb', 'metric')).toBeCloseTo(unit(5000, 'lbm').toNumber('kg'), 9);
  });
});

/**
 * A beam of `count` Euler-Bernoulli elements, solved as a linear system by mathjs. Deflection and slope at each node;
 * the exact answer for point loads at nodes and, with consistent node loads, for a uniform load at the nodes.
 */
function solveBeam(beam: {
  spanMm: number;
  inertiaMm4: number;
  count: number;
  ends: 'pinned' | 'fixed';
  forces: readonly { node: number; forceN: number }[];
  uniformN?: number;
}): number[] {
  const { spanMm, inertiaMm4, count, ends, forces, uniformN = 0 } = beam;
  const l = spanMm / count;
  const EI = STEEL_MODULUS_N_MM2 * inertiaMm4;
  const size = 2 * (count + 1);
  const stiffness = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const load = new Array<number>(size).fill(0);
  const element = [
    [12, 6 * l, -12, 6 * l],
    [6 * l, 4 * l * l, -6 * l, 2 * l * l],
    [-12, -6 * l, 12, -6 * l],
    [6 * l, 2 * l * l, -6 * l, 4 * l * l],
  ];
  const w = uniformN / spanMm;
  const consistent = [(w * l) / 2, (w * l * l) / 12, (w * l) / 2, (-w * l * l) / 12];
  for (let e = 0; e < count; e += 1) {
    for (let i = 0; i < 4; i += 1) {
      load[2 * e + i]! += consistent[i]!;
      for (let j = 0; j < 4; j += 1) stiffness[2 * e + i]![2 * e + j]! += (EI / l ** 3) * element[i]![j]!;
    }
  }
  for (const { node, forceN } of forces) load[2 * node]! += forceN;
  const held = ends === 'pinned' ? [0, size - 2] : [0, 1, size - 2, size - 1];
  const free = Array.from({ length: size }, (_, dof) => dof).filter((dof) => !held.includes(dof));
  const reduced = subset(matrix(stiffness), at(free, free));
  const solved = lusolve(reduced, matrix(free.map((dof) => load[dof]!)));
  const moved = new Array<number>(size).fill(0);
  for (const [n, dof] of free.entries()) moved[dof] = Number(solved.get([n, 0]));
  return moved.filter((_, dof) => dof % 2 === 0);
}

describe('beam deflections agree with a solved system of elements', () => {
  const beam = { spanMm: 2700, inertiaMm4: 1_300_000 };
  const steel = { ...beam, count: 12 };

  it.each([
    { kind: 'uniform', node: 6, theirs: { ends: 'pinned', forces: [], uniformN: 9000 } },
    { kind: 'central-point', node: 6, theirs: { ends: 'pinned', forces: [{ node: 6, forceN: 9000 }] } },
    {
      kind: 'third-points',
      node: 6,
      theirs: {
        ends: 'pinned',
        forces: [
          { node: 4, forceN: 9000 },
          { node: 8, forceN: 9000 },
        ],
      },
    },
    { kind: 'uniform-fixed-ends', node: 6, theirs: { ends: 'fixed', forces: [], uniformN: 9000 } },
    {
      kind: 'central-point-fixed-ends',
      node: 6,
      theirs: { ends: 'fixed', forces: [{ node: 6, forceN: 9000 }] },
    },
  ] as const)('$kind', ({ kind, node, theirs }) => {
    const ours = bendBeam({ kind, forceN: 9000 }, beam).deflectionMm;
    expect(ours).toBeCloseTo(solveBeam({ ...steel, ...theirs })[node]!, 6);
  });

  it.each([1, 3, 5, 9])('one force at twelfth %d of the span, under the force', (node) => {
    const ours = bendBeam(
      { kind: 'point-at', forceN: 9000, fromEndMm: (2700 * node) / 12 },
      beam,
    ).deflectionMm;
    expect(ours).toBeCloseTo(
      solveBeam({ ...steel, ends: 'pinned', forces: [{ node, forceN: 9000 }] })[node]!,
      6,
    );
  });
});

describe('the two estimates for a longer load centre', () => {
  it('stand in the order that 29 CFR 1910.178 App. A says: the field rule never above the moment rule', () => {
    const length = fc.double({ min: 1, max: 3000, noNaN: true });
    fc.assert(
      fc.property(length, length, length, (plateLoadCentreMm, loadCentreMm, x) => {
        const derating = { capacityKg: 2000, plateLoadCentreMm, loadCentreMm };
        const moment = momentDeratedKg(derating, x);
        return moment.kind === 'estimate' && fieldDeratedKg(derating) <= moment.kg * (1 + 1e-12);
      }),
    );
  });
});
