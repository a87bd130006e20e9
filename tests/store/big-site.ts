import type { Site } from '../../lib/model/site.ts';
import { makeBay, makeFrame, makeLevel, makeLoad, makeRun, makeSite, makeTruck } from '../site-builder.ts';

const LEVELS = 5;
const LOCATIONS_A_LEVEL = 2;
const BAYS_A_RUN = 40;

/** A site with at least this many locations (runs of 40 bays, five levels of two), 20 trucks, half of it stocked. */
export function bigSite(locationCount: number): Site {
  const runCount = Math.ceil(locationCount / (BAYS_A_RUN * LEVELS * LOCATIONS_A_LEVEL));
  const runs = Array.from({ length: runCount }, (_, r) => bigRun(`r${r}`));
  const loads = Array.from({ length: 500 }, (_, l) => makeLoad({ id: `load-${l}`, grossKg: 400 + l / 10 }));
  const stocked = runs
    .flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)))
    .filter((_, at) => at % 2 === 0);
  return makeSite({
    runs,
    loads,
    trucks: Array.from({ length: 20 }, (_, t) => makeTruck({ id: `truck-${t}` })),
    checks: [],
    stock: stocked.map((location, at) => ({ location, load: loads[at % loads.length]!.id })),
  });
}

function bigRun(id: string) {
  return makeRun({
    id,
    frames: Array.from({ length: BAYS_A_RUN + 1 }, (_, f) => makeFrame({ id: `${id}-f${f}` })),
    bays: Array.from({ length: BAYS_A_RUN }, (_, b) =>
      makeBay(`${id}-${b}`, {
        levels: Array.from({ length: LEVELS }, (_, level) => makeLevel(`${id}-${b}`, level)),
      }),
    ),
  });
}
