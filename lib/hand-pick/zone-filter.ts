/** The zones of the figure, top to bottom, with the least hand height of each, mm (heights of an average adult, from memory). */
export const ZONES = [
  { id: 'above-shoulder', fromMm: 1400, men: [10, 5], women: [7, 3] },
  { id: 'elbow-to-shoulder', fromMm: 1050, men: [20, 10], women: [13, 7] },
  { id: 'knuckle-to-elbow', fromMm: 750, men: [25, 15], women: [16, 10] },
  { id: 'lower-leg-to-knuckle', fromMm: 250, men: [20, 10], women: [13, 7] },
  { id: 'below-lower-leg', fromMm: 0, men: [10, 5], women: [7, 3] },
] as const;
export type ZoneId = (typeof ZONES)[number]['id'];

export type ZoneFilter = {
  /** The zone that gives the least of those the hands pass through; of equals the uppermost. */
  zone: ZoneId;
  /** kg, after the reductions: at or below it no further assessment is called for. */
  men: { closeKg: number; armsExtendedKg: number };
  women: { closeKg: number; armsExtendedKg: number };
  frequencyPercentOff: number;
  twistPercentOff: number;
};

/**
 * Up to what mass does the simple filter of the British regulator ask for no further assessment of this lift?
 *
 * HSE INDG143 (from memory): the least value of the zones the hands pass through, both ends included; reduced for
 * the rate and for the twist. Values are filters for a quick look, not safe limits; two hands, easy grip, steady stand.
 */
export function zoneFilter(lift: {
  originMm: number;
  destinationMm: number;
  liftsPerMinute: number;
  asymmetryDeg: number;
}): ZoneFilter {
  const low = Math.min(lift.originMm, lift.destinationMm);
  const high = Math.max(lift.originMm, lift.destinationMm);
  const passed = ZONES.filter(({ fromMm }, at) => {
    const upToMm = ZONES[at - 1]?.fromMm ?? Number.POSITIVE_INFINITY;
    return high >= fromMm && low < upToMm;
  });
  const least = passed.reduce((worst, zone) => (zone.men[0] < worst.men[0] ? zone : worst));
  const frequencyPercentOff = frequencyPercent(lift.liftsPerMinute);
  const twistPercentOff = twistPercent(lift.asymmetryDeg);
  const left = (kg: number) => (kg * (100 - frequencyPercentOff) * (100 - twistPercentOff)) / 10_000;
  return {
    zone: least.id,
    men: { closeKg: left(least.men[0]), armsExtendedKg: left(least.men[1]) },
    women: { closeKg: left(least.women[0]), armsExtendedKg: left(least.women[1]) },
    frequencyPercentOff,
    twistPercentOff,
  };
}

/**
 * Up to 30 an hour nothing; 1-2 a minute 30 %, 5-8 a minute 50 %, above 12 a minute 80 %. Rates that the text leaves
 * between two of these take the larger reduction.
 */
function frequencyPercent(liftsPerMinute: number): number {
  if (liftsPerMinute <= 0.5) return 0;
  if (liftsPerMinute <= 2) return 30;
  return liftsPerMinute <= 8 ? 50 : 80;
}

/** Beyond 45 degrees 10 %, beyond 90 degrees 20 %. */
function twistPercent(asymmetryDeg: number): number {
  if (asymmetryDeg <= 45) return 0;
  return asymmetryDeg <= 90 ? 10 : 20;
}
