/** From this stretch on a chain's replacement is planned, and from this on it is replaced. Percent of its new length. */
export const PLAN_STRETCH_PERCENT = 2;
export const REPLACE_STRETCH_PERCENT = 3;

export type ChainState = 'good' | 'plan-replacement' | 'replace';

/**
 * How far has a lift chain stretched, and what does that ask for?
 *
 * Measured over pins counted along the strand that carries load: n pins span n - 1 pitches. 3 % or more: replace (US
 * Army TM 10-3930-671-24); 2 % or more: plan it (common practice). Exactly a limit counts as reached.
 * Throws a RangeError for fewer than 2 pins or a strand shorter than when new.
 */
export function chainStretch(strand: { pitchMm: number; pinsCounted: number; measuredMm: number }): {
  percent: number;
  state: ChainState;
} {
  const { pitchMm, pinsCounted, measuredMm } = strand;
  if (!(Number.isInteger(pinsCounted) && pinsCounted >= 2))
    throw new RangeError(`${pinsCounted} pins counted`);
  const newMm = pitchMm * (pinsCounted - 1);
  if (!(measuredMm >= newMm))
    throw new RangeError(`${measuredMm} mm is less than the new length of ${newMm} mm`);
  const percent = (measuredMm / newMm - 1) * 100;
  return { percent, state: stateAt(measuredMm, newMm) };
}

/** The length, mm, at which this many pins of a chain call for replacement. */
export function replaceLengthMm(strand: { pitchMm: number; pinsCounted: number }): number {
  return atStretch(strand.pitchMm * (strand.pinsCounted - 1), REPLACE_STRETCH_PERCENT);
}

// Lengths are compared, not percentages: 103/100 - 1 in binary is a little more than 3 %.
function stateAt(measuredMm: number, newMm: number): ChainState {
  if (measuredMm >= atStretch(newMm, REPLACE_STRETCH_PERCENT)) return 'replace';
  return measuredMm >= atStretch(newMm, PLAN_STRETCH_PERCENT) ? 'plan-replacement' : 'good';
}

function atStretch(newMm: number, percent: number): number {
  return (newMm * (100 + percent)) / 100;
}
