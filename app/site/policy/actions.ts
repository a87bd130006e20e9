'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { type EntryOutcome, malformed, outcomeOf } from '@/app/_entry/entry-outcome.ts';
import { unlessUnavailable } from '@/app/_entry/read-form.ts';
import { requireActor } from '@/app/_parts/require-permission.ts';
import { changedPolicy, type PolicyChange } from '@/lib/entry/policy-draft.ts';
import { savePolicy } from '@/lib/store/save-policy.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';

const asked = z.object({
  basedOn: z.coerce.number().int().min(0),
  change: z.string().transform((text, context): unknown => {
    try {
      return JSON.parse(text);
    } catch {
      context.addIssue('not JSON');
      return z.NEVER;
    }
  }),
});

/** Sets the values that a form changes; the others stay as they stand, whoever set them. lib/model judges the whole. */
export async function saveChangedPolicy(_before: EntryOutcome | null, form: FormData): Promise<EntryOutcome> {
  const actor = await requireActor('set-policy');
  const snapshot = await siteSnapshot();
  const read =
    form instanceof FormData
      ? asked.safeParse({ basedOn: form.get('basedOn'), change: form.get('change') })
      : null;
  if (snapshot === null || !read?.success || !isRecord(read.data.change)) return malformed('a form');
  const { basedOn, change } = read.data;
  const policy = changedPolicy(snapshot.site.site.policy, change as PolicyChange);
  const outcome = unlessUnavailable(() =>
    outcomeOf(savePolicy(serverDatabase(), policy, actor, basedOn), 'policy'),
  );
  if (outcome.state === 'saved') revalidatePath('/', 'layout');
  return outcome;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
