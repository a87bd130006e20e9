import { describe, expect, it } from 'vitest';
import { demoSite } from '../../lib/demo/demo-site.ts';
import { exportList } from '../../lib/import/export-lists.ts';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import { LIST_NAMES, type ListName } from '../../lib/import/lists.ts';
import { mappingSchema } from '../../lib/import/mapping.ts';
import { planImport } from '../../lib/import/plan-import.ts';
import { planImports } from '../../lib/import/plan-imports.ts';
import { readCsv } from '../../lib/import/read-csv.ts';
import type { Site } from '../../lib/model/site.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { makeSite } from '../site-builder.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

function exported(site: Site, list: ListName) {
  const table = readCsv(bytesOf(exportList(site, list)), `${list}.csv`);
  return { list, table, mapping: mappingSchema.parse(guessMapping(list, table).mapping) };
}

/** The site with its name and policy and nothing else. */
function emptied(site: Site): Site {
  const reading = readSite({
    format: site.format,
    version: site.version,
    site: site.site,
    palletTypes: [],
    frameTypes: [],
    aisles: [],
    runs: [],
    trucks: [],
    loads: [],
  });
  if (!reading.ok) throw new Error('the empty site is one');
  return reading.site;
}

const sites: [string, () => Site][] = [
  ['the test site', () => makeSite({ stock: [{ location: 'a1-1-1', load: 'drums' }] })],
  ['the demo depot', demoSite],
];

describe.each(sites)('the lists of %s', (_, build) => {
  const site = readSite(build());
  if (!site.ok) throw new Error('not a site');

  it.each(LIST_NAMES)('%s come back into the same site without a change', (list) => {
    const { table, mapping } = exported(site.site, list);
    const plan = planImport(site.site, list, table, mapping);
    expect({ refused: plan.refused, added: plan.added, changed: plan.changed }).toEqual({
      refused: [],
      added: [],
      changed: [],
    });
    expect(plan.site).toEqual(site.site);
  });

  it('make the very same site from an empty one', () => {
    const lists = LIST_NAMES.map((list) => exported(site.site, list)).reverse();
    const all = planImports(emptied(site.site), lists);
    expect(all.plans.flatMap((plan) => plan.refused)).toEqual([]);
    expect(all.site).toEqual(site.site);
  });
});
