import type { Site } from '../model/site.ts';
import { LIST_NAMES, type ListName } from './lists.ts';
import type { Mapping } from './mapping.ts';
import { type ImportPlan, type PlanOptions, planImport } from './plan-import.ts';
import type { Table } from './table.ts';

export type ListToImport = { list: ListName; table: Table; mapping: Mapping };

/**
 * The dry run of several lists at once, in the order in which they lean on one another whatever order they came in:
 * each is planned on the site as the ones before it would leave it. Of all or nothing, nothing applies once one list
 * has a refused row.
 */
export function planImports(
  site: Site,
  lists: readonly ListToImport[],
  options: PlanOptions = {},
): { plans: ImportPlan[]; applies: boolean; site: Site } {
  const ordered = [...lists].sort((a, b) => LIST_NAMES.indexOf(a.list) - LIST_NAMES.indexOf(b.list));
  const plans: ImportPlan[] = [];
  let now = site;
  for (const { list, table, mapping } of ordered) {
    const plan = planImport(now, list, table, mapping, options);
    plans.push(plan);
    now = plan.site;
  }
  const applies = plans.every((plan) => plan.applies);
  return { plans, applies, site: applies ? now : site };
}
