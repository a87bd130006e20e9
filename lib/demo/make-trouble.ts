import type { Bay, Frame, Level, Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';
import { TROUBLE, type Trouble } from './trouble.ts';

/** Facts of the racking that the trouble needs, written into racking that is still sound. */
export function markRacking(site: Pick<Site, 'runs' | 'aisles'>): void {
  for (const trouble of TROUBLE) {
    switch (trouble.kind) {
      case 'overloaded-bay':
        bayOf(site.runs, trouble.bay).maxBayLoadKg = trouble.maxBayLoadKg;
        break;
      case 'overloaded-frame':
        frameOf(site.runs, trouble.frame).typeId = trouble.frameType;
        break;
      case 'damaged-frame':
        frameOf(site.runs, trouble.frame).condition = trouble.condition;
        break;
      case 'damaged-level':
        levelOf(site.runs, trouble).condition = trouble.condition;
        break;
      case 'pair-capacity-missing':
        levelOf(site.runs, trouble).pairCapacityKg = null;
        break;
      case 'gap-beyond-ratings':
        levelOf(site.runs, trouble).beamTopMm = trouble.beamTopMm;
        break;
      case 'aisle-not-surveyed':
        for (const aisle of site.aisles) {
          if (aisle.id === trouble.aisle) Object.assign(aisle, { overheadClearMm: null, sprinklerMm: null });
        }
        break;
      default: // the rest lies in the stock, the loads and the trucks
        break;
    }
  }
}

/** Which load stands in which location because of the trouble. */
export function troubledStock(runs: readonly Run[]): Map<string, string> {
  const stock = new Map<string, string>();
  for (const trouble of TROUBLE) {
    if (!('load' in trouble)) continue;
    for (const location of locationsOf(trouble, runs)) stock.set(location, trouble.load);
  }
  return stock;
}

function locationsOf(trouble: Trouble, runs: readonly Run[]): string[] {
  switch (trouble.kind) {
    case 'overloaded-beam':
      return levelOf(runs, trouble).locations;
    case 'overloaded-bay':
      return beamLocations(bayOf(runs, trouble.bay));
    case 'overloaded-frame':
      return trouble.bays.flatMap((bay) => beamLocations(bayOf(runs, bay)));
    case 'stranded':
    case 'one-truck':
    case 'too-tall':
    case 'unknown-mass':
      return [trouble.location];
    default:
      return [];
  }
}

function beamLocations(bay: Bay): string[] {
  return bay.levels.filter((level) => level.level > 0).flatMap((level) => level.locations);
}

function bayOf(runs: readonly Run[], id: string): Bay {
  return sought(
    runs.flatMap((run) => run.bays).find((bay) => bay.id === id),
    id,
  );
}

function levelOf(runs: readonly Run[], at: { bay: string; level: number }): Level {
  const level = bayOf(runs, at.bay).levels.find((entry) => entry.level === at.level);
  return sought(level, `${at.bay} level ${at.level}`);
}

function frameOf(runs: readonly Run[], id: string): Frame {
  return sought(
    runs.flatMap((run) => run.frames).find((frame) => frame.id === id),
    id,
  );
}

function sought<T>(entry: T | undefined, what: string): T {
  if (entry === undefined) throw new Error(`the demo has no ${what}`);
  return entry;
}
