import { userInfo } from 'node:os';
import { DatabaseRefused } from '../../lib/store/migrate-database.ts';
import { type Restored, restoreBackup } from '../../lib/store/restore.ts';
import { unavailability } from '../../lib/store/transaction.ts';
import { unavailableSentence } from '../../lib/words/change.ts';
import { CommandFault } from './command-fault.ts';
import { databasePath, MIGRATIONS } from './data-path.ts';
import { readArguments } from './read-arguments.ts';
import { standardOutput } from './standard-output.ts';

const HELP = `tinewise restore FILE [--server-stopped]

Puts what a backup holds in the place of what the database holds: site, change log, people. All of it or nothing; the
server may run. What was there is kept in a file beside the database. The backup is checked first: a damaged one and one
of a newer version are refused, an older one is brought up to date (a copy of it: the backup itself is not touched).

  --server-stopped    only for a database that is damaged: says that no server has it open. It is then set aside whole

The database is tinewise.db in the folder TINEWISE_DATA, else in data.
`;

/** Restores a backup of the database. */
export async function restore(args: readonly string[]): Promise<void> {
  const typed = readArguments(args, { 'server-stopped': { type: 'boolean' }, help: { type: 'boolean' } });
  const output = standardOutput();
  const { positionals, switches } = typed;
  await output.write(switches.has('help') ? HELP : exchange(positionals, switches.has('server-stopped')));
  await output.end();
}

function exchange([path, ...more]: readonly string[], serverIsStopped: boolean): string {
  if (path === undefined) throw new CommandFault('Backup file: nothing came, a path was expected.');
  if (more.length > 0)
    throw new CommandFault(`Argument: ${JSON.stringify(more[0])} came, one file was expected.`);
  const actor = { who: `restore command (${userInfo().username})`, at: new Date().toISOString() };
  let restored: Restored;
  try {
    restored = restoreBackup(path, databasePath(), { actor, serverIsStopped, migrations: MIGRATIONS });
  } catch (error) {
    const reason = unavailability(error);
    if (reason !== null) throw new CommandFault(unavailableSentence(reason));
    if (error instanceof DatabaseRefused) throw new CommandFault(error.message);
    throw error;
  }
  if (!restored.ok) throw new CommandFault(refusalLines(path, restored.why));
  const kept = restored.replaced === null ? '' : `What was there before is kept in ${restored.replaced}.\n`;
  return `Restored from ${path}: revision ${restored.revision}.\n${kept}`;
}

function refusalLines(path: string, why: Extract<Restored, { ok: false }>['why']): string[] {
  const file = `Backup file: ${JSON.stringify(path)}`;
  const nothing = 'Nothing was changed.';
  switch (why) {
    case 'no-such-file':
      return [`${file} is not there. ${nothing}`];
    case 'not-ours':
      return [`${file} is not a database of Tinewise. ${nothing}`];
    case 'newer-version':
      return [`${file} was written by a newer version of Tinewise: restore it with that version. ${nothing}`];
    case 'damaged':
      return [`${file} is damaged. Take another backup. ${nothing}`];
    case 'dangling-references':
      return [`${file} holds facts that refer to nothing. Take another backup. ${nothing}`];
    case 'present-database-damaged':
      return [
        `The database that stands there now is damaged, so that it must be set aside whole. ${nothing}`,
        'Stop the server, then run this again with --server-stopped.',
      ];
  }
}
