/** What a rack's height over its depth asks for (ANSI MH16.1, single rows). */
export type StabilityClass = 'normal-anchors' | 'stronger-anchors' | 'ties-or-certified-anchors';

export const NORMAL_RATIO = 6;
export const TIES_RATIO = 8;

/** Force at the top beam of an empty frame that stronger anchors must hold: 350 lbf. */
export const ANCHOR_TEST_FORCE_N = 1557;

export type Stability = { ratio: number; class: StabilityClass };

/**
 * How slender is a single row, and what must hold it? Ratio = top loaded beam height / frame depth outside to outside.
 * Up to 6: normal anchors; up to 8: anchors for 350 lbf at the top beam, frame empty; above: cross-aisle ties or
 * anchors certified by an engineer. Exactly 6 and 8 belong to the milder class.
 *
 * @example frameStability({ topBeamMm: 9000, frameDepthMm: 1100 }).class //=> 'ties-or-certified-anchors' (8.18)
 */
export function frameStability(frame: { topBeamMm: number; frameDepthMm: number }): Stability {
  const ratio = frame.topBeamMm / frame.frameDepthMm;
  const milder = ratio <= NORMAL_RATIO ? 'normal-anchors' : 'stronger-anchors';
  return { ratio, class: ratio <= TIES_RATIO ? milder : 'ties-or-certified-anchors' };
}

/** The highest beam that still goes with normal anchors at this depth, mm. */
export function highestBeamMm(frameDepthMm: number): number {
  return NORMAL_RATIO * frameDepthMm;
}

/** What a sideways force at a height asks of a frame's feet, its own weight left out. */
export type Overturning = { momentNmm: number; coupleN: number };

/** Moment = force x height; the couple between front and rear foot = moment / depth. */
export function overturning(at: { forceN: number; heightMm: number; frameDepthMm: number }): Overturning {
  const momentNmm = at.forceN * at.heightMm;
  return { momentNmm, coupleN: momentNmm / at.frameDepthMm };
}

/** Whose limit for an upright out of plumb: height divided by this. */
export const PLUMB_RULES = {
  /** Erected and unloaded, EN 15620 (from memory) and FEM 10.3.01. */
  'class 400, unloaded': 350,
  'class 300, unloaded': 500,
  /** 1/2 in per 10 ft, ANSI MH16.1 practice. */
  'loaded, US': 240,
} as const;
export type PlumbRule = keyof typeof PLUMB_RULES;

/** How far may an upright of this height lean, mm? Exactly the limit passes. */
export function outOfPlumbLimitMm(heightMm: number, rule: PlumbRule): number {
  return heightMm / PLUMB_RULES[rule];
}
