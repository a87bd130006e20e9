import type { Load } from '../model/load.ts';
import type { Level } from '../model/racking.ts';
import type { Truck } from '../model/truck.ts';
import { describeLevels, rateFrame, sumBay } from './compile-site.ts';
import { type CompiledSite, NO_BAY } from './compiled-site.ts';
import { writeLoad } from './load-columns.ts';

/** A change of one fact of a site whose locations stay as they are. */
export type SiteEdit =
  | { kind: 'truck'; truck: Truck }
  | { kind: 'level'; runId: string; bayId: string; level: Level }
  | { kind: 'load'; load: Load };

/** Locations whose answers an edit may change, as ranges [first, end) in rising order that do not overlap. */
export type Touched = { first: number; end: number }[];

/**
 * Puts an edit into the columns, in place, and says which locations' racks it touches. A truck touches none: every
 * answer of its own changes. Throws on an id that the site does not have and on a level whose locations differ:
 * such a site has to be compiled anew.
 */
export function editSite(site: CompiledSite, edit: SiteEdit): Touched {
  switch (edit.kind) {
    case 'truck':
      if (!site.trucks.has(edit.truck.id)) throw new Error(`no truck ${edit.truck.id} in this site`);
      site.trucks.set(edit.truck.id, edit.truck);
      return [];
    case 'level':
      return editLevel(site, edit.runId, edit.bayId, edit.level);
    case 'load':
      return editLoad(site, edit.load);
  }
}

function editLevel(site: CompiledSite, runId: string, bayId: string, level: Level): Touched {
  const bay = site.bays.findIndex((entry) => entry.run.id === runId && entry.bay.id === bayId);
  const entry = site.bays[bay];
  if (entry === undefined) throw new Error(`no bay ${bayId} in run ${runId} of this site`);
  const at = entry.bay.levels.findIndex((known) => known.level === level.level);
  const before = entry.bay.levels[at];
  if (before === undefined) throw new Error(`no level ${level.level} in bay ${bayId}`);
  if (
    before.locations.join('\n') !== level.locations.join('\n') ||
    before.depthPositions !== level.depthPositions
  ) {
    throw new Error(`the locations of bay ${bayId} level ${level.level} differ: compile the site anew`);
  }
  site.levels[site.firstLevel[bay]! + at] = level;
  site.bays[bay] = { ...entry, bay: { ...entry.bay, levels: entry.bay.levels.with(at, level) } };
  describeLevels(site, bay);
  sumBay(site, bay);
  rateFrame(site, site.leftFrame[bay]!);
  rateFrame(site, site.leftFrame[bay]! + 1);
  return besideBays(site, [bay]);
}

function editLoad(site: CompiledSite, load: Load): Touched {
  const row = site.index.site.loads.findIndex(({ id }) => id === load.id);
  if (row < 0) throw new Error(`no load ${load.id} in this site`);
  writeLoad(site.loads, row, load, site.index);
  const bays: number[] = [];
  for (let location = 0; location < site.standing.length; location += 1) {
    if (site.standing[location] !== row) continue;
    const bay = site.bayOf[site.levelOf[location]!]!;
    if (bays.at(-1) !== bay) bays.push(bay);
  }
  for (const bay of bays) sumBay(site, bay);
  return besideBays(site, bays);
}

/** The locations of some bays (in rising order) and of those that share a frame with one of them. */
function besideBays(site: CompiledSite, bays: readonly number[]): Touched {
  const touched: Touched = [];
  for (const bay of bays) {
    const left = site.frameBays[2 * site.leftFrame[bay]!]!;
    const right = site.frameBays[2 * (site.leftFrame[bay]! + 1) + 1]!;
    const firstBay = left === NO_BAY ? bay : left;
    const lastBay = right === NO_BAY ? bay : right;
    const first = site.firstLocation[site.firstLevel[firstBay]!]!;
    const end = site.firstLocation[site.firstLevel[lastBay + 1]!]!;
    const last = touched.at(-1);
    if (last !== undefined && first <= last.end) last.end = Math.max(last.end, end);
    else touched.push({ first, end });
  }
  return touched;
}
