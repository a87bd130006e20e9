import { blob, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { CHANGE_KINDS, CHANGE_NOUNS } from '../../model/change.ts';

/** Who changed what, when, from what to what. Rows are only ever added; the id of a row is the revision that it made. */
export const changes = sqliteTable(
  'changes',
  {
    id: integer('id').primaryKey({ autoIncrement: true }),
    at: text('at').notNull(),
    who: text('who').notNull(),
    kind: text('kind', { enum: CHANGE_KINDS }).notNull(),
    noun: text('noun', { enum: CHANGE_NOUNS }).notNull(),
    subject: text('subject').notNull(),
    before: text('before'),
    after: text('after'),
    /** The first change that was made together with this one; null in rows older than the column: it was alone. */
    batch: integer('batch'),
    wholeSite: integer('whole_site', { mode: 'boolean' }).notNull().default(false),
    reverts: integer('reverts'),
    /** Where in its list the entry stood that came or went, and the entry that it came to stand ahead of. */
    ordinal: integer('ordinal'),
    ahead: text('ahead'),
  },
  (table) => [
    index('changes_of_subject').on(table.noun, table.subject, table.id),
    index('changes_of_batch').on(table.batch),
  ],
);

/** The site file that a whole-site change took away, gzipped, so that the change can be undone. Only the newest are kept. */
export const keptSites = sqliteTable('kept_sites', {
  change: integer('change')
    .primaryKey()
    .references(() => changes.id),
  file: blob('file', { mode: 'buffer' }).notNull(),
});
