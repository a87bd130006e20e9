import type { Aisle } from '../model/racking.ts';
import { found, type SiteIndex } from '../model/site-index.ts';
import { largestGapMm, ratingForGap } from '../rack/frame-load.ts';
import { type BaySite, type CompiledSite, EMPTY, NO_BAY, NOWHERE } from './compiled-site.ts';
import { compileLoads, loadRowFinder, UNKNOWN_KG } from './load-columns.ts';

/** Compiles a site to columns. Time and memory grow with the locations; the index is not changed. */
export function compileSite(index: SiteIndex): CompiledSite {
  const bays = index.site.runs.flatMap((run) => {
    const aisle = found(index.aisles, run.aisleId, 'aisle');
    return run.bays.map((bay, bayIndex): BaySite => ({ run, bayIndex, bay, aisle }));
  });
  const levels = bays.flatMap(({ bay }) => bay.levels);
  const locationCount = levels.reduce((sum, level) => sum + level.locations.length, 0);
  const frameCount = index.site.runs.reduce((sum, run) => sum + run.frames.length, 0);
  const site: CompiledSite = {
    index,
    trucks: new Map(index.trucks),
    loads: compileLoads(index),
    classes: [],
    classRows: [],
    aisleKinds: new Map(),
    classOf: new Uint16Array(locationCount),
    levelOf: new Uint32Array(locationCount),
    standing: new Int32Array(locationCount),
    levels,
    firstLocation: new Uint32Array(levels.length + 1),
    bayOf: new Uint32Array(levels.length),
    openingMm: new Float64Array(levels.length),
    levelKg: new Float64Array(levels.length),
    unsound: new Uint8Array(levels.length),
    bays,
    firstLevel: new Uint32Array(bays.length + 1),
    leftFrame: new Uint32Array(bays.length),
    bayKg: new Float64Array(bays.length),
    frameRatingKg: new Float64Array(frameCount).fill(Number.NaN),
    frameBays: new Int32Array(2 * frameCount).fill(NO_BAY),
  };
  joinFramesToBays(site);
  placeLocations(site);
  for (let bay = 0; bay < bays.length; bay += 1) {
    describeLevels(site, bay);
    sumBay(site, bay);
    rateFrame(site, site.leftFrame[bay]!);
    rateFrame(site, site.leftFrame[bay]! + 1);
  }
  return site;
}

function joinFramesToBays(site: CompiledSite): void {
  let frame = 0;
  let bay = 0;
  for (const run of site.index.site.runs) {
    for (let i = 0; i < run.bays.length; i += 1, bay += 1, frame += 1) {
      site.leftFrame[bay] = frame;
      site.frameBays[2 * frame + 1] = bay;
      site.frameBays[2 * (frame + 1)] = bay;
    }
    frame += 1; // the one that closes the run
  }
}

function placeLocations(site: CompiledSite): void {
  const { stockAt } = site.index;
  const rowOf = loadRowFinder(site.index);
  let level = 0;
  let location = 0;
  for (let bay = 0; bay < site.bays.length; bay += 1) {
    site.firstLevel[bay] = level;
    for (const { locations } of site.bays[bay]!.bay.levels) {
      site.bayOf[level] = bay;
      site.firstLocation[level] = location;
      for (const id of locations) {
        const load = stockAt.get(id);
        site.levelOf[location] = level;
        site.standing[location] = load === undefined ? EMPTY : rowOf(load);
        location += 1;
      }
      level += 1;
    }
  }
  site.firstLevel[site.bays.length] = level;
  site.firstLocation[level] = location;
}

