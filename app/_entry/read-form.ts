import 'server-only';
import { z } from 'zod';
import type { EntryOutcome } from '@/app/_entry/entry-outcome.ts';
import type { Site } from '@/lib/model/site.ts';
import { blankSite } from '@/lib/model/site.ts';
import { readSite } from '@/lib/model/site-file.ts';
import { StoreUnavailable } from '@/lib/store/transaction.ts';

const header = z.object({ basedOn: z.coerce.number().int().min(0), isNew: z.enum(['yes', 'no']) });

/** The revision that the form was opened at, and whether it is for a new fact; null for a form that is not ours. */
export function readHeader(form: unknown): { basedOn: number; isNew: boolean; form: FormData } | null {
  if (!(form instanceof FormData)) return null;
  const read = header.safeParse({ basedOn: form.get('basedOn'), isNew: form.get('isNew') });
  return read.success ? { basedOn: read.data.basedOn, isNew: read.data.isNew === 'yes', form } : null;
}

/** The one entry of a list that a form sends as JSON, judged as in a site file; `beside`: what it may refer to. */
export function readEntry<List extends 'trucks' | 'loads'>(
  list: List,
  text: FormDataEntryValue | null,
  beside: Partial<Site> = {},
): { ok: true; entry: Site[List][number] } | { ok: false; outcome: EntryOutcome } {
  const raw = parsed(text);
  const reading = readSite({ ...blankSite('one fact'), ...beside, [list]: [raw] });
  if (reading.ok) return { ok: true, entry: reading.site[list][0]! };
  return { ok: false, outcome: { state: 'refused', refusals: reading.refusals.slice(0, 40) } };
}

/** A disk that is full is an answer too. */
export function unlessUnavailable(save: () => EntryOutcome): EntryOutcome {
  try {
    return save();
  } catch (error) {
    if (error instanceof StoreUnavailable) return { state: 'unavailable', reason: error.reason };
    throw error;
  }
}

function parsed(text: FormDataEntryValue | null): unknown {
  try {
    return typeof text === 'string' ? JSON.parse(text) : undefined;
  } catch {
    return undefined;
  }
}
