import { desc, sql } from 'drizzle-orm';
import type { Database } from './open-database.ts';
import type { Actor } from './rows/policy.ts';
import { importMappings } from './tables/import-mappings.ts';

/** How a file with this header was read into this list. The store does not judge the mapping: the import reads it again. */
export type UsedMapping = { signature: string; list: string; mapping: unknown };
export type KeptMapping = UsedMapping & { usedBy: string; usedAt: string };

/** More than the different exports of one site; the longest unused goes first. */
export const MAPPINGS_KEPT = 200;

/** Keeps a mapping for the next file with the same header, in the place of the former one. */
export function keepMapping(db: Database, { mapping, ...under }: UsedMapping, actor: Actor): void {
  const used = { mapping: JSON.stringify(mapping), usedBy: actor.who, usedAt: actor.at };
  db.insert(importMappings)
    .values({ ...under, ...used })
    .onConflictDoUpdate({ target: [importMappings.signature, importMappings.list], set: used })
    .run();
  db.run(sql`DELETE FROM ${importMappings} WHERE rowid NOT IN
    (SELECT rowid FROM import_mappings ORDER BY used_at DESC, rowid DESC LIMIT ${MAPPINGS_KEPT})`);
}

/** Every mapping that is kept, the last used first. */
export function readMappings(db: Database): KeptMapping[] {
  const rows = db.select().from(importMappings).orderBy(desc(importMappings.usedAt)).all();
  return rows.map((row) => ({ ...row, mapping: JSON.parse(row.mapping) as unknown }));
}
