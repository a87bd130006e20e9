import { getTableName, sql } from 'drizzle-orm';
import type { Site } from '../model/site.ts';
import type { Database } from './open-database.ts';
import { nextOrdinal } from './ordinals.ts';
import { insertLoads, insertPalletTypes, insertStock } from './rows/loads.ts';
import { insertAisles, insertDocks, insertFrameTypes, insertRuns } from './rows/racking.ts';
import { insertChecks, insertOperators, insertTrucks } from './rows/trucks.ts';
import type { SiteList } from './site-part.ts';
import { loads, palletTypes, stock } from './tables/loads.ts';
import { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import { checks, operators, trucks } from './tables/trucks.ts';

/** A list as it should be: the entries that stood, in their order, some of them changed, then the new ones. */
export type ChangedList = {
  list: SiteList;
  entries: readonly Site[SiteList][number][];
  /** Where the changed and the new ones are, in rising order. */
  changes: readonly number[];
  /** How many stood. */
  stood: number;
};

/** Rewriting a list costs about this share of changing its entries one by one. */
const REWRITE_FROM = 1 / 4;

type Writer = {
  table:
    | typeof palletTypes
    | typeof frameTypes
    | typeof aisles
    | typeof docks
    | typeof runs
    | typeof trucks
    | typeof operators
    | typeof loads
    | typeof stock
    | typeof checks;
  insert: (db: Database, entries: never, first?: number) => void;
};

const WRITERS: Record<SiteList, Writer> = {
  palletTypes: { table: palletTypes, insert: insertPalletTypes },
  frameTypes: { table: frameTypes, insert: insertFrameTypes },
  aisles: { table: aisles, insert: insertAisles },
  docks: { table: docks, insert: insertDocks },
  runs: { table: runs, insert: insertRuns },
  trucks: { table: trucks, insert: insertTrucks },
  operators: { table: operators, insert: insertOperators },
  loads: { table: loads, insert: insertLoads },
  stock: { table: stock, insert: insertStock },
  checks: { table: checks, insert: insertChecks },
};

/**
 * Writes what differs in a list: the new entries behind the others, the changed ones in their places; the whole list
 * where so much of it is changed that this is cheaper. Belongs in a transaction that holds references at its end.
 */
export function writeChanged(db: Database, { list, entries, changes, stood }: ChangedList): void {
  const { table, insert } = WRITERS[list];
  const changed = changes.filter((at) => at < stood);
  if (changed.length > stood * REWRITE_FROM) {
    db.delete(table).run();
    insert(db, entries as never, 0);
    return;
  }
  // Ordinals have gaps where entries were taken out.
  const ordinals =
    changed.length === 0 ? [] : db.values<[number]>(sql`SELECT ordinal FROM ${table} ORDER BY ordinal`);
  const takeOut = db.$client.prepare(`DELETE FROM ${getTableName(table)} WHERE ordinal = ?`);
  for (const at of changed) {
    const [ordinal] = ordinals[at]!;
    takeOut.run(ordinal);
    insert(db, [entries[at]] as never, ordinal);
  }
  insert(db, entries.slice(stood) as never, nextOrdinal(db, table));
}
