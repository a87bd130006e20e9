/** Modulus of elasticity of structural steel, N/mm2 (EN 1993-1-1, 3.2.6). */
export const STEEL_MODULUS_N_MM2 = 210_000;

/** Newtons for a kilogram at rest (standard gravity, exact by definition). */
export const STANDARD_GRAVITY_N_KG = 9.80665;

/** How a single beam is held and loaded. Forces are for that one beam. */
export type BeamCase =
  | { kind: 'uniform'; forceN: number }
  | { kind: 'central-point'; forceN: number }
  /** Two equal forces at the thirds; forceN is each of them. */
  | { kind: 'third-points'; forceN: number }
  /** One force at fromEndMm; deflection is told under the force. */
  | { kind: 'point-at'; forceN: number; fromEndMm: number }
  | { kind: 'uniform-fixed-ends'; forceN: number }
  | { kind: 'central-point-fixed-ends'; forceN: number };

export type Beam = { spanMm: number; inertiaMm4: number; modulusNmm2?: number };

export type Bending = { deflectionMm: number; momentNmm: number };

/**
 * How far does one beam bend, and what is the largest moment in it? mm, Nmm.
 *
 * Elastic handbook cases, shear left out. Simply supported: uniform W (all of it) 5WL^3/384EI and WL/8; central P
 * PL^3/48EI and PL/4; P at each third 23PL^3/648EI and PL/3; P at a, b = L - a: Pa^2b^2/3EIL under it and Pab/L.
 * Ends held fast: uniform WL^3/384EI and WL/12 (at the ends); central P PL^3/192EI and PL/8.
 * Throws a RangeError for a force that does not stand on the span.
 */
export function bendBeam(load: BeamCase, beam: Beam): Bending {
  const { spanMm: L, inertiaMm4, modulusNmm2 = STEEL_MODULUS_N_MM2 } = beam;
  const EI = modulusNmm2 * inertiaMm4;
  const P = load.forceN;
  switch (load.kind) {
    case 'uniform':
      return { deflectionMm: (5 * P * L ** 3) / (384 * EI), momentNmm: (P * L) / 8 };
    case 'central-point':
      return { deflectionMm: (P * L ** 3) / (48 * EI), momentNmm: (P * L) / 4 };
    case 'third-points':
      return { deflectionMm: (23 * P * L ** 3) / (648 * EI), momentNmm: (P * L) / 3 };
    case 'point-at': {
      const a = load.fromEndMm;
      const b = L - a;
      if (!(a >= 0 && b >= 0)) throw new RangeError(`a force at ${a} mm does not stand on a span of ${L} mm`);
      return { deflectionMm: (P * a ** 2 * b ** 2) / (3 * EI * L), momentNmm: (P * a * b) / L };
    }
    case 'uniform-fixed-ends':
      return { deflectionMm: (P * L ** 3) / (384 * EI), momentNmm: (P * L) / 12 };
    case 'central-point-fixed-ends':
      return { deflectionMm: (P * L ** 3) / (192 * EI), momentNmm: (P * L) / 8 };
  }
}

/** How the mass on a pair of beams lies on it. */
export type PairLoading = 'uniform' | 'central-point' | 'third-points';

/**
 * How far do the two beams of a pair bend under this mass on the pair? Each carries half; inertia is that of one beam.
 * Pin-ended, which is the safe side of a real connector. Advice only: the rack's notice decides.
 */
export function bendPair(pair: {
  massKg: number;
  loading: PairLoading;
  spanMm: number;
  inertiaMm4: number;
}): Bending {
  const perBeamN = (pair.massKg * STANDARD_GRAVITY_N_KG) / 2;
  // At the thirds the case is stated per force, and there are two of them on each beam.
  const forceN = pair.loading === 'third-points' ? perBeamN / 2 : perBeamN;
  return bendBeam({ kind: pair.loading, forceN }, { spanMm: pair.spanMm, inertiaMm4: pair.inertiaMm4 });
}

/**
 * What share of the uniformly spread load on the notice may stand so? The lesser of strength and deflection: a central
 * point load bends a beam 2 times (moment) and 1.6 times (deflection) as much, so 0.5; two equal loads at the thirds
 * 4/3 and 1.363 times, so 0.734 by deflection.
 */
export function shareOfUniform(loading: PairLoading): number {
  const beam = { spanMm: 1000, inertiaMm4: 1e6 };
  const spread = bendBeam({ kind: 'uniform', forceN: 1 }, beam);
  const placed = bendBeam({ kind: loading, forceN: loading === 'third-points' ? 0.5 : 1 }, beam);
  return Math.min(spread.momentNmm / placed.momentNmm, spread.deflectionMm / placed.deflectionMm);
}
