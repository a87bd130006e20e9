import { checkLift } from '../check/check-lift.ts';
import type { Cause, Context } from '../check/step.ts';
import { answerGrid } from '../grid/answer-grid.ts';
import { NO_TRUCK, summariseLocations } from '../grid/summary.ts';
import { THIN, UNPROVEN } from '../grid/tally.ts';
import type { Load } from '../model/load.ts';
import { RULE_IDS, type RuleId, STATE_RULES } from '../model/rule-ids.ts';
import type { Place } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import { type AuditCase, governingStep } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { makeFinding, ruleSource } from './make-finding.ts';
import { referenceLoad } from './reference-load.ts';

const PLACE_EMPTY: Context = {
  operation: 'place',
  asOf: null,
  operator: null,
  stock: 'empty',
  from: null,
};

type Group = { rule: RuleId; cause: Cause | null; locations: string[] };

/** A length or mass that fails says all in its two numbers; an unknown and a yes/no rule have a cause. */
function mayHaveCause(verdict: number, rule: RuleId): boolean {
  return verdict === UNPROVEN || STATE_RULES.some((state) => state === rule);
}

function causeOf({ index }: AuditCase, load: Load, place: Place, truck: Truck): Cause | null {
  return governingStep(checkLift(index, { load, place, truck, context: PLACE_EMPTY })).cause ?? null;
}

/**
 * Which locations can no truck of the fleet serve with the reference load, the racks taken as empty, even if all were
 * fit? One finding for each rule and cause that stands against the nearest truck: `plan`. A site without trucks has one
 * finding for all its locations.
 */
export function outOfReach(audit: AuditCase): Finding[] {
  const { index, site, places } = audit;
  const load = referenceLoad(audit.question.reference);
  const trucks = index.site.trucks.map(({ id }) => id);
  const answer = answerGrid(site, { load: { kind: 'one', load }, trucks, context: PLACE_EMPTY });
  const { best, bestTruck, bestRule } = summariseLocations(answer);
  const groups = new Map<string, Group>();
  const causes = new Map<string, Cause | null>();
  let within = 0;
  for (const [at, place] of places.entries()) {
    if (bestTruck[at] !== NO_TRUCK && best[at]! <= THIN) {
      within += 1;
      continue;
    }
    const column = bestTruck[at]!;
    const truck = index.site.trucks[column];
    const rule = truck === undefined ? 'truck-fit' : RULE_IDS[bestRule[at]!]!;
    let cause: Cause | null = null;
    if (truck !== undefined && mayHaveCause(best[at]!, rule)) {
      // one answer holds for the locations of a row: they differ in nothing that a rule reads, the racks empty
      const like = `${site.levelOf[at]} ${place.row} ${column}`;
      const known = causes.get(like);
      cause = known === undefined ? causeOf(audit, load, place, truck) : known;
      causes.set(like, cause);
    }
    const key = `${rule} ${cause}`;
    const group = groups.get(key);
    if (group) group.locations.push(place.id);
    else groups.set(key, { rule, cause, locations: [place.id] });
  }
  return [...groups.values()].map(({ rule, cause, locations }) =>
    makeFinding({
      kind: 'out-of-reach',
      severity: 'plan',
      subject: { of: 'locations', rule, cause, locations },
      figures: {
        need: places.length,
        have: within,
        excess: locations.length,
        unit: 'locations',
        needIs: 'exact',
      },
      source: ruleSource(rule, cause),
      advice: 'leave-empty-or-change-fleet',
    }),
  );
}
