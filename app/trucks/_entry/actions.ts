'use server';

import { revalidatePath } from 'next/cache';
import { type EntryOutcome, malformed, outcomeOf } from '@/app/_entry/entry-outcome.ts';
import { readEntry, readHeader, unlessUnavailable } from '@/app/_entry/read-form.ts';
import { requireActor } from '@/app/_parts/require-permission.ts';
import { acceptPhoto } from '@/lib/photo/accept-photo.ts';
import { MOST_PHOTO_BYTES } from '@/lib/photo/photo.ts';
import { type PhotoChange, saveTruckForm } from '@/lib/store/save-form.ts';
import { removeTruck } from '@/lib/store/save-site.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

/** Adds or changes a truck with the photo of its plate. What the browser judged is judged again. */
export async function saveTruckEntry(_before: EntryOutcome | null, sent: FormData): Promise<EntryOutcome> {
  const actor = await requireActor('change-trucks');
  const header = readHeader(sent);
  if (header === null) return malformed(sent);
  const read = readEntry('trucks', header.form.get('truck'));
  if (!read.ok) return read.outcome;
  const photo = await readPhotoChange(header.form);
  if ('state' in photo) return photo;
  const { basedOn, isNew } = header;
  return unlessUnavailable(() => {
    const saved = saveTruckForm(serverDatabase(), { isNew, truck: read.entry, photo }, actor, basedOn);
    if (saved.ok) revalidatePath('/', 'layout');
    return outcomeOf(saved, read.entry.id);
  });
}

/** Takes a truck out of the site, its checks with it. */
export async function deleteTruckEntry(_before: EntryOutcome | null, sent: FormData): Promise<EntryOutcome> {
  const actor = await requireActor('change-trucks');
  const header = readHeader(sent);
  const id = header?.form.get('id');
  if (!header || typeof id !== 'string') return malformed(sent);
  return unlessUnavailable(() => {
    const removed = removeTruck(serverDatabase(), id, actor, header.basedOn);
    if (removed.ok) revalidatePath('/', 'layout');
    return outcomeOf(removed, id);
  });
}

async function readPhotoChange(form: FormData): Promise<PhotoChange | EntryOutcome> {
  const kind = form.get('photo');
  if (kind === 'drop') return { kind: 'drop' };
  if (kind !== 'put') return { kind: 'keep' };
  const file = form.get('file');
  if (!(file instanceof File)) return malformed(file);
  if (file.size > MOST_PHOTO_BYTES)
    return { state: 'photo-refused', why: { is: 'too-large', bytes: file.size, most: MOST_PHOTO_BYTES } };
  const reading = acceptPhoto(new Uint8Array(await file.arrayBuffer()));
  return reading.ok ? { kind: 'put', photo: reading.photo } : { state: 'photo-refused', why: reading.why };
}
