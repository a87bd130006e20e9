import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { demoSite } from '../lib/demo/demo-site.ts';
import { importSite } from '../lib/store/import-site.ts';
import { DatabaseRefused } from '../lib/store/migrate-database.ts';
import { closeDatabase, openDatabase } from '../lib/store/open-database.ts';
import { isEmpty } from '../lib/store/read-site.ts';

// Makes the database or brings it up to date, and puts the demo site into a new one. Run by the launcher.
try {
  const folder = process.env.TINEWISE_DATA || 'data';
  mkdirSync(folder, { recursive: true });
  const path = join(folder, 'tinewise.db');
  const db = openDatabase(path);
  if (isEmpty(db)) {
    const site = demoSite();
    importSite(db, site, { who: 'the demo', at: new Date().toISOString() });
    console.log(`New database ${path} with the demo site "${site.site.name}".`);
  }
  closeDatabase(db);
} catch (error) {
  if (!(error instanceof DatabaseRefused)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
