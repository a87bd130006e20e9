import { z } from 'zod';
import { CHANGE_KINDS, CHANGE_NOUNS } from '@/lib/model/change.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { schemaRefusals } from '@/lib/model/schema-refusals.ts';
import type { ChangeFilter } from '@/lib/store/change-log.ts';

const text = z.string().max(200);

const asked = z.object({
  who: text.optional(),
  noun: z.enum(CHANGE_NOUNS).optional(),
  kind: z.enum(CHANGE_KINDS).optional(),
  subject: text.optional(),
  find: text.optional(),
  from: z.iso.date().optional(),
  to: z.iso.date().optional(),
  before: z.coerce.number().pipe(z.int().min(1)).optional(),
});

/** Which changes, and older than which: the address of the list. Dates are days in UTC, both included. */
export type ChangesAsk = z.infer<typeof asked>;

/** Reads the list's address. What cannot be read is named in `refused` and counts as not asked. */
export function readChangesAsk(raw: Record<string, string | string[] | undefined>): {
  ask: ChangesAsk;
  refused: readonly Refusal[];
} {
  const given = Object.fromEntries(
    Object.keys(asked.shape)
      .map((key) => [key, [raw[key]].flat()[0]?.trim()] as const)
      .filter(([, value]) => value !== undefined && value !== ''),
  );
  const read = asked.safeParse(given);
  if (read.success) return { ask: read.data, refused: [] };
  const bad = new Set(read.error.issues.map((issue) => String(issue.path[0])));
  const good = Object.fromEntries(Object.entries(given).filter(([key]) => !bad.has(key)));
  return { ask: asked.parse(good), refused: schemaRefusals(given, read.error.issues, () => []) };
}

/** The address of a list like `ask` with some of it changed. */
export function writeChangesAsk(ask: ChangesAsk, change: ChangesAsk = {}): string {
  const out = new URLSearchParams();
  for (const [key, value] of Object.entries({ ...ask, ...change })) {
    if (value !== undefined) out.set(key, String(value));
  }
  return out.toString();
}

const DAY_MS = 86_400_000;

/** What the store is asked: the day `to` is included, so that its end is the limit. */
export function filterOf({ find, from, to, before: _, ...same }: ChangesAsk): ChangeFilter {
  const filter: ChangeFilter = { ...same };
  if (find !== undefined) filter.text = find;
  if (from !== undefined) filter.from = from;
  if (to !== undefined) filter.to = new Date(Date.parse(to) + DAY_MS).toISOString().slice(0, 10);
  return filter;
}
