'use server';

import { revalidatePath } from 'next/cache';
import { type EntryOutcome, malformed, outcomeOf } from '@/app/_entry/entry-outcome.ts';
import { readEntry, readHeader, unlessUnavailable } from '@/app/_entry/read-form.ts';
import { requireActor } from '@/app/_parts/require-permission.ts';
import { standingPlaces } from '@/app/_parts/standing-places.ts';
import { saveLoadForm } from '@/lib/store/save-form.ts';
import { removeLoad } from '@/lib/store/save-site.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';

/** Adds or changes a load. What the browser judged is judged again. */
export async function saveLoadEntry(_before: EntryOutcome | null, sent: FormData): Promise<EntryOutcome> {
  const actor = await requireActor('change-loads');
  const header = readHeader(sent);
  if (header === null) return malformed(sent);
  const palletTypes = (await siteSnapshot())?.site.palletTypes ?? [];
  const read = readEntry('loads', header.form.get('load'), { palletTypes });
  if (!read.ok) return read.outcome;
  const { basedOn, isNew } = header;
  return unlessUnavailable(() => {
    const saved = saveLoadForm(serverDatabase(), { isNew, load: read.entry }, actor, basedOn);
    if (saved.ok) revalidatePath('/', 'layout');
    return outcomeOf(saved, read.entry.id);
  });
}

/** Takes a load out of the site; while it stands somewhere the answer names the places. */
export async function deleteLoadEntry(_before: EntryOutcome | null, sent: FormData): Promise<EntryOutcome> {
  const actor = await requireActor('change-loads');
  const header = readHeader(sent);
  const id = header?.form.get('id');
  if (!header || typeof id !== 'string') return malformed(sent);
  const outcome = unlessUnavailable(() => {
    const removed = removeLoad(serverDatabase(), id, actor, header.basedOn);
    if (removed.ok) revalidatePath('/', 'layout');
    return outcomeOf(removed, id);
  });
  if (outcome.state !== 'refused') return outcome;
  const snapshot = await siteSnapshot();
  const places = snapshot === null ? [] : (standingPlaces(snapshot.index).get(id) ?? []);
  return places.length === 0 ? outcome : { state: 'needed', places: [...places] };
}
