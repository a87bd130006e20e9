import Papa from 'papaparse';
import type { Site } from '../model/site.ts';
import { guardCell } from './cell-guard.ts';
import { joinTexts } from './cell-list.ts';
import { ENTRY_LISTS, valueAt } from './entry-lists.ts';
import { exportHeader, LIST_FACTS, type ListName } from './lists.ts';
import { rackRecords } from './rack-records.ts';

/**
 * A list of the site as CSV text that the import reads back unchanged: lengths in mm, masses in kg, decimal points, times
 * in UTC, one row a thing. Opens with a byte order mark, so that a spreadsheet takes it for UTF-8. No cell starts a formula.
 */
export function exportList(site: Site, list: ListName): string {
  const facts = LIST_FACTS[list].filter(
    ({ fact }) => (fact !== 'frameType' && fact !== 'frameCondition') || list !== 'locations',
  );
  const records = list === 'locations' ? rackRecords(site) : entryRecords(site, list);
  const rows = records.map((record) => facts.map(({ fact }) => exportCell(record[fact])));
  return csvText([facts.map(exportHeader), ...rows]);
}

/** Rows of cells as CSV text with a byte order mark; the cells must be guarded already. */
export function csvText(rows: readonly (readonly string[])[], delimiter = ','): string {
  return `\ufeff${Papa.unparse(rows as string[][], { delimiter, newline: '\r\n' })}\r\n`;
}

function exportCell(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return guardCell(Array.isArray(value) ? joinTexts(value) : String(value));
}

type ExportRecord = Record<string, unknown>;

function entryRecords(site: Site, list: Exclude<ListName, 'locations'>): ExportRecord[] {
  const shape = ENTRY_LISTS[list];
  const paths = new Map(shape.key.map(({ fact, path }) => [fact, path]));
  const childFacts = new Set(shape.children?.facts ?? []);
  const own = LIST_FACTS[list].map(({ fact }) => fact).filter((fact) => !childFacts.has(fact));
  return (site[shape.collection] as readonly unknown[]).flatMap((entry) => {
    const record: ExportRecord = {};
    for (const fact of own) record[fact] = valueAt(entry, paths.get(fact) ?? fact);
    if (shape.children === null) return [record];
    const children = (valueAt(entry, shape.children.at) ?? []) as ExportRecord[];
    if (children.length > 0) return children.map((child) => ({ ...record, ...child }));
    // An entry that only this list knows still needs its row.
    return shape.creates ? [record] : [];
  });
}
