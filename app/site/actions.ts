'use server';

import { revalidatePath } from 'next/cache';
import { requireActor } from '@/app/_parts/require-permission.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { readSiteText } from '@/lib/model/site-file.ts';
import { importSite } from '@/lib/store/import-site.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

export type ImportState =
  | { state: 'none' }
  | { state: 'incomplete' }
  | { state: 'refused'; fileName: string; count: number; refusals: readonly Refusal[] }
  | { state: 'done'; fileName: string; siteName: string; revision: number };

const REFUSALS_SHOWN = 200;

/** Reads in a site file: the whole site in one transaction, or the list of what is wrong with it and no change at all. */
export async function importSiteFile(_before: ImportState, form: FormData): Promise<ImportState> {
  const actor = await requireActor('import-site');
  const file = form.get('file');
  if (!(file instanceof File) || file.size === 0) return { state: 'incomplete' };
  const reading = readSiteText(await file.text());
  if (!reading.ok) {
    const { refusals } = reading;
    return {
      state: 'refused',
      fileName: file.name,
      count: refusals.length,
      refusals: refusals.slice(0, REFUSALS_SHOWN),
    };
  }
  const revision = importSite(serverDatabase(), reading.site, actor);
  revalidatePath('/', 'layout');
  return { state: 'done', fileName: file.name, siteName: reading.site.site.name, revision };
}
