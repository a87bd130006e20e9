/** What the frequency multiplier depends on. Hands' height at the origin, mm above the floor. */
export type FrequencyInput = { liftsPerMinute: number; durationHours: number; handHeightMm: number };

/** Knuckle height: the tables of frequency and coupling change their column here. A height of exactly this is above. */
export const KNUCKLE_HEIGHT_MM = 750;

/**
 * NIOSH publication 94-110, table 5 (from memory). Columns: up to 1 h, up to 2 h, up to 8 h; in each the hands below
 * 75 cm, then at 75 cm or above. A multiplier of 0 means that no such lifting is recommended at any mass.
 */
export const FREQUENCY_TABLE = [
  { liftsPerMinute: 0.2, multipliers: [1, 1, 0.95, 0.95, 0.85, 0.85] },
  { liftsPerMinute: 0.5, multipliers: [0.97, 0.97, 0.92, 0.92, 0.81, 0.81] },
  { liftsPerMinute: 1, multipliers: [0.94, 0.94, 0.88, 0.88, 0.75, 0.75] },
  { liftsPerMinute: 2, multipliers: [0.91, 0.91, 0.84, 0.84, 0.65, 0.65] },
  { liftsPerMinute: 3, multipliers: [0.88, 0.88, 0.79, 0.79, 0.55, 0.55] },
  { liftsPerMinute: 4, multipliers: [0.84, 0.84, 0.72, 0.72, 0.45, 0.45] },
  { liftsPerMinute: 5, multipliers: [0.8, 0.8, 0.6, 0.6, 0.35, 0.35] },
  { liftsPerMinute: 6, multipliers: [0.75, 0.75, 0.5, 0.5, 0.27, 0.27] },
  { liftsPerMinute: 7, multipliers: [0.7, 0.7, 0.42, 0.42, 0.22, 0.22] },
  { liftsPerMinute: 8, multipliers: [0.6, 0.6, 0.35, 0.35, 0.18, 0.18] },
  { liftsPerMinute: 9, multipliers: [0.52, 0.52, 0.3, 0.3, 0, 0.15] },
  { liftsPerMinute: 10, multipliers: [0.45, 0.45, 0.26, 0.26, 0, 0.13] },
  { liftsPerMinute: 11, multipliers: [0.41, 0.41, 0, 0.23, 0, 0] },
  { liftsPerMinute: 12, multipliers: [0.37, 0.37, 0, 0.21, 0, 0] },
  { liftsPerMinute: 13, multipliers: [0, 0.34, 0, 0, 0, 0] },
  { liftsPerMinute: 14, multipliers: [0, 0.31, 0, 0, 0, 0] },
  { liftsPerMinute: 15, multipliers: [0, 0.28, 0, 0, 0, 0] },
] as const satisfies readonly {
  liftsPerMinute: number;
  multipliers: readonly [number, number, number, number, number, number];
}[];

/**
 * What share of the weight limit is left at this rate of lifting, kept up for this long?
 *
 * The table row of the same or the next higher rate: between rows nothing is interpolated. Below 0.2 lifts a minute
 * the row of 0.2 counts; above 15, or above 8 hours (the tables end there), nothing is recommended: 0. Exactly 1, 2
 * or 8 hours still belong to the shorter band.
 *
 * @example frequencyMultiplier({ liftsPerMinute: 2.5, durationHours: 1, handHeightMm: 900 }) //=> 0.88 (row of 3)
 */
export function frequencyMultiplier({ liftsPerMinute, durationHours, handHeightMm }: FrequencyInput): number {
  const row = FREQUENCY_TABLE.find((candidate) => candidate.liftsPerMinute >= liftsPerMinute);
  const band = durationBand(durationHours);
  if (row === undefined || band === null) return 0;
  const column = DURATION_BANDS.indexOf(band) * 2 + (handHeightMm >= KNUCKLE_HEIGHT_MM ? 1 : 0);
  return row.multipliers[column] ?? 0;
}

export const DURATION_BANDS = [1, 2, 8] as const;
export type DurationBandHours = (typeof DURATION_BANDS)[number];

/** Which duration band, named by its longest time in hours, do these hours fall in? Null past the last. */
export function durationBand(durationHours: number): DurationBandHours | null {
  return DURATION_BANDS.find((hours) => durationHours <= hours) ?? null;
}

/**
 * How many lifts a minute count when the lifting is not continuous over the sampled 15 minutes?
 *
 * lifts a minute while lifting x minutes of lifting / 15. Holds up to 15 lifts a minute (94-110, special frequency
 * adjustment, from memory). Throws a RangeError outside 0 to 15 minutes, or above 15 lifts a minute.
 */
export function averagedLiftsPerMinute(whileLifting: {
  liftsPerMinute: number;
  minutesIn15: number;
}): number {
  const { liftsPerMinute, minutesIn15 } = whileLifting;
  if (!(minutesIn15 >= 0 && minutesIn15 <= 15)) throw new RangeError(`${minutesIn15} of 15 minutes`);
  if (!(liftsPerMinute >= 0 && liftsPerMinute <= 15)) {
    throw new RangeError(`${liftsPerMinute} lifts a minute: the adjustment holds from 0 to 15`);
  }
  return (liftsPerMinute * minutesIn15) / 15;
}
