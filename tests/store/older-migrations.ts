import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A copy of the migrations as an older version had them: the first `count` and no later one. Gives its folder. */
export function migrationsUpTo(count: number, folder: string): string {
  const copy = join(folder, `migrations-${count}`);
  cpSync(fileURLToPath(new URL('../../drizzle', import.meta.url)), copy, { recursive: true });
  const path = join(copy, 'meta/_journal.json');
  const journal = JSON.parse(readFileSync(path, 'utf8'));
  writeFileSync(path, JSON.stringify({ ...journal, entries: journal.entries.slice(0, count) }));
  return copy;
}
