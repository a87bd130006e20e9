import { checkLift } from '../check/check-lift.ts';
import type { Context, LiftAnswer, Step } from '../check/step.ts';
import { compileSite } from '../grid/compile-site.ts';
import { type CompiledSite, EMPTY } from '../grid/compiled-site.ts';
import { judgeLevel } from '../grid/rack-side.ts';
import { CLEAR, REFUSE, Tally } from '../grid/tally.ts';
import { answerTakeDown, compileTakeDown, type TakeDownAnswer } from '../grid/whole-site.ts';
import { grossMass, type Load } from '../model/load.ts';
import { instantMs } from '../model/quantities.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { type Place, palletOf, type SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';

/** A load to try every location with: pallet and goods together. */
export type Reference = { massKg: number; depthMm: number; widthMm: number; heightMm: number };

/** What is asked of an audit. Without a time nothing that depends on one is judged. */
export type AuditQuestion = { asOf: string | null; reference: Reference };

/** A pallet that stands somewhere; `at` is its row in the columns of lib/grid. */
export type StoredLoad = { at: number; place: Place; load: Load };

/** What every family of findings reads: the site, and what lib/grid says of all of it at once. */
export type AuditCase = {
  index: SiteIndex;
  question: AuditQuestion;
  asOfMs: number | null;
  site: CompiledSite;
  /** By row of lib/grid. */
  places: readonly Place[];
  stored: readonly StoredLoad[];
  /** Taking down what stands: by all trucks of the site, whatever their fitness. */
  fleet: TakeDown;
  /** The same as they are at the time asked about; null: no time was given. */
  fit: TakeDown | null;
  /**
   * What stands where the racks' rules alone would not have it placed back, with the steps of those rules: all that
   * they refuse, and of the rest that is not clear what has a declared mass.
   */
  notClear: readonly (StoredLoad & { steps: ReadonlyMap<RuleId, Step> })[];
};

/** Who can take down what stands, with the time that was asked about. */
export type TakeDown = TakeDownAnswer & { asOf: string | null };

const TAKE_DOWN: Context = { operation: 'retrieve', asOf: null, operator: null, stock: 'as-is', from: null };

/** Placing what stands back where it stands: `from` is its own location. */
const BACK_IN_PLACE: Context = { ...TAKE_DOWN, operation: 'place' };

/** Asks lib/grid what the findings read. Throws on an asOf that is not a time. */
export function openAudit(index: SiteIndex, question: AuditQuestion): AuditCase {
  const asOfMs = question.asOf === null ? null : instantMs(question.asOf);
  if (Number.isNaN(asOfMs)) throw new Error(`asOf is not an ISO 8601 time: ${question.asOf}`);
  const site = compileSite(index);
  const places = [...index.places.values()];
  const stored = storedLoads(site, places);
  return {
    index,
    question,
    asOfMs,
    site,
    places,
    stored,
    fleet: takeDownAt(site, null),
    fit: question.asOf === null ? null : takeDownAt(site, question.asOf),
    notClear: notClear(site, stored),
  };
}

function storedLoads(site: CompiledSite, places: readonly Place[]): StoredLoad[] {
  const loads = site.index.site.loads;
  const stored: StoredLoad[] = [];
  for (const [at, place] of places.entries()) {
    const row = site.standing[at]!;
    if (row !== EMPTY) stored.push({ at, place, load: loads[row]! });
  }
  return stored;
}

function takeDownAt(site: CompiledSite, asOf: string | null): TakeDown {
  const trucks = site.index.site.trucks.map(({ id }) => id);
  return { ...answerTakeDown(compileTakeDown(site, { trucks, asOf, operator: null })), asOf };
}

/** Asks the racks' rules of lib/grid of all that stands, and those of lib/check for the working of what they name. */
function notClear(site: CompiledSite, stored: readonly StoredLoad[]): AuditCase['notClear'] {
  const { index } = site;
  const tally = new Tally(index.policy);
  const found: (StoredLoad & { steps: ReadonlyMap<RuleId, Step> })[] = [];
  for (const one of stored) {
    const row = site.standing[one.at]!;
    const rackLoad = {
      shape: site.loads.shapes[site.loads.shapeOf[row]!]!,
      assessedKg: site.loads.assessedKg[row]!,
    };
    tally.start();
    judgeLevel(tally, site, site.levelOf[one.at]!, rackLoad, BACK_IN_PLACE, one.at);
    if (tally.verdict === CLEAR || (tally.verdict !== REFUSE && !isDeclared(index, one.load))) continue;
    found.push({ ...one, steps: stepsBackInPlace(index, one) });
  }
  return found;
}

/** Rules that look at the racks and the load, never at the truck. */
const RACK_RULES: ReadonlySet<RuleId> = new Set<RuleId>([
  'opening-height',
  'sprinkler-clearance',
  'opening-width',
  'pallet-support',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
]);

/** The racks' steps of placing a stored load back where it stands. */
function stepsBackInPlace(index: SiteIndex, { place, load }: StoredLoad): ReadonlyMap<RuleId, Step> {
  const context: Context = { ...BACK_IN_PLACE, from: place.id };
  const { steps } = checkLift(index, { load, place, truck: NO_TRUCK, context });
  return new Map(steps.filter(({ rule }) => RACK_RULES.has(rule)).map((step) => [step.rule, step]));
}

/** Stands in where only the racks' rules are read: none of them looks at the truck, and a site may have none. */
const NO_TRUCK: Truck = {
  id: '',
  name: '',
  kind: 'counterbalance',
  power: 'manual',
  maxLiftMm: 1,
  loweredMm: null,
  extendedMm: null,
  freeLiftMm: null,
  reachDepth: 1,
  turning: null,
  statedAisleMm: null,
  forks: { lengthMm: null, armCapacityKg: null, armLoadCentreMm: null },
  fittedAttachment: null,
  hold: null,
  speeds: null,
  plate: { verticalLoadCentreMm: null, ratings: [] },
};

/** Does the load's mass rest on what somebody declared, so that it carries an allowance? */
export function isDeclared(index: SiteIndex, load: Load): boolean {
  return grossMass(load, palletOf(index, load))?.basis === 'declared';
}

/** The whole working of taking a stored load down with a truck, at a time or whatever the truck's fitness. */
export function takeDown(
  { index }: AuditCase,
  { place, load }: StoredLoad,
  truck: Truck,
  asOf: string | null = null,
): LiftAnswer {
  return checkLift(index, { load, place, truck, context: { ...TAKE_DOWN, asOf } });
}

/** The step that decided an answer. */
export function governingStep(answer: LiftAnswer): Step {
  return answer.steps.find(({ rule }) => rule === answer.governing)!;
}
