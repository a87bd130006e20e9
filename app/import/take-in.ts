import type { AskedImport, ImportAnswer } from '@/app/import/asked-import.ts';
import { neededPermissions } from '@/app/import/needed-permissions.ts';
import { planDigest } from '@/app/import/plan-digest.ts';
import type { Collection } from '@/lib/import/draft.ts';
import { ENTRY_LISTS } from '@/lib/import/entry-lists.ts';
import { headerSignature, type Mapping } from '@/lib/import/mapping.ts';
import { type ListToImport, planImports } from '@/lib/import/plan-imports.ts';
import { readTable } from '@/lib/import/read-table.ts';
import { may, type Role } from '@/lib/model/permissions.ts';
import type { Site } from '@/lib/model/site.ts';
import { importLists, type PlannedLists } from '@/lib/store/import-lists.ts';
import type { Database } from '@/lib/store/open-database.ts';
import type { Actor } from '@/lib/store/rows/policy.ts';
import type { SiteSnapshot } from '@/lib/store/site-snapshot.ts';
import { fileRefusalSentence } from '@/lib/words/import-refusal.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';

/** The asked import with its mappings as the schema reads them: defaults filled in. */
export type ReadImport = Omit<AskedImport, 'files'> & {
  files: (Omit<AskedImport['files'][number], 'mapping'> & { mapping: Mapping })[];
};

type Person = { actor: Actor; role: Role };
type NotTaken = { ok: false; answer: Exclude<ImportAnswer, { state: 'done' }> };

/**
 * Stores an import: the files are read and planned again from their bytes, on the site as it stands in the transaction
 * that writes. Nothing of what the browser worked out is taken over; its digest only says what the person was shown.
 */
export async function takeIn(
  db: Database,
  held: SiteSnapshot | null,
  by: Person,
  asked: ReadImport,
  bytes: readonly Uint8Array[],
): Promise<ImportAnswer> {
  const begun = performance.now();
  const lists: ListToImport[] = [];
  for (const [at, { name, choice, mapping }] of asked.files.entries()) {
    const reading = await readTable(bytes[at]!, name, choice);
    if (!reading.ok) return refused(fileRefusalSentence(name, reading.refusal)).answer;
    lists.push({ list: mapping.list, table: reading.table, mapping });
  }
  const saved = importLists<NotTaken>(db, by.actor, held, (now) => planAgain(now, by.role, asked, lists));
  if (saved.ok) {
    const milliseconds = Math.round(performance.now() - begun);
    return { state: 'done', revision: saved.revision, milliseconds, by: by.actor.who, at: by.actor.at };
  }
  if ('answer' in saved) return saved.answer;
  throw new Error(`the store refuses what was planned on it: ${JSON.stringify(saved).slice(0, 400)}`);
}

function planAgain(
  now: Site,
  role: Role,
  asked: ReadImport,
  files: readonly ListToImport[],
): PlannedLists | NotTaken {
  const { plans, applies, site } = planImports(now, files, { mode: asked.mode });
  if (planDigest(plans) !== asked.digest) return { ok: false, answer: { state: 'differs' } };
  if (!applies) return refused('A row is refused, and all or nothing was asked for. Nothing was stored.');
  const lacking = neededPermissions(plans).find((what) => !may(role, what));
  if (lacking !== undefined) return refused(`${notAllowedSentence(lacking, role)} Nothing was stored.`);
  const lists = new Map<Collection, string[]>();
  for (const { list, table } of files) {
    const collection = list === 'locations' ? 'runs' : ENTRY_LISTS[list].collection;
    lists.set(collection, [...(lists.get(collection) ?? []), table.file]);
  }
  const mappings = files.map(({ list, table, mapping }) => ({
    signature: headerSignature(table.header),
    list,
    mapping,
  }));
  return { ok: true, after: site, lists, mappings };
}

function refused(message: string): NotTaken {
  return { ok: false, answer: { state: 'refused', message } };
}
