import { checkLift } from '../check/check-lift.ts';
import type { Context, LiftAnswer, Step } from '../check/step.ts';
import { answerGrid } from '../grid/answer-grid.ts';
import { UNKNOWN_KG } from '../grid/load-columns.ts';
import type { Load } from '../model/load.ts';
import { MASS_RULES } from '../model/rule-ids.ts';
import type { Place } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import { type AuditCase, governingStep } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, stepSource } from './make-finding.ts';

const PLACE_EMPTY: Context = {
  operation: 'place',
  asOf: null,
  operator: null,
  stock: 'empty',
  from: null,
};

/** The place and truck of the whole site that come nearest to serving a shape, and the most they would take, kg. */
type Nearest = { place: Place; truck: Truck; mostKg: number };

/**
 * Which loads of the site could no truck place anywhere, the racks taken as empty and all trucks fit? `note` while none
 * of them stands, `plan` where one does: it cannot be put back. Loads of unknown mass are left to mass-unknown.
 *
 * A place and truck that served one load mostly serve the next, so those are asked first. Only where they do not is the
 * whole site asked, once for each shape: the most that a load of that shape may weigh somewhere is the same whatever
 * this one weighs.
 */
export function unplaceable(audit: AuditCase): Finding[] {
  const { index, site } = audit;
  if (index.site.trucks.length === 0 || audit.places.length === 0) return [];
  const nearestOf = new Map<number, Nearest>();
  const served: Nearest[] = [];
  return index.site.loads.flatMap((load, row) => {
    const kg = site.loads.assessedKg[row]!;
    if (kg === UNKNOWN_KG) return [];
    const shape = site.loads.shapeOf[row]!;
    let nearest = nearestOf.get(shape);
    if (nearest === undefined) {
      if (served.some((by) => mayPlace(placing(audit, load, by)))) return [];
      nearest = nearestAnywhere(audit, load);
      nearestOf.set(shape, nearest);
      if (nearest.mostKg > 0) served.push(nearest);
    }
    const answer = placing(audit, load, nearest);
    return mayPlace(answer) ? [] : unplaceableLoad(audit, load, answer, figuresOf(kg, nearest.mostKg, 'kg'));
  });
}

function placing({ index }: AuditCase, load: Load, { place, truck }: Nearest): LiftAnswer {
  return checkLift(index, { load, place, truck, context: PLACE_EMPTY });
}

function mayPlace({ verdict }: LiftAnswer): boolean {
  return verdict === 'clear' || verdict === 'thin';
}

/** Where, and with which truck, a load of this shape may weigh most; where it may nowhere weigh anything, the best verdict. */
function nearestAnywhere({ index, site, places }: AuditCase, load: Load): Nearest {
  const trucks = index.site.trucks.map(({ id }) => id);
  const { mostKg, verdicts } = answerGrid(site, {
    load: { kind: 'one', load },
    trucks,
    context: PLACE_EMPTY,
  });
  let best = 0;
  for (let cell = 1; cell < mostKg.length; cell += 1) {
    const more = Math.max(0, mostKg[cell]!) - Math.max(0, mostKg[best]!);
    if (more > 0 || (more === 0 && verdicts[cell]! < verdicts[best]!)) best = cell;
  }
  return {
    place: places[Math.floor(best / trucks.length)]!,
    truck: index.site.trucks[best % trucks.length]!,
    mostKg: Math.max(0, mostKg[best]!),
  };
}

function unplaceableLoad(
  { stored }: AuditCase,
  load: Load,
  nearest: LiftAnswer,
  figures: Finding['figures'],
): Finding {
  const locations = stored.filter((one) => one.load === load).map(({ place }) => place.id);
  return makeFinding({
    kind: 'unplaceable',
    severity: locations.length > 0 ? 'plan' : 'note',
    subject: { of: 'load', load: load.id, locations },
    figures,
    source: stepSource(figures.have === 0 ? firstBroken(nearest) : governingStep(nearest)),
    advice: 'find-another-way-to-store',
    truck: nearest.truck,
  });
}

/** What stands against a load whatever it weighs: the first rule it breaks that weighs nothing. */
function firstBroken(answer: LiftAnswer): Step {
  return (
    answer.steps.find((step) => step.outcome === 'fail' && !MASS_RULES.some((rule) => rule === step.rule)) ??
    governingStep(answer)
  );
}
