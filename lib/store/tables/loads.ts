import { index, integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { COUPLINGS } from '../../model/load.ts';
import { MASS_BASES } from '../../model/policy.ts';
import { locations } from './racking.ts';

export const palletTypes = sqliteTable('pallet_types', {
  id: text('id').primaryKey(),
  ordinal: integer('ordinal').notNull(),
  depthMm: real('depth_mm').notNull(),
  widthMm: real('width_mm').notNull(),
  tareKg: real('tare_kg').notNull(),
  entryHeightMm: real('entry_height_mm').notNull(),
});

/** The columns of `handPick` are all given or all null; a load without rows in `items` has no list of items. */
export const loads = sqliteTable(
  'loads',
  {
    id: text('id').primaryKey(),
    ordinal: integer('ordinal').notNull(),
    name: text('name').notNull(),
    palletType: text('pallet_type').references(() => palletTypes.id),
    grossKg: real('gross_kg'),
    massBasis: text('mass_basis', { enum: MASS_BASES }).notNull(),
    depthMm: real('depth_mm').notNull(),
    widthMm: real('width_mm').notNull(),
    heightMm: real('height_mm').notNull(),
    centreFromHeelMm: real('centre_from_heel_mm'),
    centreHeightMm: real('centre_height_mm'),
    picksPerWeek: real('picks_per_week'),
    group: text('group'),
    pickMassKg: real('pick_mass_kg'),
    pickHorizontalMm: real('pick_horizontal_mm'),
    pickGripHeightMm: real('pick_grip_height_mm'),
    pickDestinationHeightMm: real('pick_destination_height_mm'),
    pickAsymmetryDeg: real('pick_asymmetry_deg'),
    pickLiftsPerMinute: real('pick_lifts_per_minute'),
    pickDurationHours: real('pick_duration_hours'),
    pickCoupling: text('pick_coupling', { enum: COUPLINGS }),
  },
  (table) => [index('loads_on_pallet_type').on(table.palletType), index('loads_in_order').on(table.ordinal)],
);

export const items = sqliteTable(
  'items',
  {
    load: text('load')
      .notNull()
      .references(() => loads.id, { onDelete: 'cascade' }),
    ordinal: integer('ordinal').notNull(),
    name: text('name').notNull(),
    massKg: real('mass_kg').notNull(),
    count: integer('count').notNull(),
  },
  (table) => [primaryKey({ columns: [table.load, table.ordinal] })],
);

export const stock = sqliteTable(
  'stock',
  {
    location: text('location')
      .primaryKey()
      .references(() => locations.id),
    ordinal: integer('ordinal').notNull(),
    load: text('load')
      .notNull()
      .references(() => loads.id),
  },
  (table) => [index('stock_of_load').on(table.load), index('stock_in_order').on(table.ordinal)],
);
