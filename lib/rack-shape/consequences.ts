import type { Load } from '../model/load.ts';
import { compareLifts, type LiftComparison } from './compare-lifts.ts';
import { compareStanding, type StandingComparison } from './compare-standing.ts';
import { compareSteel, type SteelComparison } from './compare-steel.ts';
import type { BeforeAfter } from './site-of-run.ts';

/** What a change of a run comes to, reckoned before it is saved. */
export type Consequences = { steel: SteelComparison; standing: StandingComparison; lifts: LiftComparison };

/** `reference`: a load to try every location with, or null; `asOf`: the time at which checks are judged, or null. */
export type ConsequencesAsked = { sites: BeforeAfter; reference: Load | null; asOf: string | null };

export function weighConsequences({ sites, reference, asOf }: ConsequencesAsked): Consequences {
  return {
    steel: compareSteel(sites),
    standing: compareStanding(sites),
    lifts: compareLifts(sites, reference, asOf),
  };
}
