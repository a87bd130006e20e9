import { z } from 'zod';
import { loadSchema, palletTypeSchema } from './load.ts';
import { sitePolicySchema } from './policy.ts';
import { id, words } from './quantities.ts';
import { aisleSchema, dockSchema, frameTypeSchema, runSchema } from './racking.ts';
import { checkSchema, operatorSchema, truckSchema } from './truck.ts';

export const SITE_FORMAT = 'tinewise-site';
export const SITE_VERSION = 1;

/** A pallet that stands: one unit load may stand in many locations, a location holds one. */
export const stockSchema = z.strictObject({ location: id, load: id });
export type StockRow = z.infer<typeof stockSchema>;

/** A whole site as facts: what the site file holds, what the store keeps, what every question is asked of. */
export const siteSchema = z.strictObject({
  format: z.literal(SITE_FORMAT),
  version: z.literal(SITE_VERSION),
  site: z.strictObject({ name: words, policy: sitePolicySchema.default({}) }),
  palletTypes: z.array(palletTypeSchema),
  frameTypes: z.array(frameTypeSchema),
  aisles: z.array(aisleSchema),
  runs: z.array(runSchema),
  docks: z.array(dockSchema).default([]),
  trucks: z.array(truckSchema),
  operators: z.array(operatorSchema).default([]),
  loads: z.array(loadSchema),
  stock: z.array(stockSchema).default([]),
  checks: z.array(checkSchema).default([]),
});
export type Site = z.infer<typeof siteSchema>;

/** A site with a name and a policy and nothing in it yet. */
export function blankSite(name: string, policy: Site['site']['policy'] = {}): Site {
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    site: { name, policy },
    palletTypes: [],
    frameTypes: [],
    aisles: [],
    runs: [],
    docks: [],
    trucks: [],
    operators: [],
    loads: [],
    stock: [],
    checks: [],
  };
}
