import { BEAMS } from './checks-beams.ts';
import { CLEARANCE_LIMITS, CLEARANCES } from './checks-clearances.ts';
import { DERATING, DERATING_LIMITS } from './checks-derating.ts';
import { FRAME_LIMITS, FRAMES } from './checks-frames.ts';
import { LIFTING_EXAMPLES, LIFTING_LIMITS } from './checks-lifting-examples.ts';
import { LIFTING_TABLE_LIMITS, LIFTING_TABLES } from './checks-lifting-tables.ts';
import { LOAD_AND_PLATE, LOAD_AND_PLATE_LIMITS } from './checks-load-and-plate.ts';
import { REACH_AND_AISLE, REACH_AND_AISLE_LIMITS } from './checks-reach-and-aisle.ts';
import { UNITS } from './checks-units.ts';
import { WALK_ROUND, WALK_ROUND_LIMITS } from './checks-walk-round.ts';
import { ZONE_FILTER } from './checks-zone-filter.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

export type Chapter = {
  title: string;
  checks: readonly ReferenceCheck[];
  limits: readonly LimitCheck[];
};

/** Every figure of the program that is held against the outside. The tests run it; docs/checks.md is written from it. */
export const CHAPTERS: readonly Chapter[] = [
  { title: 'Units', checks: UNITS, limits: [] },
  { title: 'Loads, plates and forks', checks: LOAD_AND_PLATE, limits: LOAD_AND_PLATE_LIMITS },
  { title: 'Estimates beyond a plate', checks: DERATING, limits: DERATING_LIMITS },
  { title: 'Reach, aisle and sprinklers', checks: REACH_AND_AISLE, limits: REACH_AND_AISLE_LIMITS },
  { title: 'Clearances in the rack', checks: CLEARANCES, limits: CLEARANCE_LIMITS },
  { title: 'Beams', checks: BEAMS, limits: [] },
  { title: 'Frames, notices and damage', checks: FRAMES, limits: FRAME_LIMITS },
  { title: 'Picks by hand: worked examples', checks: LIFTING_EXAMPLES, limits: LIFTING_LIMITS },
  { title: 'Picks by hand: the tables', checks: LIFTING_TABLES, limits: LIFTING_TABLE_LIMITS },
  { title: 'Picks by hand: the simple filter', checks: ZONE_FILTER, limits: [] },
  { title: 'Measured on the walk round', checks: WALK_ROUND, limits: WALK_ROUND_LIMITS },
];
