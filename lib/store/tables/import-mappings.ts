import { primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';

/** How the columns of a file became facts when it was last imported, kept under its header; the mapping is JSON. */
export const importMappings = sqliteTable(
  'import_mappings',
  {
    signature: text('signature').notNull(),
    list: text('list').notNull(),
    mapping: text('mapping').notNull(),
    usedBy: text('used_by').notNull(),
    usedAt: text('used_at').notNull(),
  },
  (table) => [primaryKey({ columns: [table.signature, table.list] })],
);
