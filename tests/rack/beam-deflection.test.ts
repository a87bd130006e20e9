import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BeamCase,
  bendBeam,
  bendPair,
  STEEL_MODULUS_N_MM2,
  shareOfUniform,
} from '../../lib/rack/beam-deflection.ts';

const beam = { spanMm: 2700, inertiaMm4: 1_300_000 };

/**
 * The handbook formulas against the beam itself: M(x) from statics for a beam on two pins, then the deflection under
 * the asked point by the unit-load method, integral of M m / EI, by Simpson's rule piece by piece between the forces.
 */
function integrate(
  load: Exclude<BeamCase, { kind: `${string}fixed-ends` }>,
  spanMm: number,
  inertiaMm4: number,
) {
  const L = spanMm;
  const point = (P: number, a: number) => (x: number) =>
    x <= a ? (P * (L - a) * x) / L : (P * a * (L - x)) / L;
  const P = load.forceN;
  const at = load.kind === 'point-at' ? load.fromEndMm : L / 2;
  const moment =
    load.kind === 'uniform'
      ? (x: number) => (P * x * (L - x)) / (2 * L)
      : load.kind === 'third-points'
        ? (x: number) => point(P, L / 3)(x) + point(P, (2 * L) / 3)(x)
        : point(P, at);
  const kinks = [0, L / 3, at, (2 * L) / 3, L].sort((a, b) => a - b);
  const unit = point(1, at);
  let sum = 0;
  let momentNmm = 0;
  for (const [n, to] of kinks.slice(1).entries()) {
    const from = kinks[n]!;
    const h = (to - from) / 64;
    for (let k = 0; k <= 64; k += 1) {
      const x = from + k * h;
      const weight = k === 0 || k === 64 ? 1 : k % 2 === 1 ? 4 : 2;
      sum += ((weight * h) / 3) * moment(x) * unit(x);
      momentNmm = Math.max(momentNmm, moment(x));
    }
  }
  return { deflectionMm: sum / (STEEL_MODULUS_N_MM2 * inertiaMm4), momentNmm };
}

describe('bendBeam', () => {
  it.each([
    { kind: 'uniform', forceN: 9000 },
    { kind: 'central-point', forceN: 9000 },
    { kind: 'third-points', forceN: 4500 },
    { kind: 'point-at', forceN: 9000, fromEndMm: 700 },
    { kind: 'point-at', forceN: 9000, fromEndMm: 2000 },
  ] as const)('agrees with numeric integration of the bending moment: $kind', (load) => {
    const ours = bendBeam(load, beam);
    const integrated = integrate(load, beam.spanMm, beam.inertiaMm4);
    expect(ours.deflectionMm).toBeCloseTo(integrated.deflectionMm, 8);
    expect(ours.momentNmm / integrated.momentNmm).toBeCloseTo(1, 8);
  });

  it('agrees with numeric integration wherever a force stands', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: 1000, max: 4000, noNaN: true }),
        (fraction, spanMm) => {
          const load = { kind: 'point-at', forceN: 5000, fromEndMm: fraction * spanMm } as const;
          const ours = bendBeam(load, { spanMm, inertiaMm4: 1e6 }).deflectionMm;
          return Math.abs(ours - integrate(load, spanMm, 1e6).deflectionMm) < 1e-7;
        },
      ),
    );
  });

  it('of a force at the middle is the central case', () => {
    const middle = bendBeam({ kind: 'point-at', forceN: 5000, fromEndMm: 1350 }, beam);
    const central = bendBeam({ kind: 'central-point', forceN: 5000 }, beam);
    expect(middle.deflectionMm).toBeCloseTo(central.deflectionMm, 12);
    expect(middle.momentNmm).toBeCloseTo(central.momentNmm, 6);
  });

  it('with ends held fast bends a fifth (spread) and a quarter (central) of a beam on pins', () => {
    // 1/384 against 5/384, and 1/192 against 1/48
    const spread = bendBeam({ kind: 'uniform-fixed-ends', forceN: 9000 }, beam);
    expect(spread.deflectionMm * 5).toBeCloseTo(
      bendBeam({ kind: 'uniform', forceN: 9000 }, beam).deflectionMm,
      10,
    );
    const central = bendBeam({ kind: 'central-point-fixed-ends', forceN: 9000 }, beam);
    expect(central.deflectionMm * 4).toBeCloseTo(
      bendBeam({ kind: 'central-point', forceN: 9000 }, beam).deflectionMm,
      10,
    );
  });

  it.each([-1, 2700.1, Number.NaN])('refuses a force at %d mm of a 2700 mm span', (fromEndMm) => {
    expect(() => bendBeam({ kind: 'point-at', forceN: 1, fromEndMm }, beam)).toThrow(RangeError);
  });
});

describe('bendPair', () => {
  it('gives each beam half of the mass', () => {
    const pair = bendPair({ massKg: 2000, loading: 'uniform', ...beam });
    const one = bendBeam({ kind: 'uniform', forceN: 1000 * 9.80665 }, beam);
    expect(pair).toEqual(one);
  });

  it('splits a mass at the thirds into two forces on each beam', () => {
    const pair = bendPair({ massKg: 2000, loading: 'third-points', ...beam });
    expect(pair.momentNmm).toBeCloseTo((500 * 9.80665 * 2700) / 3, 6);
  });
});

describe('shareOfUniform', () => {
  it.each([
    { loading: 'uniform', share: 1 },
    { loading: 'central-point', share: 0.5 },
    { loading: 'third-points', share: 0.7337 },
  ] as const)('allows $share of the notice for $loading', ({ loading, share }) => {
    expect(shareOfUniform(loading)).toBeCloseTo(share, 4);
  });
});
