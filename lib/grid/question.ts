import type { Context } from '../check/step.ts';
import type { Load } from '../model/load.ts';

/**
 * What is asked of every location and truck at once. `stored`: the load that stands in each location (taking it down,
 * or placing it back with `from` its own location); a location with nothing in it has no answer.
 */
export type GridQuestion = {
  load: { kind: 'one'; load: Load } | { kind: 'stored' };
  /** Truck ids, in the order of the answer's columns. */
  trucks: readonly string[];
  context: Context;
};

/** Marks a cell without an answer (nothing stands there) in `verdicts` and `governing`. */
export const NO_ANSWER = 255;

/**
 * Answers for locations x trucks in row-major order: cell = location * trucks + truck, locations in site order.
 * verdicts: index into VERDICTS; governing: index into RULE_IDS; mostKg: kg, or -1 where it cannot be said (null).
 */
export type GridAnswer = {
  locationCount: number;
  truckCount: number;
  verdicts: Uint8Array;
  governing: Uint8Array;
  mostKg: Float64Array;
  /** Assessed mass of the load asked about, per location; -1 unknown. One entry for kind `one`. */
  assessedKg: Float64Array;
};
