import { racksInPlace } from '../check/racks-in-place.ts';
import { rankTrucks } from '../check/rank-trucks.ts';
import { type LiftAnswer, type Outcome, type Step, VERDICTS, type Verdict } from '../check/step.ts';
import { applyToIndex } from '../model/apply-to-index.ts';
import type { Load } from '../model/load.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { found, type Place, type SiteIndex } from '../model/site-index.ts';

/** A rule of the racks that a place keeps or breaks otherwise after the change. */
export type RackTurn = { before: Outcome; step: Step };

/** What a change of a load turns at one place where it stands. */
export type PlaceTurn = {
  location: string;
  /** Taking it down: the best verdict of the fleet, and how many trucks may; null when both stay. */
  lift: { from: Verdict; to: Verdict; mayBefore: number; mayAfter: number; governing: RuleId } | null;
  racks: readonly RackTurn[];
  isWorse: boolean;
};

export type LoadConsequences = {
  /** In how many places the load stands. */
  standing: number;
  worse: number;
  better: number;
  /** Worse ones first, at most MOST_TURNS. */
  turns: readonly PlaceTurn[];
};

export const MOST_TURNS = 200;

/**
 * What does a change of a load come to where it stands now? Each place is asked before and after: which trucks may take
 * it down, and which rules of the racks it keeps there, by lib/check. Time is not judged: checks and holds stay out.
 *
 * Trucks are asked once for places that are alike to them: the same aisle, beam top and row.
 */
export function weighLoadChange(index: SiteIndex, load: Load): LoadConsequences {
  const before = found(index.loads, load.id, 'load');
  const change = { noun: 'load', subject: load.id, before, after: load, ahead: null } as const;
  const changed = applyToIndex(index, [change]);
  const [was, is] = [takeDownBy(index, before), takeDownBy(changed, load)];
  const turns: PlaceTurn[] = [];
  let standing = 0;
  for (const { location } of index.site.stock.filter((row) => row.load === load.id)) {
    standing += 1;
    const place = found(index.places, location, 'location');
    const lift = liftTurn(was(place), is(place));
    const racks = rackTurns(racksInPlace(index, location), racksInPlace(changed, location));
    if (lift === null && racks.length === 0) continue;
    turns.push({ location, lift, racks, isWorse: isWorse(lift, racks) });
  }
  const worse = turns.filter((turn) => turn.isWorse).length;
  turns.sort((a, b) => Number(b.isWorse) - Number(a.isWorse));
  return { standing, worse, better: turns.length - worse, turns: turns.slice(0, MOST_TURNS) };
}

type TakeDown = { best: LiftAnswer | null; may: number };

/** Who may take the load down from a place, asked once for each aisle, beam top and row. */
function takeDownBy(index: SiteIndex, load: Load): (place: Place) => TakeDown {
  const known = new Map<string, TakeDown>();
  return (place) => {
    const alike = JSON.stringify([place.run.aisleId, place.level.beamTopMm, place.row]);
    const before = known.get(alike);
    if (before !== undefined) return before;
    const context = {
      operation: 'retrieve',
      asOf: null,
      operator: null,
      stock: 'as-is',
      from: null,
    } as const;
    const ranked = rankTrucks(index, { load, place, context });
    const may = ranked.filter(({ verdict }) => verdict === 'clear' || verdict === 'thin').length;
    const answer = { best: ranked[0] ?? null, may };
    known.set(alike, answer);
    return answer;
  };
}

function liftTurn(was: TakeDown, is: TakeDown): PlaceTurn['lift'] {
  if (was.best === null || is.best === null) return null;
  if (was.best.verdict === is.best.verdict && was.may === is.may) return null;
  return {
    from: was.best.verdict,
    to: is.best.verdict,
    mayBefore: was.may,
    mayAfter: is.may,
    governing: is.best.governing,
  };
}

function rackTurns(was: readonly Step[], is: readonly Step[]): RackTurn[] {
  return is.flatMap((step, rule) => {
    const before = was[rule]!.outcome;
    return before === step.outcome ? [] : [{ before, step }];
  });
}

/** A place with a turn for the worse is worse, whatever else turns for the better there. */
function isWorse(lift: PlaceTurn['lift'], racks: readonly RackTurn[]): boolean {
  const falls =
    lift !== null &&
    (VERDICTS.indexOf(lift.to) > VERDICTS.indexOf(lift.from) ||
      (lift.to === lift.from && lift.mayAfter < lift.mayBefore));
  return falls || racks.some(({ before, step }) => rank(step.outcome) > rank(before));
}

/** A rule that does not apply is kept. */
function rank(outcome: Outcome): number {
  const WORST_LAST: readonly Outcome[] = ['pass', 'thin', 'unknown', 'fail'];
  return Math.max(0, WORST_LAST.indexOf(outcome));
}
