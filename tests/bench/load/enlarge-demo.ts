import { demoSiteAt } from '../../../lib/demo/demo-site-at.ts';
import type { Run } from '../../../lib/model/racking.ts';
import type { Site } from '../../../lib/model/site.ts';

export type LoadSize = { locations: number; trucks: number; loads: number };

/**
 * The demo many times over in one building: copies of its aisles, runs and stock until there are this many locations at
 * least, its trucks and loads repeated under new ids. Copy 0 keeps the demo's ids. Every truck has a check an hour old.
 */
export function enlargeDemo(size: LoadSize, at: string): Site {
  const demo = demoSiteAt(at);
  const checkedAt = new Date(Date.parse(at) - 3_600_000).toISOString();
  const locationCount = demo.runs.flatMap(locationsOf).length;
  const copies = Array.from({ length: Math.ceil(size.locations / locationCount) }, (_, copy) => copy);
  const loadCopies = Math.ceil(size.loads / demo.loads.length);
  const trucks = repeat(demo.trucks, size.trucks);
  return {
    ...demo,
    site: { ...demo.site, name: 'Tamblewick Quay Depot, enlarged' },
    aisles: copies.flatMap((copy) => demo.aisles.map((aisle) => ({ ...aisle, id: named(aisle.id, copy) }))),
    runs: copies.flatMap((copy) => demo.runs.map((run) => copyRun(run, copy))),
    trucks,
    checks: trucks.map(({ id }) => ({ truck: id, at: checkedAt, by: 'OPR-1', result: 'pass', defects: [] })),
    loads: repeat(demo.loads, size.loads),
    stock: copies.flatMap((copy) =>
      demo.stock.map(({ location, load }) => ({
        location: named(location, copy),
        load: named(load, copy % (loadCopies - 1 || 1)),
      })),
    ),
  };
}

function copyRun(run: Run, copy: number): Run {
  return {
    ...run,
    id: named(run.id, copy),
    aisleId: named(run.aisleId, copy),
    bays: run.bays.map((bay) => ({
      ...bay,
      levels: bay.levels.map((level) => ({
        ...level,
        locations: level.locations.map((id) => named(id, copy)),
      })),
    })),
    at: run.at === null ? null : { ...run.at, yMm: run.at.yMm + copy * 40_000 },
  };
}

function repeat<T extends { id: string }>(list: readonly T[], count: number): T[] {
  return Array.from({ length: count }, (_, at) => {
    const entry = list[at % list.length]!;
    return { ...entry, id: named(entry.id, Math.floor(at / list.length)) };
  });
}

function named(id: string, copy: number): string {
  return copy === 0 ? id : `${id}~${copy}`;
}

function locationsOf(run: Run): string[] {
  return run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations));
}
