import type { Bay, Level, Run } from '../model/racking.ts';
import { nearestTo } from '../model/refusal.ts';
import type { Site } from '../model/site.ts';
import type { RowFacts } from './read-rows.ts';
import type { RefusalBook } from './refusal-book.ts';
import { type StatedFacts, takeIn } from './stated-facts.ts';

/** What the rows say of a level, with the locations that they place on it. */
export type LevelRows = { stated: StatedFacts; rows: number[]; locations: Map<string, RowFacts> };
export type BayRows = { stated: StatedFacts; rows: number[]; levels: Map<number, LevelRows> };
/** `alone` holds what rows without a bay say of the one frame that a run without bays has. */
export type RunRows = {
  id: string;
  stated: StatedFacts;
  rows: number[];
  bays: Map<string, BayRows>;
  alone: BayRows;
};

export const RUN_FACTS = ['aisle', 'frameDepthMm', 'at.xMm', 'at.yMm', 'at.headingDeg'] as const;
const SIDE_FACTS = ['Frame', 'FrameType', 'FrameCondition'].flatMap((name) => [
  `left${name}`,
  `right${name}`,
]);
export const BAY_FACTS = [
  'bayOrder',
  'bayClearWidthMm',
  'maxBayLoadKg',
  ...SIDE_FACTS,
  'frameType',
  'frameCondition',
] as const;
export const LEVEL_FACTS = [
  'beamTopMm',
  'beamHeightMm',
  'pairCapacityKg',
  'maxUnitKg',
  'depthPositions',
  'decked',
  'levelCondition',
] as const;

/** Where a location stands now. */
export type Standing = { run: Run; bay: Bay; level: Level; index: number };

export function standingLocations(site: Site): Map<string, Standing> {
  const standing = new Map<string, Standing>();
  for (const run of site.runs)
    for (const bay of run.bays)
      for (const level of bay.levels)
        for (const [index, id] of level.locations.entries()) standing.set(id, { run, bay, level, index });
  return standing;
}

/**
 * The rows of the locations list by run, bay and level. Run, bay and level of a location that stands already need not
 * be given. Rows that fit nowhere go into the book.
 */
export function rackRows(
  site: Site,
  rows: readonly RowFacts[],
  standing: ReadonlyMap<string, Standing>,
  book: RefusalBook,
): Map<string, RunRows> {
  const runs = new Map<string, RunRows>();
  const seen = new Map<string, number>();
  refuseUnknownIds(site, rows, book);
  let above: RunRows | null = null;
  for (const row of rows) {
    const text = (fact: string): string | null => {
      const value = row.get(fact) ?? null;
      return value === null ? null : String(value);
    };
    const location = text('location');
    const now = location === null ? undefined : standing.get(location);
    const runId = text('run') ?? now?.run.id ?? null;
    if (runId === null) {
      if (!book.has(row.row)) book.refuse(row.row, 'run', { is: 'present' });
      // A row that names no run may belong to the run above it, which is then not known whole.
      above?.rows.push(row.row);
      continue;
    }
    const run: RunRows = runs.get(runId) ?? newRun(runId);
    runs.set(runId, run);
    above = run;
    run.rows.push(row.row);
    takeIn(run.stated, row, RUN_FACTS, book);
    if (now !== undefined && now.run.id !== runId)
      book.refuse(row.row, 'location', { is: 'same-run', run: now.run.id });
    const first = location === null ? undefined : seen.get(location);
    if (first !== undefined) {
      book.refuse(row.row, 'location', { is: 'once-in-file', otherRow: first });
      continue;
    }
    if (location !== null) seen.set(location, row.row);
    const bayId = text('bay') ?? now?.bay.id ?? null;
    const levelFact = row.get('level') ?? now?.level.level ?? null;
    const levelNumber = levelFact === null ? null : Number(levelFact);
    if (bayId === null) {
      if (levelNumber !== null || location !== null) book.refuse(row.row, 'bay', { is: 'bay-for-level' });
      takeIn(run.alone.stated, row, BAY_FACTS, book);
      run.alone.rows.push(row.row);
      continue;
    }
    const bay: BayRows = run.bays.get(bayId) ?? { stated: new Map(), rows: [], levels: new Map() };
    run.bays.set(bayId, bay);
    bay.rows.push(row.row);
    takeIn(bay.stated, row, BAY_FACTS, book);
    if (levelNumber === null) {
      if (location !== null) book.refuse(row.row, 'level', { is: 'level-for-location' });
      continue;
    }
    const level: LevelRows = bay.levels.get(levelNumber) ?? {
      stated: new Map(),
      rows: [],
      locations: new Map(),
    };
    bay.levels.set(levelNumber, level);
    level.rows.push(row.row);
    takeIn(level.stated, row, LEVEL_FACTS, book);
    if (location !== null) level.locations.set(location, row);
  }
  return runs;
}

function newRun(id: string): RunRows {
  const alone: BayRows = { stated: new Map(), rows: [], levels: new Map() };
  return { id, stated: new Map(), rows: [], bays: new Map(), alone };
}

function refuseUnknownIds(site: Site, rows: readonly RowFacts[], book: RefusalBook): void {
  const aisles = new Set(site.aisles.map(({ id }) => id));
  const frameTypes = new Set(site.frameTypes.map(({ id }) => id));
  const references = [
    ['aisle', aisles, 'aisles'],
    ['leftFrameType', frameTypes, 'frameTypes'],
    ['rightFrameType', frameTypes, 'frameTypes'],
    ['frameType', frameTypes, 'frameTypes'],
  ] as const;
  const nearest = new Map<string, string | null>();
  for (const row of rows) {
    for (const [fact, ids, list] of references) {
      const value = row.get(fact) ?? null;
      if (value === null || ids.has(String(value))) continue;
      const key = `${list} ${value}`;
      if (!nearest.has(key)) nearest.set(key, nearestTo(String(value), ids));
      book.refuse(row.row, fact, { is: 'id-in', list, nearest: nearest.get(key) ?? null });
    }
  }
}
