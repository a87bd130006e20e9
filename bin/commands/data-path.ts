import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CommandFault } from './command-fault.ts';

/** The folder with the committed migrations, wherever the command is started. */
export const MIGRATIONS = fileURLToPath(new URL('../../drizzle', import.meta.url));

/** The server's database: `tinewise.db` in the folder TINEWISE_DATA, else in `data` of the checkout. */
export function databasePath(): string {
  const folder = process.env.TINEWISE_DATA || fileURLToPath(new URL('../../data', import.meta.url));
  return join(folder, 'tinewise.db');
}

/** The same where it must exist. */
export function presentDatabasePath(): string {
  const path = databasePath();
  if (existsSync(path)) return path;
  throw new CommandFault(
    `Database: ${JSON.stringify(path)} is not there. Start Tinewise once, or set TINEWISE_DATA to its data folder.`,
  );
}
