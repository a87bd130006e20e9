import type { HandPick, Load } from '../model/load.ts';
import type { Place } from '../model/site-index.ts';
import { type HandLift, judgeHandLift } from './hand-lift.ts';

/** One case of a load, lifted by hand from where the load stands. */
export type HandPickAnswer = {
  /** At the pick face: this is the index the audit reads. */
  origin: HandLift;
  /**
   * The same case at the place where it is put down, the hands as far out and as far round as at the pick face. It
   * counts as well where the case must be set down with care (94-110: significant control at the destination).
   */
  destination: HandLift;
};

/**
 * What does lifting one case of this load by hand from this location ask of a person? Null: this load is not picked
 * by hand. The hands' height is the location's beam top plus the load's grip height.
 */
export function handPickAt(
  place: { level: Pick<Place['level'], 'beamTopMm'> },
  load: Load,
): HandPickAnswer | null {
  return load.handPick === null ? null : handPickFrom(place.level.beamTopMm, load.handPick);
}

/** The same, from the height that the pallet stands on, mm above the floor. */
export function handPickFrom(beamTopMm: number, pick: HandPick): HandPickAnswer {
  const originMm = beamTopMm + pick.gripHeightMm;
  const { massKg, horizontalMm, asymmetryDeg, liftsPerMinute, durationHours, coupling } = pick;
  const travelMm = Math.abs(pick.destinationHeightMm - originMm);
  const shared = { massKg, horizontalMm, asymmetryDeg, liftsPerMinute, durationHours, coupling, travelMm };
  return {
    origin: judgeHandLift({ ...shared, handHeightMm: originMm }),
    destination: judgeHandLift({ ...shared, handHeightMm: pick.destinationHeightMm }),
  };
}
