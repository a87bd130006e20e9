import { asc } from 'drizzle-orm';
import type { Aisle, Bay, Dock, Frame, FrameType, Level, Run } from '../../model/racking.ts';
import type { Database } from '../open-database.ts';
import {
  aisles,
  bays,
  docks,
  frameRatings,
  frames,
  frameTypes,
  levels,
  locations,
  runs,
} from '../tables/racking.ts';
import { grouped, keyOf } from './grouped.ts';
import { insertAll } from './insert-all.ts';
import { only } from './only.ts';

export function insertFrameTypes(db: Database, list: readonly FrameType[], first = 0): void {
  insertAll(
    db,
    frameTypes,
    list.map(({ id }, i) => ({ id, ordinal: first + i })),
  );
  insertAll(
    db,
    frameRatings,
    list.flatMap((type) =>
      type.ratings.map((rating, ordinal) => ({ frameType: type.id, ordinal, ...rating })),
    ),
  );
}

export function readFrameTypes(db: Database, id?: string): FrameType[] {
  const ratings = grouped(
    db
      .select()
      .from(frameRatings)
      .where(only(frameRatings.frameType, id))
      .orderBy(asc(frameRatings.ordinal))
      .all(),
    (row) => row.frameType,
    ({ maxGapMm, capacityKg }) => ({ maxGapMm, capacityKg }),
  );
  const rows = db
    .select()
    .from(frameTypes)
    .where(only(frameTypes.id, id))
    .orderBy(asc(frameTypes.ordinal))
    .all();
  return rows.map(({ id }) => ({ id, ratings: ratings.get(id) ?? [] }));
}

export function insertAisles(db: Database, list: readonly Aisle[], first = 0): void {
  insertAll(
    db,
    aisles,
    list.map((aisle, i) => ({ ...aisle, ordinal: first + i })),
  );
}

export function readAisles(db: Database, id?: string): Aisle[] {
  const rows = db.select().from(aisles).where(only(aisles.id, id)).orderBy(asc(aisles.ordinal)).all();
  return rows.map(({ ordinal: _, ...aisle }) => aisle);
}

export function insertDocks(db: Database, list: readonly Dock[], first = 0): void {
  insertAll(
    db,
    docks,
    list.map((dock, i) => ({ ...dock, ordinal: first + i })),
  );
}

export function readDocks(db: Database, id?: string): Dock[] {
  const rows = db.select().from(docks).where(only(docks.id, id)).orderBy(asc(docks.ordinal)).all();
  return rows.map(({ ordinal: _, ...dock }) => dock);
}

export function insertRuns(db: Database, list: readonly Run[], first = 0): void {
  const rows = list.map(({ id, aisleId, frameDepthMm, at }, i) => ({
    id,
    ordinal: first + i,
    aisleId,
    frameDepthMm,
    ...at,
  }));
  insertAll(db, runs, rows);
  insertAll(
    db,
    frames,
    list.flatMap((run) => run.frames.map((frame, ordinal) => ({ run: run.id, ordinal, ...frame }))),
  );
  insertAll(
    db,
    bays,
    list.flatMap((run) =>
      run.bays.map(({ levels: _, ...bay }, ordinal) => ({ run: run.id, ordinal, ...bay })),
    ),
  );
  const everyLevel = list.flatMap((run) =>
    run.bays.flatMap((bay, bayAt) =>
      bay.levels.map((level, ordinal) => ({ run: run.id, bay: bayAt, ordinal, value: level })),
    ),
  );
  insertAll(
    db,
    levels,
    everyLevel.map(({ value: { locations: _, ...level }, ...place }) => ({ ...place, ...level })),
  );
  insertAll(
    db,
    locations,
    everyLevel.flatMap(({ run, bay, ordinal: level, value }) =>
      value.locations.map((id, ordinal) => ({ id, run, bay, level, ordinal })),
    ),
  );
}

export function readRuns(db: Database, id?: string): Run[] {
  const locationsOf = grouped(
    db.select().from(locations).where(only(locations.run, id)).orderBy(asc(locations.ordinal)).all(),
    (row) => keyOf(row.run, row.bay, row.level),
    (row) => row.id,
  );
  const levelsOf = grouped(
    db.select().from(levels).where(only(levels.run, id)).orderBy(asc(levels.ordinal)).all(),
    (row) => keyOf(row.run, row.bay),
    ({ run, bay, ordinal, ...level }): Level => ({
      ...level,
      locations: locationsOf.get(keyOf(run, bay, ordinal)) ?? [],
    }),
  );
  const baysOf = grouped(
    db.select().from(bays).where(only(bays.run, id)).orderBy(asc(bays.ordinal)).all(),
    (row) => row.run,
    ({ run, ordinal, ...bay }): Bay => ({ ...bay, levels: levelsOf.get(keyOf(run, ordinal)) ?? [] }),
  );
  const framesOf = grouped(
    db.select().from(frames).where(only(frames.run, id)).orderBy(asc(frames.ordinal)).all(),
    (row) => row.run,
    ({ run: _run, ordinal: _ordinal, ...frame }): Frame => frame,
  );
  const rows = db.select().from(runs).where(only(runs.id, id)).orderBy(asc(runs.ordinal)).all();
  return rows.map(({ id, aisleId, frameDepthMm, xMm, yMm, headingDeg }) => ({
    id,
    aisleId,
    frameDepthMm,
    frames: framesOf.get(id) ?? [],
    bays: baysOf.get(id) ?? [],
    at: xMm === null || yMm === null || headingDeg === null ? null : { xMm, yMm, headingDeg },
  }));
}
