import { racksInPlace } from '../check/racks-in-place.ts';
import type { Context, Step } from '../check/step.ts';
import { markThin } from '../check/thin.ts';
import type { CompiledSite } from '../grid/compiled-site.ts';
import { judgeLevel } from '../grid/rack-side.ts';
import { CLEAR, REFUSE, Tally } from '../grid/tally.ts';
import { grossMass, type Load } from '../model/load.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { type Place, palletOf, type SiteIndex } from '../model/site-index.ts';

/** A pallet that stands somewhere; `at` is its row in the columns of lib/grid. */
export type StoredLoad = { at: number; place: Place; load: Load };

/** A stored load with the racks' steps of placing it back where it stands. */
export type NotClear = StoredLoad & { steps: ReadonlyMap<RuleId, Step> };

/** Placing what stands back where it stands: `from` is its own location. */
const BACK_IN_PLACE: Context = { operation: 'place', asOf: null, operator: null, stock: 'as-is', from: null };

/** Asks the racks' rules of lib/grid of all that stands, and those of lib/check for the working of what they name. */
export function notClearInPlace(site: CompiledSite, stored: readonly StoredLoad[]): NotClear[] {
  const { index } = site;
  const tally = new Tally(index.policy);
  const found: NotClear[] = [];
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

/** The racks' steps of placing a stored load back where it stands. */
function stepsBackInPlace(index: SiteIndex, { place }: StoredLoad): ReadonlyMap<RuleId, Step> {
  const steps = racksInPlace(index, place.id).map((step) => markThin(step, index.policy.thinPercent));
  return new Map(steps.map((step) => [step.rule, step]));
}

/** Does the load's mass rest on what somebody declared, so that it carries an allowance? */
export function isDeclared(index: SiteIndex, load: Load): boolean {
  return grossMass(load, palletOf(index, load))?.basis === 'declared';
}
