'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { requireActor, requirePermission } from '@/app/_parts/require-permission.ts';
import { CHANGE_PERMISSION } from '@/lib/model/permissions.ts';
import { readBatch, readChange } from '@/lib/store/change-log.ts';
import { revertChange } from '@/lib/store/revert-change.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { StoreUnavailable } from '@/lib/store/transaction.ts';

/**
 * Undoes a change and whatever was made together with it, then shows the undoing; where it cannot be undone (any
 * longer) the change's own page says why. Takes the permission that making such a change takes.
 */
export async function undoChange(form: FormData): Promise<void> {
  await requirePermission('read');
  const db = serverDatabase();
  const id = Number(form.get('change'));
  const change = Number.isSafeInteger(id) ? readChange(db, id) : null;
  if (change === null) redirect('/changes');
  for (const { noun } of readBatch(db, change.batch)) await requirePermission(CHANGE_PERMISSION[noun]);
  const actor = await requireActor(CHANGE_PERMISSION[change.noun]);
  redirect(undo());

  function undo(): string {
    try {
      const outcome = revertChange(db, id, actor);
      if (!outcome.ok) return `/changes/${id}`;
      revalidatePath('/', 'layout');
      return `/changes/${outcome.revision}`;
    } catch (error) {
      if (error instanceof StoreUnavailable) return `/changes/${id}?failed=${error.reason}`;
      throw error;
    }
  }
}
