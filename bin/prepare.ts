import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { demoSiteAt } from '../lib/demo/demo-site-at.ts';
import { importSite } from '../lib/store/import-site.ts';
import { DatabaseRefused } from '../lib/store/migrate-database.ts';
import { closeDatabase, openDatabase } from '../lib/store/open-database.ts';
import { isEmpty } from '../lib/store/read-site.ts';
import { rememberDemo } from '../lib/store/settings.ts';
import { writeTransaction } from '../lib/store/transaction.ts';

// Makes the database or brings it up to date, and puts the demo site into a new one. Run by the launcher.
try {
  const folder = process.env.TINEWISE_DATA || 'data';
  mkdirSync(folder, { recursive: true, mode: 0o700 }); // sessions and hashes of passwords are kept in it
  const path = join(folder, 'tinewise.db');
  const db = openDatabase(path);
  if (isEmpty(db)) {
    const at = new Date().toISOString();
    const site = demoSiteAt(at);
    writeTransaction(db, () => {
      importSite(db, site, { who: 'the demo', at });
      rememberDemo(db, at);
    });
    console.log(`New database ${path} with the demo site "${site.site.name}".`);
  }
  closeDatabase(db);
} catch (error) {
  if (!(error instanceof DatabaseRefused)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