/** Fills what follows from the facts of a bay's levels: classes, openings, conditions. */
export function describeLevels(site: CompiledSite, bay: number): void {
  const { run, bayIndex, aisle } = site.bays[bay]!;
  const framesSound =
    run.frames[bayIndex]!.condition === 'sound' && run.frames[bayIndex + 1]!.condition === 'sound';
  const aisleKind = kindOfAisle(site, aisle);
  const end = site.firstLevel[bay + 1]!;
  for (let level = site.firstLevel[bay]!; level < end; level += 1) {
    const { beamTopMm, condition, depthPositions } = site.levels[level]!;
    const above = level + 1 < end ? site.levels[level + 1]! : null;
    site.openingMm[level] =
      above === null ? Number.POSITIVE_INFINITY : above.beamTopMm - above.beamHeightMm - beamTopMm;
    site.unsound[level] = framesSound && condition === 'sound' ? 0 : 1;
    const first = site.firstLocation[level]!;
    const next = site.firstLocation[level + 1]!;
    const rear = first + (next - first) / depthPositions;
    if (rear > first) site.classOf.fill(classRow(site, aisle, aisleKind, beamTopMm, 1), first, rear);
    if (next > rear) site.classOf.fill(classRow(site, aisle, aisleKind, beamTopMm, 2), rear, next);
  }
}

function kindOfAisle(site: CompiledSite, aisle: Aisle): number {
  const key = `${aisle.clearWidthMm} ${aisle.overheadClearMm}`;
  const known = site.aisleKinds.get(key);
  if (known !== undefined) return known;
  const kind = site.aisleKinds.size;
  site.aisleKinds.set(key, kind);
  site.classRows.push(new Map(), new Map());
  return kind;
}

function classRow(
  site: CompiledSite,
  aisle: Aisle,
  aisleKind: number,
  beamTopMm: number,
  row: 1 | 2,
): number {
  const rows = site.classRows[2 * aisleKind + row - 1]!;
  const known = rows.get(beamTopMm);
  if (known !== undefined) return known;
  const { clearWidthMm: aisleClearMm, overheadClearMm } = aisle;
  const added = site.classes.push({ beamTopMm, row, aisleClearMm, overheadClearMm }) - 1;
  if (added > 0xffff) throw new Error('more than 65536 kinds of level in one site');
  rows.set(beamTopMm, added);
  return added;
}

/**
 * Sums what stands on each level of a bay and on its beam levels together, in the order of lib/rack (a running sum
 * over locations, then over levels), so that both engines get the same double.
 */
export function sumBay(site: CompiledSite, bay: number): void {
  let bayKg = 0;
  for (let level = site.firstLevel[bay]!; level < site.firstLevel[bay + 1]!; level += 1) {
    const kg = sumLevel(site, level, NOWHERE);
    site.levelKg[level] = kg;
    if (site.levels[level]!.level > 0) bayKg += kg;
  }
  site.bayKg[bay] = bayKg;
}

/** What stands on a level without one location (NOWHERE: with all), kg; NaN where a mass is unknown. */
export function sumLevel(site: CompiledSite, level: number, without: number): number {
  const { standing, firstLocation } = site;
  const { assessedKg } = site.loads;
  let sum = 0;
  for (let location = firstLocation[level]!; location < firstLocation[level + 1]!; location += 1) {
    const load = standing[location]!;
    if (load === EMPTY || location === without) continue;
    const kg = assessedKg[load]!;
    sum += kg === UNKNOWN_KG ? Number.NaN : kg;
  }
  return sum;
}

/** Reads a frame's rating for the largest gap of the bays beside it. */
export function rateFrame(site: CompiledSite, frame: number): void {
  let gapMm: number | null = null;
  let typeId = '';
  for (const side of [0, 1]) {
    const bay = site.frameBays[2 * frame + side]!;
    if (bay === NO_BAY) continue;
    const { run, bayIndex, bay: facts } = site.bays[bay]!;
    typeId = run.frames[side === 0 ? bayIndex + 1 : bayIndex]!.typeId;
    const own = largestGapMm(facts);
    if (own !== null && (gapMm === null || own > gapMm)) gapMm = own;
  }
  const rating = gapMm === null ? null : ratingForGap(site.index, typeId, gapMm);
  site.frameRatingKg[frame] = rating?.capacityKg ?? Number.NaN;
}
