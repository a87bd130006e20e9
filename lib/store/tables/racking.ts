import {
  customType,
  foreignKey,
  index,
  integer,
  primaryKey,
  real,
  sqliteTable,
  text,
  unique,
} from 'drizzle-orm/sqlite-core';
import { CONDITIONS } from '../../model/racking.ts';

/** A height in mm, 'none' (surveyed, nothing there) or null (not surveyed): numeric affinity keeps the word a word. */
const surveyedHeight = customType<{ data: number | 'none'; driverData: number | 'none' }>({
  dataType: () => 'numeric',
});

export const frameTypes = sqliteTable('frame_types', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
});

export const frameRatings = sqliteTable(
  'frame_ratings',
  {
    frameType: text('frame_type')
      .notNull()
      .references(() => frameTypes.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    maxGapMm: real('max_gap_mm').notNull(),
    capacityKg: real('capacity_kg').notNull(),
  },
  (table) => [primaryKey({ columns: [table.frameType, table.ordinal] })],
);

export const aisles = sqliteTable('aisles', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
  clearWidthMm: real('clear_width_mm').notNull(),
  overheadClearMm: surveyedHeight('overhead_clear_mm'),
  sprinklerMm: surveyedHeight('sprinkler_mm'),
});

/** xMm, yMm and headingDeg are all given or all null. */
export const runs = sqliteTable(
  'runs',
  {
    id: text('id').primaryKey(),
    ordinal: integer('ordinal').notNull(),
    aisleId: text('aisle_id')
      .notNull()
      .references(() => aisles.id),
    frameDepthMm: real('frame_depth_mm').notNull(),
    xMm: real('x_mm'),
    yMm: real('y_mm'),
    headingDeg: real('heading_deg'),
  },
  (table) => [index('runs_of_aisle').on(table.aisleId)],
);

export const frames = sqliteTable(
  'frames',
  {
    run: text('run')
      .notNull()
      .references(() => runs.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    id: text('id').notNull(),
    typeId: text('type_id')
      .notNull()
      .references(() => frameTypes.id),
    condition: text('condition', { enum: CONDITIONS }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.run, table.ordinal] }),
    unique('frame_in_run').on(table.run, table.id),
    index('frames_of_type').on(table.typeId),
  ],
);

/** Bay `ordinal` stands between the frames of the same ordinal and the next. */
export const bays = sqliteTable(
  'bays',
  {
    run: text('run')
      .notNull()
      .references(() => runs.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    id: text('id').notNull(),
    clearWidthMm: real('clear_width_mm').notNull(),
    maxBayLoadKg: real('max_bay_load_kg'),
  },
  (table) => [
    primaryKey({ columns: [table.run, table.ordinal] }),
    unique('bay_in_run').on(table.run, table.id),
  ],
);

/** `ordinal` is the place in the bay's list; `level` is the number that people call it. */
export const levels = sqliteTable(
  'levels',
  {
    run: text('run').notNull(),
    bay: integer('bay').notNull(),
    ordinal: integer('ordinal').notNull(),
    level: integer('level').notNull(),
    beamTopMm: real('beam_top_mm').notNull(),
    beamHeightMm: real('beam_height_mm').notNull(),
    pairCapacityKg: real('pair_capacity_kg'),
    depthPositions: integer('depth_positions').$type<1 | 2>().notNull(),
    maxUnitKg: real('max_unit_kg'),
    decked: integer('decked', { mode: 'boolean' }).notNull(),
    condition: text('condition', { enum: CONDITIONS }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.run, table.bay, table.ordinal] }),
    foreignKey({ columns: [table.run, table.bay], foreignColumns: [bays.run, bays.ordinal] }).onDelete(
      'cascade',
    ),
  ],
);

export const locations = sqliteTable(
  'locations',
  {
    id: text('id').primaryKey(),
    run: text('run').notNull(),
    bay: integer('bay').notNull(),
    level: integer('level').notNull(),
    ordinal: integer('ordinal').notNull(),
  },
  (table) => [
    unique('location_in_level').on(table.run, table.bay, table.level, table.ordinal),
    foreignKey({
      columns: [table.run, table.bay, table.level],
      foreignColumns: [levels.run, levels.bay, levels.ordinal],
    }).onDelete('cascade'),
  ],
);

export const docks = sqliteTable('docks', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
  xMm: real('x_mm').notNull(),
  yMm: real('y_mm').notNull(),
});
