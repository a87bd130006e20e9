'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { requireActor, requirePermission } from '@/app/_parts/require-permission.ts';
import type { Conflict } from '@/lib/model/change.ts';
import { may, type Permission } from '@/lib/model/permissions.ts';
import { id } from '@/lib/model/quantities.ts';
import { type Run, runSchema } from '@/lib/model/racking.ts';
import { cameAs, type Refusal } from '@/lib/model/refusal.ts';
import { whatChanges } from '@/lib/rack-shape/what-changes.ts';
import { readBatch, readChange } from '@/lib/store/change-log.ts';
import type { Saved } from '@/lib/store/change-site.ts';
import { revertChange } from '@/lib/store/revert-change.ts';
import { removeRunShape, replaceRun } from '@/lib/store/save-run-shape.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';

export type ShapeOutcome =
  | { state: 'saved'; revision: number }
  | { state: 'refused'; refusals: Refusal[] }
  | { state: 'conflict'; conflict: Conflict }
  | { state: 'not-allowed'; why: string };

const revisionSchema = z.int().min(0);
const pallets = z.array(z.strictObject({ location: id, load: id }));
const place = z.int().min(0).nullable();
const saveSchema = z.strictObject({
  basedOn: revisionSchema,
  replaces: id.nullable(),
  run: runSchema,
  renamed: z.array(z.strictObject({ from: id, to: id })),
  takeOut: pallets,
  links: z.strictObject({ bays: z.array(place), frames: z.array(place) }),
});
export type SaveAsked = z.infer<typeof saveSchema>;

/** Puts a run, new or changed, into the site, its stock along with new ids. A conflict is handed back to be decided. */
export async function saveRunShape(asked: SaveAsked): Promise<ShapeOutcome> {
  await requirePermission('read');
  const read = saveSchema.safeParse(asked);
  if (!read.success) return { state: 'refused', refusals: malformed(asked) };
  const { basedOn, links, ...shape } = read.data;
  const saved = (await siteSnapshot())?.site.runs.find((run) => run.id === shape.replaces) ?? null;
  const refused = await refusedTo(permissionsFor(saved, shape.run, links));
  if (refused !== null) return refused;
  const actor = await requireActor('read');
  return told(replaceRun(serverDatabase(), shape, actor, basedOn));
}

/** Takes a run out of the site, with the pallets that were named. */
export async function deleteRunShape(
  runId: string,
  takeOut: SaveAsked['takeOut'],
  basedOn: number,
): Promise<ShapeOutcome> {
  const actor = await requireActor('change-racks');
  const read = z.strictObject({ runId: id, takeOut: pallets, basedOn: revisionSchema }).safeParse({
    runId,
    takeOut,
    basedOn,
  });
  if (!read.success) return { state: 'refused', refusals: malformed(runId) };
  return told(removeRunShape(serverDatabase(), read.data.runId, read.data.takeOut, actor, read.data.basedOn));
}

/** Undoes a change of a run, with all that was changed together with it; `revision` is the one that the save gave. */
export async function undoRunShape(revision: number): Promise<ShapeOutcome> {
  await requirePermission('read');
  const db = serverDatabase();
  const change = revisionSchema.safeParse(revision).success ? readChange(db, revision) : null;
  const batch = change === null ? [] : readBatch(db, change.batch);
  const runs = batch.filter(({ noun }) => noun === 'run');
  if (runs.length === 0 || batch.some(({ noun }) => noun !== 'run' && noun !== 'stock'))
    return { state: 'refused', refusals: malformed(revision) };
  const [first, last] = [runs[0]!, runs.at(-1)!];
  const needed =
    runs.length === 1 && first.before !== null && last.after !== null
      ? permissionsFor(last.after as Run, first.before as Run, likeLinks(first.before as Run))
      : (['change-racks'] as const);
  const refused = await refusedTo(needed);
  if (refused !== null) return refused;
  const actor = await requireActor('read');
  const reverted = revertChange(db, revision, actor);
  if (reverted.cannot !== undefined) return { state: 'refused', refusals: malformed(revision) };
  return told(reverted);
}

/** Marks are for those who inspect, the racking itself for those who plan it. */
function permissionsFor(saved: Run | null, run: Run, links: SaveAsked['links']): Permission[] {
  const { steel, conditions } = whatChanges(saved, run, links);
  return [
    ...(steel || !conditions ? (['change-racks'] as const) : []),
    ...(conditions ? (['record-inspection'] as const) : []),
  ];
}

function likeLinks(run: Run): SaveAsked['links'] {
  return { bays: run.bays.map((_, at) => at), frames: run.frames.map((_, at) => at) };
}

async function refusedTo(needed: readonly Permission[]): Promise<ShapeOutcome | null> {
  const { role } = await requirePermission('read');
  const lacking = needed.filter((what) => !may(role, what));
  if (lacking.length === 0) return null;
  return { state: 'not-allowed', why: lacking.map((what) => notAllowedSentence(what, role)).join(' ') };
}

function told(saved: Saved): ShapeOutcome {
  if (!saved.ok)
    return saved.conflict === undefined
      ? { state: 'refused', refusals: saved.refusals.slice(0, 20) }
      : { state: 'conflict', conflict: saved.conflict };
  revalidatePath('/', 'layout');
  return { state: 'saved', revision: saved.revision };
}

/** What no form of ours sends. */
function malformed(came: unknown): Refusal[] {
  return [{ path: '$', came: cameAs(came), expected: { is: 'text', rule: 'a change of a run' } }];
}
