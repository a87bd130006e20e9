import { checkLift } from '../check/check-lift.ts';
import type { Context, LiftAnswer, Step } from '../check/step.ts';
import { compileSite } from '../grid/compile-site.ts';
import { type CompiledSite, EMPTY } from '../grid/compiled-site.ts';
import { answerTakeDown, compileTakeDown, type TakeDownAnswer } from '../grid/whole-site.ts';
import { instantMs } from '../model/quantities.ts';
import type { Place, SiteIndex } from '../model/site-index.ts';
import type { Truck } from '../model/truck.ts';
import { type NotClear, notClearInPlace, type StoredLoad } from './back-in-place.ts';

/** A load to try every location with: pallet and goods together. */
export type Reference = { massKg: number; depthMm: number; widthMm: number; heightMm: number };

/** What is asked of an audit. Without a time nothing that depends on one is judged. */
export type AuditQuestion = { asOf: string | null; reference: Reference };

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
  notClear: readonly NotClear[];
};

/** Who can take down what stands, with the time that was asked about. */
export type TakeDown = TakeDownAnswer & { asOf: string | null };

const TAKE_DOWN: Context = { operation: 'retrieve', asOf: null, operator: null, stock: 'as-is', from: null };

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
    notClear: notClearInPlace(site, stored),
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
