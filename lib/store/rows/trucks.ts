import { asc, eq } from 'drizzle-orm';
import type { Check, Operator, Truck } from '../../model/truck.ts';
import type { Database } from '../open-database.ts';
import { authorisations, checks, defects, operators, plateRatings, trucks } from '../tables/trucks.ts';
import { grouped } from './grouped.ts';
import { insertAll } from './insert-all.ts';
import { only } from './only.ts';

export function insertTrucks(db: Database, list: readonly Truck[], first = 0): void {
  const rows = list.map(({ turning, forks, hold, speeds, plate, ...truck }, i) => ({
    ...truck,
    ordinal: first + i,
    ...turning,
    forkLengthMm: forks.lengthMm,
    armCapacityKg: forks.armCapacityKg,
    armLoadCentreMm: forks.armLoadCentreMm,
    holdSince: hold?.since ?? null,
    holdReason: hold?.reason ?? null,
    ...speeds,
    verticalLoadCentreMm: plate.verticalLoadCentreMm,
  }));
  insertAll(db, trucks, rows);
  insertAll(
    db,
    plateRatings,
    list.flatMap((truck) =>
      truck.plate.ratings.map((rating, ordinal) => ({ truck: truck.id, ordinal, ...rating })),
    ),
  );
}

export function readTrucks(db: Database, id?: string): Truck[] {
  const ratingsOf = grouped(
    db
      .select()
      .from(plateRatings)
      .where(only(plateRatings.truck, id))
      .orderBy(asc(plateRatings.ordinal))
      .all(),
    (row) => row.truck,
    ({ truck: _truck, ordinal: _ordinal, ...rating }) => rating,
  );
  const rows = db.select().from(trucks).where(only(trucks.id, id)).orderBy(asc(trucks.ordinal)).all();
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    kind: row.kind,
    power: row.power,
    maxLiftMm: row.maxLiftMm,
    loweredMm: row.loweredMm,
    extendedMm: row.extendedMm,
    freeLiftMm: row.freeLiftMm,
    reachDepth: row.reachDepth,
    turning: turningOf(row),
    statedAisleMm: row.statedAisleMm,
    forks: {
      lengthMm: row.forkLengthMm,
      armCapacityKg: row.armCapacityKg,
      armLoadCentreMm: row.armLoadCentreMm,
    },
    fittedAttachment: row.fittedAttachment,
    hold:
      row.holdSince === null || row.holdReason === null
        ? null
        : { since: row.holdSince, reason: row.holdReason },
    speeds:
      row.travelMps === null || row.liftMps === null
        ? null
        : { travelMps: row.travelMps, liftMps: row.liftMps },
    plate: { verticalLoadCentreMm: row.verticalLoadCentreMm, ratings: ratingsOf.get(row.id) ?? [] },
  }));
}

function turningOf(row: typeof trucks.$inferSelect): Truck['turning'] {
  const { outsideRadiusMm, loadDistanceMm, insideOffsetMm } = row;
  if (outsideRadiusMm === null || loadDistanceMm === null || insideOffsetMm === null) return null;
  return { outsideRadiusMm, loadDistanceMm, insideOffsetMm };
}

export function insertChecks(db: Database, list: readonly Check[], first = 0): void {
  insertAll(
    db,
    checks,
    list.map(({ defects: _, ...check }, i) => ({ ...check, ordinal: first + i })),
  );
  insertAll(
    db,
    defects,
    list.flatMap((check, i) => check.defects.map((text, ordinal) => ({ check: first + i, ordinal, text }))),
  );
}

export function readChecks(db: Database, truck?: string): Check[] {
  const defectsOf = grouped(
    db.select().from(defects).orderBy(asc(defects.ordinal)).all(),
    (row) => String(row.check),
    (row) => row.text,
  );
  const rows = db.select().from(checks).where(only(checks.truck, truck)).orderBy(asc(checks.ordinal)).all();
  return rows.map(({ ordinal, ...check }) => ({ ...check, defects: defectsOf.get(String(ordinal)) ?? [] }));
}

/** Takes the checks of a truck out and gives them back. */
export function takeChecksOf(db: Database, truck: string): Check[] {
  const taken = readChecks(db, truck);
  db.delete(checks).where(eq(checks.truck, truck)).run();
  return taken;
}

export function insertOperators(db: Database, list: readonly Operator[], first = 0): void {
  insertAll(
    db,
    operators,
    list.map(({ id, name }, i) => ({ id, name, ordinal: first + i })),
  );
  insertAll(
    db,
    authorisations,
    list.flatMap((operator) =>
      operator.authorisations.map((entry, ordinal) => ({ operator: operator.id, ordinal, ...entry })),
    ),
  );
}

export function readOperators(db: Database, id?: string): Operator[] {
  const authorisationsOf = grouped(
    db
      .select()
      .from(authorisations)
      .where(only(authorisations.operator, id))
      .orderBy(asc(authorisations.ordinal))
      .all(),
    (row) => row.operator,
    ({ kind, expires }) => ({ kind, expires }),
  );
  const rows = db
    .select()
    .from(operators)
    .where(only(operators.id, id))
    .orderBy(asc(operators.ordinal))
    .all();
  return rows.map(({ id, name }) => ({ id, name, authorisations: authorisationsOf.get(id) ?? [] }));
}
