import { join } from 'node:path';
import { LINK_VALID_HOURS, makeLink } from '../lib/store/one-time-links.ts';
import { closeDatabase, openDatabase } from '../lib/store/open-database.ts';
import { needsAdministrator } from '../lib/store/people.ts';
import { holdsDemo } from '../lib/store/settings.ts';

// Says how to get in while there is nobody who could sign in. Run by the launcher once the server answers, at each start.
const address = process.argv[2] ?? '';
const db = openDatabase(join(process.env.TINEWISE_DATA || 'data', 'tinewise.db'));
if (needsAdministrator(db)) {
  const link = new URL('/first-start', address);
  link.searchParams.set('link', makeLink(db, { kind: 'first-administrator' }, new Date()));
  if (holdsDemo(db))
    console.log('To look round the demo, open that address on this machine: no password is asked.\n');
  console.log(
    `To make the administrator, open this link, good once within ${LINK_VALID_HOURS} hours:\n${link}\n`,
  );
}
closeDatabase(db);
