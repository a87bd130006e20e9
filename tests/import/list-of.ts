import { guessMapping } from '../../lib/import/guess-mapping.ts';
import type { ListName } from '../../lib/import/lists.ts';
import { type Mapping, mappingSchema } from '../../lib/import/mapping.ts';
import { type ImportMode, type ImportPlan, planImport } from '../../lib/import/plan-import.ts';
import { readCsv } from '../../lib/import/read-csv.ts';
import type { Table } from '../../lib/import/table.ts';
import type { Site } from '../../lib/model/site.ts';

/** A list as a file would bring it; its name is list.csv. */
export function tableOf(text: string): Table {
  return readCsv(new TextEncoder().encode(text), 'list.csv');
}

/** The guessed mapping, with anything overridden, taken through JSON as a remembered one is. */
export function mappingOf(list: ListName, table: Table, overrides: Partial<Mapping> = {}): Mapping {
  return mappingSchema.parse(
    JSON.parse(JSON.stringify({ ...guessMapping(list, table).mapping, ...overrides })),
  );
}

export function planOf(
  site: Site,
  list: ListName,
  text: string,
  overrides: Partial<Mapping> = {},
  mode: ImportMode = 'good-rows-only',
): ImportPlan {
  const table = tableOf(text);
  return planImport(site, list, table, mappingOf(list, table, overrides), { mode });
}

/** Row, column and expectation of each refusal, for a table of cases. */
export function refusals(plan: ImportPlan): [number, string | null, string, string][] {
  return plan.refused.map(({ row, column, came, expected }) => [row, column, came, expected.is]);
}
