import { ENTRY_LISTS, valueAt } from '@/lib/import/entry-lists.ts';
import type { ListName } from '@/lib/import/lists.ts';
import type { Site } from '@/lib/model/site.ts';

/** How many rows has the export of a list, its header not counted? Without making it. */
export function countRows(site: Site, list: ListName): number {
  if (list === 'locations') return sum(site.runs, ({ bays }) => atLeastOne(sum(bays, rowsOfBay)));
  const { collection, children, creates } = ENTRY_LISTS[list];
  if (children === null) return site[collection].length;
  return sum<unknown>(site[collection], (entry) => {
    const rows = ((valueAt(entry, children.at) ?? []) as readonly unknown[]).length;
    return creates ? atLeastOne(rows) : rows;
  });
}

function rowsOfBay({ levels }: Site['runs'][number]['bays'][number]): number {
  return atLeastOne(sum(levels, ({ locations }) => atLeastOne(locations.length)));
}

/** What has no parts still has a row that says so. */
function atLeastOne(rows: number): number {
  return Math.max(1, rows);
}

function sum<T>(list: readonly T[], of: (entry: T) => number): number {
  return list.reduce((all, entry) => all + of(entry), 0);
}
