import { policyInForce } from '../model/policy.ts';
import { SITE_FORMAT, SITE_VERSION, type Site } from '../model/site.ts';
import { AISLE_SPECS } from './aisle-specs.ts';
import { DEMO_PALLET_TYPES, demoLoads } from './demo-loads.ts';
import { DEMO_OPERATORS } from './demo-operators.ts';
import { DEMO_DOCKS, DEMO_FRAME_TYPES, demoRuns } from './demo-racking.ts';
import { demoStock } from './demo-stock.ts';
import { DEMO_CHECKS, DEMO_TRUCKS } from './demo-trucks.ts';
import { markRacking, troubledStock } from './make-trouble.ts';
import { seededChoice } from './seeded-choice.ts';

/** A time at which the walk-rounds of the demo are fresh: the shift of its last day has begun. */
export const DEMO_AS_OF = '2026-09-14T06:40:00Z';

/** An operator of the demo who may drive every kind of truck at DEMO_AS_OF. */
export const DEMO_OPERATOR = 'OPR-1';

const SEED = 20_260_914;
const STOCK_ROWS = 2000;

/**
 * The demo: a depot for tile, stone and sanitaryware on a quay, mostly in order, with the trouble of trouble.ts in it.
 * The same facts on every call, in a copy that the caller may change.
 */
export function demoSite(): Site {
  const choose = seededChoice(SEED);
  const aisles = structuredClone(AISLE_SPECS.map((spec) => spec.aisle));
  const runs = demoRuns();
  markRacking({ aisles, runs });
  const palletTypes = structuredClone([...DEMO_PALLET_TYPES]);
  const loads = structuredClone(demoLoads(choose));
  const given = troubledStock(runs);
  const policy = policyInForce({});
  const stock = demoStock({ runs, loads, palletTypes, policy, given, count: STOCK_ROWS }, choose);
  return {
    format: SITE_FORMAT,
    version: SITE_VERSION,
    site: { name: 'Tamblewick Quay Depot', policy: {} },
    palletTypes,
    frameTypes: structuredClone([...DEMO_FRAME_TYPES]),
    aisles,
    runs,
    docks: structuredClone([...DEMO_DOCKS]),
    trucks: structuredClone([...DEMO_TRUCKS]),
    operators: structuredClone([...DEMO_OPERATORS]),
    loads,
    stock,
    checks: structuredClone([...DEMO_CHECKS]),
  };
}
