/** The rules of one lift check, in the order in which they are run, listed and used to break ties. */
export const RULE_IDS = [
  'truck-fit',
  'operator-authorised',
  'slot-free',
  'depth-reach',
  'lift-height',
  'aisle-turn',
  'plate-capacity',
  'tilt-capacity',
  'centre-height',
  'fork-length',
  'fork-arms',
  'mast-overhead',
  'load-overhead',
  'opening-height',
  'sprinkler-clearance',
  'opening-width',
  'pallet-support',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
  'rack-condition',
] as const;

export type RuleId = (typeof RULE_IDS)[number];

/** Rules that compare a mass with a limit: these alone can be thin, and these alone give mostKg. */
export const MASS_RULES = [
  'plate-capacity',
  'tilt-capacity',
  'fork-arms',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
] as const satisfies readonly RuleId[];

/** Rules answered by yes or no: failed they count as an infinite use, passed as none. */
export const STATE_RULES = [
  'truck-fit',
  'operator-authorised',
  'slot-free',
  'rack-condition',
] as const satisfies readonly RuleId[];

/**
 * Rules that no policy may leave out of mustKnow: they stand on the manufacturer's plate and the rack's notice,
 * and a policy that let them stay unknown would grant what neither of them says.
 */
export const ALWAYS_MUST_KNOW = [
  'plate-capacity',
  'tilt-capacity',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
] as const satisfies readonly RuleId[];
