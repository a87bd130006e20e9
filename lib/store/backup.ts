import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { backUpDatabase, type Database } from './open-database.ts';

/** A file that is there already and was not to be written over. */
export class FileTaken extends Error {
  readonly path: string;

  constructor(path: string) {
    super(`there is a file ${path} already`);
    this.name = 'FileTaken';
    this.path = path;
  }
}

/**
 * Writes a whole, consistent copy of the database to a file while others go on using it: under another name first, on
 * the disk before it gets its own. A copy that is broken off leaves no file of that name, or the one that was there.
 */
export function writeBackup(db: Database, path: string, { overwrite }: { overwrite: boolean }): void {
  if (!overwrite && existsSync(path)) throw new FileTaken(path);
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  rmSync(temporary, { force: true });
  try {
    backUpDatabase(db, temporary);
    syncFile(temporary);
    renameSync(temporary, path);
    syncFile(dirname(path));
  } finally {
    rmSync(temporary, { force: true });
  }
}

/** Waits until a file, or the names in a folder, are on the disk. */
export function syncFile(path: string): void {
  const isFolder = process.platform === 'win32' && path === dirname(join(path, 'x'));
  if (isFolder) return; // there a folder cannot be opened, and a rename is written through
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
