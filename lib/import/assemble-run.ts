import type { Level, Run } from '../model/racking.ts';
import { assembleFrames } from './assemble-frames.ts';
import type { Draft, PathKey } from './draft.ts';
import { type OrderFault, orderOf, type Placed } from './natural-order.ts';
import type { BayRows, LevelRows, RunRows } from './rack-rows.ts';
import type { RefusalBook } from './refusal-book.ts';
import { type StatedFacts, statedOr } from './stated-facts.ts';

/** Where names decided an order that no row stated. */
export type ReadingNotes = { baysByName: string[]; locationsByName: number };

/** A run as the rows and what stands already would have it: not yet judged by the model, every path traced to its row. */
export function assembleRun(
  run: RunRows,
  before: Run | null,
  book: RefusalBook,
  notes: ReadingNotes,
): { raw: unknown; locate: Draft['locate'] } {
  const bayIds = baysInOrder(run, before, book, notes);
  const placedInRun = new Set(
    [...run.bays.values()].flatMap((bay) =>
      [...bay.levels.values()].flatMap((level) => [...level.locations.keys()]),
    ),
  );
  const bays = bayIds.map((id) => {
    const rows = run.bays.get(id);
    const standing = before?.bays.find((bay) => bay.id === id) ?? null;
    const stated: StatedFacts = rows?.stated ?? new Map();
    const standingLevels = new Map((standing?.levels ?? []).map((level) => [level.level, level]));
    const numbers = [...new Set([...standingLevels.keys(), ...(rows?.levels.keys() ?? [])])].sort(
      (a, b) => a - b,
    );
    const levels = numbers.map((number) =>
      assembleLevel(
        number,
        rows?.levels.get(number),
        standingLevels.get(number) ?? null,
        placedInRun,
        book,
        notes,
      ),
    );
    const raw = {
      id,
      clearWidthMm: statedOr(stated, 'bayClearWidthMm', standing?.clearWidthMm),
      maxBayLoadKg: statedOr(stated, 'maxBayLoadKg', standing?.maxBayLoadKg),
      levels: levels.map((level) => level.raw),
    };
    return { id, rows, levels, raw };
  });
  const frames = assembleFrames(run, bayIds, before, book);
  const raw = {
    id: run.id,
    aisleId: statedOr(run.stated, 'aisle', before?.aisleId),
    frameDepthMm: statedOr(run.stated, 'frameDepthMm', before?.frameDepthMm),
    frames: frames.raw,
    bays: bays.map((bay) => bay.raw),
    at: placeOnPlan(run.stated, before),
  };
  const first = run.rows[0]!;
  const locate = (path: readonly PathKey[]) => {
    const [top, index, part, levelIndex, fact, locationIndex] = path;
    if (top === 'frames' && typeof index === 'number') return frames.locate(index, String(part ?? ''));
    if (top !== 'bays' || typeof index !== 'number') {
      const runFact = top === 'aisleId' ? 'aisle' : path.join('.');
      return from(run.stated, runFact, first);
    }
    const bay = bays[index]!;
    const bayRow = bay.rows?.rows[0] ?? first;
    if (part !== 'levels' || typeof levelIndex !== 'number') {
      return from(bay.rows?.stated, BAY_FACT[String(part)] ?? 'bay', bayRow);
    }
    const level = bay.levels[levelIndex];
    const levelRow = level?.rows?.rows[0] ?? bayRow;
    if (fact !== 'locations')
      return from(level?.rows?.stated, LEVEL_FACT[String(fact)] ?? String(fact), levelRow);
    const id = level?.raw.locations[Number(locationIndex)];
    const row = id === undefined ? undefined : level?.rows?.locations.get(id)?.row;
    return { row: row ?? levelRow, fact: 'location' };
  };
  return { raw, locate };
}

const BAY_FACT: Record<string, string> = { clearWidthMm: 'bayClearWidthMm', maxBayLoadKg: 'maxBayLoadKg' };
const LEVEL_FACT: Record<string, string> = { condition: 'levelCondition' };

function from(
  stated: StatedFacts | undefined,
  fact: string,
  otherwise: number,
): { row: number; fact: string } {
  return { row: stated?.get(fact)?.row ?? otherwise, fact };
}

function baysInOrder(run: RunRows, before: Run | null, book: RefusalBook, notes: ReadingNotes): string[] {
  const placed = [...run.bays].map(([id, bay]: [string, BayRows]): Placed => {
    const order = bay.stated.get('bayOrder');
    return { id, order: (order?.value ?? null) as number | null, row: order?.row ?? bay.rows[0]! };
  });
  const order = orderOf(
    (before?.bays ?? []).map((bay) => bay.id),
    placed,
  );
  refuseOrder(order.faults, 'bayOrder', book);
  if (order.byName) notes.baysByName.push(run.id);
  return order.faults.length > 0 ? placed.map(({ id }) => id) : order.ids;
}

