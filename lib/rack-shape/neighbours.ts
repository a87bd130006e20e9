import { id } from '../model/quantities.ts';
import type { Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';
import type { ShapeRefusal } from './shape-fault.ts';

/** What of the rest of the site a run has to agree with. */
export type Neighbours = {
  runIds: ReadonlySet<string>;
  /** Which other run each location of the site stands in. */
  runOf: ReadonlyMap<string, string>;
  aisleIds: ReadonlySet<string>;
  frameTypeIds: ReadonlySet<string>;
};

/** The neighbours of a run: the site without it; of a new run (null) the whole site. */
export function neighboursOf(
  site: Pick<Site, 'runs' | 'aisles' | 'frameTypes'>,
  ownRunId: string | null,
): Neighbours {
  const others = site.runs.filter((run) => run.id !== ownRunId);
  const runOf = new Map<string, string>();
  for (const run of others) for (const label of locationsOf(run)) runOf.set(label, run.id);
  return {
    runIds: new Set(others.map((run) => run.id)),
    runOf,
    aisleIds: new Set(site.aisles.map((aisle) => aisle.id)),
    frameTypeIds: new Set(site.frameTypes.map((type) => type.id)),
  };
}

/** Every location of a run in site order. */
export function locationsOf(run: Pick<Run, 'bays'>): string[] {
  return run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations));
}

/** Can the ids of a run stand in the site: well formed, each location once in the whole site, the run's own not taken? */
export function idRefusals(run: Run, neighbours: Neighbours): ShapeRefusal[] {
  const refusals: ShapeRefusal[] = [];
  if (!isId(run.id))
    refusals.push({ field: 'id', fault: run.id === '' ? { is: 'missing' } : { is: 'unfit-id' } });
  else if (neighbours.runIds.has(run.id)) refusals.push({ field: 'id', fault: { is: 'run-known' } });
  const seen = new Set<string>();
  let twice: { label: string; count: number } | null = null;
  let elsewhere: { label: string; run: string; count: number } | null = null;
  let unfit = false;
  for (const label of locationsOf(run)) {
    if (!isId(label)) unfit = true;
    const other = neighbours.runOf.get(label);
    if (other !== undefined) {
      elsewhere ??= { label, run: other, count: 0 };
      elsewhere.count += 1;
    }
    if (seen.has(label)) {
      twice ??= { label, count: 0 };
      twice.count += 1;
    }
    seen.add(label);
  }
  if (unfit) refusals.push({ field: 'labels.pattern', fault: { is: 'unfit-id' } });
  if (twice !== null) refusals.push({ field: 'labels.pattern', fault: { is: 'label-twice', ...twice } });
  if (elsewhere !== null)
    refusals.push({ field: 'labels.pattern', fault: { is: 'label-elsewhere', ...elsewhere } });
  const bayIds = new Set<string>();
  for (const bay of run.bays) {
    if (bayIds.has(bay.id)) refusals.push({ field: 'bays', fault: { is: 'bay-known', bay: bay.id } });
    bayIds.add(bay.id);
  }
  return refusals;
}

/** Would lib/model take this text as an id? */
export function isId(text: string): boolean {
  return id.safeParse(text).success;
}
