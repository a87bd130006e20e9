import { statSync } from 'node:fs';
import { FileTaken, writeBackup } from '../../lib/store/backup.ts';
import { DatabaseRefused } from '../../lib/store/migrate-database.ts';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision } from '../../lib/store/read-site.ts';
import { unavailability } from '../../lib/store/transaction.ts';
import { unavailableSentence } from '../../lib/words/change.ts';
import { CommandFault } from './command-fault.ts';
import { MIGRATIONS, presentDatabasePath } from './data-path.ts';
import { readArguments } from './read-arguments.ts';
import { standardOutput } from './standard-output.ts';

const HELP = `tinewise backup FILE [--force]

Writes the whole database to one file: site, change log, people. The server may run and be worked with meanwhile.
The file gets its name only when it is whole and on the disk.

  --force    write over a file that is there

The database is tinewise.db in the folder TINEWISE_DATA, else in data.
`;

/** Copies the database to a file while it is in use. */
export async function backup(args: readonly string[]): Promise<void> {
  const typed = readArguments(args, { force: { type: 'boolean' }, help: { type: 'boolean' } });
  const output = standardOutput();
  await output.write(
    typed.switches.has('help') ? HELP : copy(typed.positionals, typed.switches.has('force')),
  );
  await output.end();
}

function copy([path, ...more]: readonly string[], overwrite: boolean): string {
  if (path === undefined) throw new CommandFault('Backup file: nothing came, a path was expected.');
  if (more.length > 0)
    throw new CommandFault(`Argument: ${JSON.stringify(more[0])} came, one file was expected.`);
  try {
    const db = openDatabase(presentDatabasePath(), MIGRATIONS);
    try {
      writeBackup(db, path, { overwrite });
      const size = (statSync(path).size / (1024 * 1024)).toFixed(1);
      return `Backed up to ${path}: revision ${readRevision(db)}, ${size} MB.\n`;
    } finally {
      closeDatabase(db);
    }
  } catch (error) {
    throw backupFault(error, path);
  }
}

function backupFault(error: unknown, path: string): unknown {
  if (error instanceof FileTaken) {
    return new CommandFault(
      `Backup file: ${JSON.stringify(path)} is there already. Give another name, or --force to write over it.`,
    );
  }
  if (error instanceof DatabaseRefused) return new CommandFault(error.message);
  const reason = unavailability(error);
  if (reason !== null) return new CommandFault(unavailableSentence(reason));
  const code = (error as NodeJS.ErrnoException).code;
  if (typeof code === 'string' && /^E[A-Z]+$/.test(code)) {
    return new CommandFault(
      `Backup file: ${JSON.stringify(path)} came, a place that can be written to was expected (${(error as Error).message}).`,
    );
  }
  return error;
}
