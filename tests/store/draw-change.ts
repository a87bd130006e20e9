import type { GeneratorValue } from 'fast-check';
import type { Site } from '../../lib/model/site.ts';
import type { Saved } from '../../lib/store/change-site.ts';
import type { Database } from '../../lib/store/open-database.ts';
import { savePolicy, saveSiteName } from '../../lib/store/save-policy.ts';
import * as save from '../../lib/store/save-site.ts';
import { addCheck, moveStockRow, removeStockRow, saveStockRow } from '../../lib/store/save-stock.ts';
import { pick } from '../properties/arbitrary-site.ts';
import { makeLoad, makeTruck } from '../site-builder.ts';

const ACTOR = { who: 'Somebody', at: '2026-03-02T08:00:00Z' };
const CONDITIONS = ['sound', 'amber', 'red'] as const;

/** What changes of every kind are drawn from. `check` is the one that is never undone. */
export const DRAWN = [
  'truck',
  'new-truck',
  'lost-truck',
  'load',
  'new-load',
  'lost-load',
  'run',
  'rebuilt-run',
  'operator',
  'dock',
  'policy',
  'name',
  'stock',
  'moved',
  'taken',
  'check',
] as const;
export type Drawn = (typeof DRAWN)[number];

/** Makes one change of a random kind in a site that stands in the database; it may be refused, or be none. */
export function drawChange(
  g: GeneratorValue,
  db: Database,
  site: Site,
  n: number,
): { drawn: Drawn; saved: Saved } {
  const drawn = pick(g, DRAWN);
  const locations = site.runs.flatMap((run) =>
    run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)),
  );
  const stocked = site.stock.map(({ location }) => location);
  const location = pick(g, locations.length > 0 ? locations : ['nowhere']);
  const stands = pick(g, stocked.length > 0 ? stocked : ['nowhere']);
  const truck = pick(g, site.trucks.length > 0 ? site.trucks : [makeTruck()]);
  const load = pick(g, site.loads.length > 0 ? site.loads : [makeLoad()]);
  const run = pick(g, site.runs);
  const act: Record<Drawn, () => Saved> = {
    truck: () =>
      save.saveTruck(db, { ...truck, hold: { since: '2026-03-02', reason: `Reason ${n}` } }, ACTOR),
    'new-truck': () => save.saveTruck(db, makeTruck({ id: `new-truck-${n}` }), ACTOR),
    'lost-truck': () => save.removeTruck(db, truck.id, ACTOR),
    load: () => save.saveLoad(db, { ...load, grossKg: 100 + n }, ACTOR),
    'new-load': () => save.saveLoad(db, makeLoad({ id: `new-load-${n}`, palletType: null }), ACTOR),
    'lost-load': () => save.removeLoad(db, load.id, ACTOR),
    run: () =>
      save.saveRun(
        db,
        { ...run, frames: run.frames.map((f) => ({ ...f, condition: pick(g, CONDITIONS) })) },
        ACTOR,
      ),
    'rebuilt-run': () =>
      save.saveRun(db, { ...run, frames: run.frames.slice(0, -1), bays: run.bays.slice(0, -1) }, ACTOR),
    operator: () =>
      save.saveOperator(db, { id: `op-${n}`, name: `Operator ${n}`, authorisations: [] }, ACTOR),
    dock: () => save.saveDock(db, { id: `dock-${n % 3}`, xMm: n, yMm: n }, ACTOR),
    policy: () => savePolicy(db, { ...site.site.policy, thinPercent: n % 50, handlingS: n }, ACTOR),
    name: () => saveSiteName(db, `Store ${n}`, ACTOR),
    stock: () => saveStockRow(db, { location, load: load.id }, ACTOR),
    moved: () => moveStockRow(db, stands, location, ACTOR),
    taken: () => removeStockRow(db, stands, ACTOR),
    check: () =>
      addCheck(
        db,
        { truck: truck.id, at: '2026-03-02T08:00:00Z', by: 'x', result: 'pass', defects: [`${n}`] },
        ACTOR,
      ),
  };
  return { drawn, saved: act[drawn]() };
}
