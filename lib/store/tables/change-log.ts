import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';

export const CHANGE_KINDS = ['import', 'save', 'add', 'remove'] as const;
export const CHANGE_NOUNS = [
  'site',
  'policy',
  'pallet-type',
  'frame-type',
  'aisle',
  'run',
  'dock',
  'truck',
  'operator',
  'load',
  'stock',
  'check',
] as const;

/** Who changed what, when, from what to what. Rows are only ever added. */
export const changes = sqliteTable('changes', {
  id: integer('id').primaryKey({ autoIncrement: true }),
  at: text('at').notNull(),
  who: text('who').notNull(),
  kind: text('kind', { enum: CHANGE_KINDS }).notNull(),
  noun: text('noun', { enum: CHANGE_NOUNS }).notNull(),
  subject: text('subject').notNull(),
  before: text('before'),
  after: text('after'),
});
