import { importSite } from '../../lib/store/import-site.ts';
import { openDatabase } from '../../lib/store/open-database.ts';
import { readSite } from '../../lib/store/read-site.ts';
import { saveRun } from '../../lib/store/save-site.ts';
import { type CrashWork, nextSite } from './crash-sites.ts';

/*
 * A process to be killed: opens a database, waits for a word, then changes the site again and again. Says what it begins
 * and what it has been told is kept, each at once (a pipe is written to without waiting), so that the killer knows which
 * states may stand.
 */
const [path = '', work = ''] = process.argv.slice(2);
const ACTOR = { who: 'The killed', at: '2026-03-03T00:00:00Z' };

const db = openDatabase(path);
let site = readSite(db)!;
process.stdout.write('ready\n');
process.stdin.once('data', () => {
  for (let n = 1; ; n += 1) {
    site = nextSite(site, work as CrashWork);
    process.stdout.write(`begin ${n}\n`);
    if (work === 'import') importSite(db, site, ACTOR);
    else if (!saveRun(db, site.runs[0]!, ACTOR).ok) throw new Error('the save was refused');
    process.stdout.write(`kept ${n}\n`);
  }
});
