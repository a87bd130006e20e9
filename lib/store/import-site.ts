import { sql } from 'drizzle-orm';
import type { Site } from '../model/site.ts';
import { recordChange } from './change-log.ts';
import type { Connection, Database } from './open-database.ts';
import { readSiteIn } from './read-site.ts';
import { insertLoads, insertPalletTypes, insertStock } from './rows/loads.ts';
import { type Actor, insertPolicy } from './rows/policy.ts';
import { insertAisles, insertDocks, insertFrameTypes, insertRuns } from './rows/racking.ts';
import { insertChecks, insertOperators, insertTrucks } from './rows/trucks.ts';
import { loads, palletTypes, stock } from './tables/loads.ts';
import { aisles, docks, frameTypes, runs } from './tables/racking.ts';
import { policyValues, siteTable } from './tables/site.ts';
import { checks, operators, trucks } from './tables/trucks.ts';

/** Those that refer come before those that are referred to; parts go with their wholes. */
const EMPTIED_IN_ORDER = [
  stock,
  checks,
  loads,
  palletTypes,
  runs,
  aisles,
  frameTypes,
  docks,
  trucks,
  operators,
  policyValues,
] as const;

/**
 * Puts a site that lib/model has accepted in the place of whatever the database holds: all of it or nothing. The change
 * log stays and gains a row. Returns the new revision.
 */
export function importSite(db: Database, site: Site, actor: Actor): number {
  return db.transaction(
    (tx) => {
      const before = readSiteIn(tx);
      for (const table of EMPTIED_IN_ORDER) tx.delete(table).run();
      tx.insert(siteTable)
        .values({ only: 1, name: site.site.name, revision: 0 })
        .onConflictDoUpdate({ target: siteTable.only, set: { name: sql`excluded.name` } })
        .run();
      insertSite(tx, site, actor);
      return recordChange(tx, actor, {
        kind: 'import',
        noun: 'site',
        subject: site.site.name,
        before: before && contentsOf(before),
        after: contentsOf(site),
      });
    },
    { behavior: 'immediate' },
  );
}

function insertSite(db: Connection, site: Site, actor: Actor): void {
  insertPolicy(db, site.site.policy, actor);
  insertPalletTypes(db, site.palletTypes);
  insertFrameTypes(db, site.frameTypes);
  insertAisles(db, site.aisles);
  insertRuns(db, site.runs);
  insertDocks(db, site.docks);
  insertTrucks(db, site.trucks);
  insertOperators(db, site.operators);
  insertLoads(db, site.loads);
  insertStock(db, site.stock);
  insertChecks(db, site.checks);
}

/** What an import brought or took away, in numbers: the log would otherwise keep every site twice. */
function contentsOf(site: Site) {
  return {
    name: site.site.name,
    palletTypes: site.palletTypes.length,
    frameTypes: site.frameTypes.length,
    aisles: site.aisles.length,
    runs: site.runs.length,
    docks: site.docks.length,
    trucks: site.trucks.length,
    operators: site.operators.length,
    loads: site.loads.length,
    stock: site.stock.length,
    checks: site.checks.length,
  };
}