function refuseOrder(faults: readonly OrderFault[], fact: 'bayOrder' | 'position', book: RefusalBook): void {
  for (const fault of faults) {
    if (fault.fault === 'taken')
      book.refuse(fault.row, fact, { is: 'place-of-its-own', firstRow: fault.firstRow });
    else if (fault.fault === 'gap') book.refuse(fault.row, fact, { is: 'next-in-order', next: fault.next });
    else book.refuse(fault.row, fact, { is: 'order-column' });
  }
}

type RawLevel = { locations: string[] } & Record<string, unknown>;

function assembleLevel(
  level: number,
  rows: LevelRows | undefined,
  standing: Level | null,
  placedInRun: ReadonlySet<string>,
  book: RefusalBook,
  notes: ReadingNotes,
): { raw: RawLevel; rows: LevelRows | undefined } {
  if (rows === undefined) {
    // Locations that a row moves to another level of the run leave this one.
    const kept = standing!.locations.filter((id) => !placedInRun.has(id));
    return { raw: { ...standing!, locations: kept }, rows };
  }
  const { stated } = rows;
  // The floor has no beam: its top is 0 and its height nothing, by what level 0 means.
  const floor = level === 0 ? 0 : undefined;
  const depthPositions = statedOr(stated, 'depthPositions', standing?.depthPositions);
  const raw = {
    level,
    beamTopMm: statedOr(stated, 'beamTopMm', standing?.beamTopMm) ?? floor,
    beamHeightMm: statedOr(stated, 'beamHeightMm', standing?.beamHeightMm) ?? floor,
    pairCapacityKg: statedOr(stated, 'pairCapacityKg', standing?.pairCapacityKg),
    depthPositions,
    maxUnitKg: statedOr(stated, 'maxUnitKg', standing?.maxUnitKg),
    decked: statedOr(stated, 'decked', standing?.decked),
    condition: statedOr(stated, 'levelCondition', standing?.condition),
    locations: locationsInOrder(rows, standing, depthPositions === 2 ? 2 : 1, placedInRun, book, notes),
  };
  return { raw, rows };
}

/** Left to right, front row then rear row. */
function locationsInOrder(
  rows: LevelRows,
  standing: Level | null,
  depth: 1 | 2,
  placedInRun: ReadonlySet<string>,
  book: RefusalBook,
  notes: ReadingNotes,
): string[] {
  const perRow = standing === null ? 0 : standing.locations.length / standing.depthPositions;
  const rowOfStanding = (id: string): 'front' | 'rear' =>
    standing!.locations.indexOf(id) < perRow ? 'front' : 'rear';
  const here = (standing?.locations ?? []).filter((id) => rows.locations.has(id) || !placedInRun.has(id));
  const rowOf = new Map<string, 'front' | 'rear'>(here.map((id) => [id, rowOfStanding(id)]));
  for (const [id, facts] of rows.locations) {
    const { row } = facts;
    const said = (facts.get('row') ?? null) as 'front' | 'rear' | null;
    if (said === 'rear' && depth === 1) book.refuse(row, 'row', { is: 'one-of', values: ['front'] });
    if (said === null && depth === 2 && !rowOf.has(id)) book.refuse(row, 'row', { is: 'present' });
    rowOf.set(id, said ?? (depth === 1 ? 'front' : rowOf.get(id)) ?? 'front');
  }
  const left = here.filter((id) => depth === 1 && rowOf.get(id) === 'rear');
  if (left.length > 0)
    book.refuse(rows.rows[0]!, 'depthPositions', { is: 'rows-for-depth', rear: left.length });
  const ordered = (['front', 'rear'] as const).map((side) => {
    const stood = here.filter((id) => rowOfStanding(id) === side && rowOf.get(id) === side);
    const placed = [...rows.locations]
      .filter(([id]) => rowOf.get(id) === side)
      .map(
        ([id, facts]): Placed => ({
          id,
          order: (facts.get('position') ?? null) as number | null,
          row: facts.row,
        }),
      );
    const order = orderOf(stood, placed);
    refuseOrder(order.faults, 'position', book);
    if (order.byName) notes.locationsByName += placed.length;
    return order.ids;
  });
  if (depth === 2 && ordered[0]!.length !== ordered[1]!.length) {
    book.refuse(rows.rows[0]!, 'location', { is: 'even-positions' });
  }
  return ordered.flat();
}

function placeOnPlan(stated: StatedFacts, before: Run | null): unknown {
  const at = {
    xMm: statedOr(stated, 'at.xMm', before?.at?.xMm),
    yMm: statedOr(stated, 'at.yMm', before?.at?.yMm),
    headingDeg: statedOr(stated, 'at.headingDeg', before?.at?.headingDeg),
  };
  return Object.values(at).every((value) => value === undefined) ? null : at;
}
