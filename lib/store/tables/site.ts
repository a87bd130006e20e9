import { sql } from 'drizzle-orm';
import { check, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';

/** One row: a database holds one site. The revision rises with every change and never falls. */
export const siteTable = sqliteTable(
  'site',
  {
    only: integer('only').primaryKey(),
    name: text('name').notNull(),
    revision: integer('revision').notNull(),
  },
  (table) => [check('one_site', sql`${table.only} = 1`)],
);

/** The policy values that the site sets itself, one row a key; the value is JSON, since some are lists or tables. */
export const policyValues = sqliteTable('policy_values', {
  key: text('key').primaryKey(),
  value: text('value').notNull(),
  changedBy: text('changed_by').notNull(),
  changedAt: text('changed_at').notNull(),
});
