import { LIST_NAMES, type ListName } from '@/lib/import/lists.ts';

/** What can be had: the site file, the CSV of one list, or all of those in one zip file. */
export type Exported = { what: 'site' } | { what: 'all' } | { what: 'list'; list: ListName };

/** What the last part of an address asks for: site.json, lists.zip, stock.csv; null for anything else. */
export function exportedOf(part: string): Exported | null {
  if (part === 'site.json') return { what: 'site' };
  if (part === 'lists.zip') return { what: 'all' };
  const list = LIST_NAMES.find((name) => part === `${name}.csv`);
  return list === undefined ? null : { what: 'list', list };
}

/** "Harbour-store-2026-03-02-stock.csv": what a reader's disk can hold whatever the site is called. */
export function fileName(siteName: string, at: Date, part: string): string {
  const name = siteName
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${name === '' ? 'site' : name}-${at.toISOString().slice(0, 10)}-${part}`;
}
