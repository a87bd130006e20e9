import { type CompiledSite, locationCountOf, locationRow, NOWHERE } from './compiled-site.ts';
import { findKinds, type LiftKinds, noKinds } from './lift-kinds.ts';
import { type LoadShape, massColumn, shapeOfLoad } from './load-columns.ts';
import { fillMassSteps } from './mass-steps.ts';
import type { GridAnswer, GridQuestion } from './question.ts';
import { emptyRackSide, type RackSide } from './rack-side.ts';
import { codeOf, Tally } from './tally.ts';
import {
  emptyTruckSide,
  fillTruckSide,
  growTruckSide,
  readyTruck,
  type TruckReady,
  type TruckSide,
  weighAllLimits,
} from './truck-side.ts';

/**
 * One question worked out over a site: the trucks' side for each kind of lift, the racks' side for each location, and
 * the answer that the two make together. Kept, so that an edit redoes only what it touches (edit-sheet.ts).
 */
export type GridSheet = {
  site: CompiledSite;
  question: GridQuestion;
  tally: Tally;
  trucks: TruckReady[];
  kinds: LiftKinds;
  truckSide: TruckSide;
  rackSide: RackSide;
  /** The one load asked about; null: what stands in each location. */
  asked: { shape: LoadShape; assessedKg: number } | null;
  /** The location that the question's load comes from, or NOWHERE. */
  from: number;
  answer: GridAnswer;
};

/**
 * Sets a question up: trucks judged, kinds found, the trucks' side filled. No location is answered yet. The arrays of
 * a former sheet of the same size are written over, so that asking again costs no new memory; it must not be used on.
 */
export function openSheet(site: CompiledSite, question: GridQuestion, former?: GridSheet | null): GridSheet {
  const { context } = question;
  const locationCount = locationCountOf(site);
  const truckCount = question.trucks.length;
  const { index } = site;
  const load = question.load.kind === 'one' ? question.load.load : null;
  const again =
    former?.answer.locationCount === locationCount && former.answer.truckCount === truckCount ? former : null;
  const cellCount = locationCount * truckCount;
  const sheet: GridSheet = {
    site,
    question,
    tally: new Tally(index.policy),
    trucks: question.trucks.map((id) => readyTruck(site, id, context)),
    kinds: noKinds(locationCount),
    truckSide: emptyTruckSide(0),
    rackSide: again?.rackSide ?? emptyRackSide(locationCount),
    asked: load === null ? null : { shape: shapeOfLoad(load, index), assessedKg: massColumn(load, index) },
    from: context.from === null ? NOWHERE : rowComeFrom(site, context.from),
    answer: {
      locationCount,
      truckCount,
      verdicts: again?.answer.verdicts ?? new Uint8Array(cellCount),
      governing: again?.answer.governing ?? new Uint8Array(cellCount),
      mostKg: again?.answer.mostKg ?? new Float64Array(cellCount),
      assessedKg: new Float64Array(load === null ? locationCount : 1).fill(-1),
    },
  };
  if (sheet.asked !== null) sheet.answer.assessedKg[0] = sheet.asked.assessedKg;
  findSheetKinds(sheet, 0, locationCount);
  return sheet;
}

/** The row of the location that the load comes from. Throws on one that the site does not have: a bug of the caller. */
function rowComeFrom(site: CompiledSite, id: string): number {
  const row = locationRow(site, id);
  if (row === NOWHERE) throw new Error(`no location ${id} in this site`);
  return row;
}

/** Finds the kinds of lift in a range of locations, and fills the trucks' side of those that are new. */
export function findSheetKinds(sheet: GridSheet, first: number, end: number): void {
  const { kinds, trucks } = sheet;
  const known = kinds.list.length;
  findKinds(sheet.site, kinds, sheet.asked?.shape ?? null, first, end);
  if (kinds.list.length === known) return;
  sheet.truckSide = growTruckSide(sheet.truckSide, kinds.list.length * trucks.length);
  for (let kind = known; kind < kinds.list.length; kind += 1) {
    for (let truck = 0; truck < trucks.length; truck += 1) fillTruck(sheet, kind, truck);
  }
}

/** Decides the truck's side of one kind of lift: for any mass, or for that of the one load asked about. */
export function fillTruck(sheet: GridSheet, kind: number, truck: number): void {
  const { site, tally, truckSide: side, asked } = sheet;
  const { classRow, shape } = sheet.kinds.list[kind]!;
  const row = kind * sheet.trucks.length + truck;
  fillTruckSide(side, row, { site, tally, ready: sheet.trucks[truck]!, at: site.classes[classRow]!, shape });
  if (asked === null) {
    fillMassSteps(side, row, site.index.policy.thinPercent);
    return;
  }
  weighAllLimits(tally, side, row, asked.assessedKg);
  side.code[row] = codeOf(tally.verdict, tally.rule);
  side.use[row] = tally.use;
}
