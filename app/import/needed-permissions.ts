import { ENTRY_LISTS } from '@/lib/import/entry-lists.ts';
import type { ListName } from '@/lib/import/lists.ts';
import type { ImportPlan } from '@/lib/import/plan-import.ts';
import { type ChangeNoun, NOUN_LISTS } from '@/lib/model/change.ts';
import { CHANGE_PERMISSION, may, type Permission, type Role } from '@/lib/model/permissions.ts';

const CONDITION_FACTS = new Set(['levelCondition', 'frameCondition']);

/** Which permission does a change in this list take? Conditions in the list of locations take their own. */
export function listPermission(list: ListName): Permission {
  return CHANGE_PERMISSION[nounOf(list)];
}

/** May somebody of this role store anything of this list? */
export function mayImport(role: Role, list: ListName): boolean {
  if (!may(role, 'import-lists')) return false;
  return may(role, listPermission(list)) || (list === 'locations' && may(role, 'record-inspection'));
}

/**
 * What must one be allowed to do to store these plans? Nothing where they change nothing. A frame or level that stands
 * already changes its condition only by an inspection, whoever else may change racks.
 */
export function neededPermissions(
  plans: readonly Pick<ImportPlan, 'list' | 'added' | 'changed'>[],
): Permission[] {
  const needed = new Set<Permission>();
  for (const { list, added, changed } of plans) {
    if (list !== 'locations') {
      if (added.length + changed.length > 0) needed.add(listPermission(list));
      continue;
    }
    if (added.length > 0) needed.add('change-racks');
    for (const { fields } of changed) {
      for (const { fact } of fields)
        needed.add(CONDITION_FACTS.has(fact) ? 'record-inspection' : 'change-racks');
    }
  }
  return [...needed];
}

function nounOf(list: ListName): ChangeNoun {
  const collection = list === 'locations' ? 'runs' : ENTRY_LISTS[list].collection;
  if (collection === 'stock') return 'stock';
  if (collection === 'checks') return 'check';
  const nouns = Object.entries(NOUN_LISTS) as [keyof typeof NOUN_LISTS, string][];
  return nouns.find(([, name]) => name === collection)![0];
}
