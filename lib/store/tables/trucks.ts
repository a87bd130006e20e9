import { index, integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { MASTS, POWERS, TRUCK_KINDS } from '../../model/truck.ts';

/** The columns of `turning`, of `hold` and of `speeds` are each all given or all null. */
export const trucks = sqliteTable('trucks', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
  name: text('name').notNull(),
  kind: text('kind', { enum: TRUCK_KINDS }).notNull(),
  power: text('power', { enum: POWERS }).notNull(),
  maxLiftMm: real('max_lift_mm').notNull(),
  loweredMm: real('lowered_mm'),
  extendedMm: real('extended_mm'),
  freeLiftMm: real('free_lift_mm'),
  reachDepth: integer('reach_depth').$type<1 | 2>().notNull(),
  outsideRadiusMm: real('turning_outside_radius_mm'),
  loadDistanceMm: real('turning_load_distance_mm'),
  insideOffsetMm: real('turning_inside_offset_mm'),
  statedAisleMm: real('stated_aisle_mm'),
  forkLengthMm: real('fork_length_mm'),
  armCapacityKg: real('fork_arm_capacity_kg'),
  armLoadCentreMm: real('fork_arm_load_centre_mm'),
  fittedAttachment: text('fitted_attachment'),
  holdSince: text('hold_since'),
  holdReason: text('hold_reason'),
  travelMps: real('travel_mps'),
  liftMps: real('lift_mps'),
  verticalLoadCentreMm: real('plate_vertical_load_centre_mm'),
});

export const plateRatings = sqliteTable(
  'plate_ratings',
  {
    truck: text('truck')
      .notNull()
      .references(() => trucks.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    mast: text('mast', { enum: MASTS }).notNull(),
    attachment: text('attachment'),
    liftHeightMm: real('lift_height_mm').notNull(),
    loadCentreMm: real('load_centre_mm').notNull(),
    capacityKg: real('capacity_kg').notNull(),
  },
  (table) => [primaryKey({ columns: [table.truck, table.ordinal] })],
);

/** Walk-rounds, in the order in which they were written down. */
export const checks = sqliteTable(
  'checks',
  {
    ordinal: integer('ordinal').primaryKey(),
    truck: text('truck')
      .notNull()
      .references(() => trucks.id),
    at: text('at').notNull(),
    by: text('by').notNull(),
    result: text('result', { enum: ['pass', 'fail'] }).notNull(),
  },
  (table) => [index('checks_of_truck').on(table.truck)],
);

export const defects = sqliteTable(
  'defects',
  {
    check: integer('check')
      .notNull()
      .references(() => checks.ordinal, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    text: text('text').notNull(),
  },
  (table) => [primaryKey({ columns: [table.check, table.ordinal] })],
);

export const operators = sqliteTable('operators', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
  name: text('name').notNull(),
});

export const authorisations = sqliteTable(
  'authorisations',
  {
    operator: text('operator')
      .notNull()
      .references(() => operators.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    kind: text('kind', { enum: TRUCK_KINDS }).notNull(),
    expires: text('expires'),
  },
  (table) => [primaryKey({ columns: [table.operator, table.ordinal] })],
);
