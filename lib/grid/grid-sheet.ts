import type { Load } from '../model/load.ts';
import { NOWHERE } from './compile-site.ts';
import { type CompiledSite, EMPTY } from './compiled-site.ts';
import { type LoadShape, massColumn, shapeOfLoad } from './load-columns.ts';
import { type GridAnswer, type GridQuestion, NO_ANSWER } from './question.ts';
import { emptyRackSide, type RackSide } from './rack-side.ts';
import { Tally } from './tally.ts';
import {
  emptyTruckSide,
  fillTruckSide,
  growTruckSide,
  readyTruck,
  type TruckReady,
  type TruckSide,
  weighAllLimits,
} from './truck-side.ts';

/** A class of locations with a shape of load: what a truck's geometry is decided for. */
export type LiftKind = { classRow: number; shape: LoadShape };

/** In `kindOf`: nothing stands here, nothing is asked. */
export const NO_KIND = 0xffffffff;

/**
 * One question worked out over a site: the trucks' side for each kind of lift, the racks' side for each location, and
 * the answer that the two make together. Kept, so that an edit redoes only what it touches (edit-sheet.ts).
 */
export type GridSheet = {
  site: CompiledSite;
  question: GridQuestion;
  tally: Tally;
  trucks: TruckReady[];
  kinds: LiftKind[];
  /** The row of each kind, by classRow + 65536 x shape row. */
  kindRows: Map<number, number>;
  kindOf: Uint32Array;
  truckSide: TruckSide;
  rackSide: RackSide;
  /** The one load asked about; null: what stands in each location. */
  asked: { load: Load; shape: LoadShape; assessedKg: number } | null;
  /** The location that the question's load comes from, or NOWHERE. */
  from: number;
  answer: GridAnswer;
};

/** Sets a question up: trucks judged, kinds found, the trucks' side filled. No location is answered yet. */
export function openSheet(site: CompiledSite, question: GridQuestion): GridSheet {
  const { context } = question;
  const locationCount = site.locationIds.length;
  const truckCount = question.trucks.length;
  const load = question.load.kind === 'one' ? question.load.load : null;
  const sheet: GridSheet = {
    site,
    question,
    tally: new Tally(site.index.policy),
    trucks: question.trucks.map((id) => readyTruck(site, id, context)),
    kinds: [],
    kindRows: new Map(),
    kindOf: new Uint32Array(locationCount).fill(NO_KIND),
    truckSide: emptyTruckSide(0),
    rackSide: emptyRackSide(locationCount),
    asked:
      load === null
        ? null
        : { load, shape: shapeOfLoad(load, site.index), assessedKg: massColumn(load, site.index) },
    from: context.from === null ? NOWHERE : site.locationIds.indexOf(context.from),
    answer: {
      locationCount,
      truckCount,
      verdicts: new Uint8Array(locationCount * truckCount).fill(NO_ANSWER),
      governing: new Uint8Array(locationCount * truckCount).fill(NO_ANSWER),
      mostKg: new Float64Array(locationCount * truckCount).fill(-1),
      assessedKg: new Float64Array(load === null ? locationCount : 1).fill(-1),
    },
  };
  if (sheet.asked !== null) sheet.answer.assessedKg[0] = sheet.asked.assessedKg;
  findKinds(sheet, 0, locationCount);
  return sheet;
}

/** Finds the kind of lift at each location of a range, and fills the trucks' side of those that are new. */
export function findKinds(sheet: GridSheet, first: number, end: number): void {
  const { site, kinds, kindRows, kindOf } = sheet;
  const { shapeOf, shapes } = site.loads;
  const known = kinds.length;
  for (let location = first; location < end; location += 1) {
    const standing = site.standing[location]!;
    if (sheet.asked === null && standing === EMPTY) continue;
    const classRow = site.classOf[location]!;
    const shapeRow = sheet.asked === null ? shapeOf[standing]! : 0;
    const key = classRow + 0x10000 * shapeRow;
    let row = kindRows.get(key);
    if (row === undefined) {
      row = kinds.push({ classRow, shape: sheet.asked?.shape ?? shapes[shapeRow]! }) - 1;
      kindRows.set(key, row);
    }
    kindOf[location] = row;
  }
  if (kinds.length === known) return;
  sheet.truckSide = growTruckSide(sheet.truckSide, kinds.length * sheet.trucks.length);
  for (let kind = known; kind < kinds.length; kind += 1) {
    for (let truck = 0; truck < sheet.trucks.length; truck += 1) fillTruck(sheet, kind, truck);
  }
}

/** Decides the truck's side of one kind of lift; for a question about one load, with the load's mass. */
export function fillTruck(sheet: GridSheet, kind: number, truck: number): void {
  const { site, tally, truckSide: side, asked } = sheet;
  const { classRow, shape } = sheet.kinds[kind]!;
  const row = kind * sheet.trucks.length + truck;
  fillTruckSide(side, row, { site, tally, ready: sheet.trucks[truck]!, at: site.classes[classRow]!, shape });
  if (asked === null) return;
  weighAllLimits(tally, side, row, asked.assessedKg);
  side.verdict[row] = tally.verdict;
  side.use[row] = tally.use;
  side.rule[row] = tally.rule;
}
