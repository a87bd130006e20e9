import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answerGrid } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import type { CompiledSite } from '../../lib/grid/compiled-site.ts';
import { renewSite } from '../../lib/grid/renew-site.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { type Drawn, drawChange } from '../store/draw-change.ts';
import { drawContext, drawSite } from './arbitrary-site.ts';

const SEED = 20260304;

it('answers from columns put right after random changes as from columns compiled anew', () => {
  const seen = new Set<Drawn>();
  const db = openDatabase(':memory:');
  fc.assert(
    fc.property(fc.gen(), (g) => {
      importSite(db, drawSite(g), { who: 'x', at: '2026-03-02' });
      let held = renewSnapshot(db, null)!;
      let columns = compileSite(held.index);
      for (let n = 0; n < 6; n += 1) {
        const { drawn, saved } = drawChange(g, db, held.site, n);
        if (saved.ok && saved.revision > held.revision) seen.add(drawn);
        held = renewSnapshot(db, held)!;
        columns = renewSite(columns, held.index);
        const context = drawContext(g, held.site);
        const answer = (site: CompiledSite) =>
          answerGrid(site, {
            load: { kind: 'stored' },
            trucks: held.site.trucks.map(({ id }) => id),
            context,
          });
        expect(answer(columns), drawn).toEqual(answer(compileSite(held.index)));
      }
    }),
    { seed: SEED, numRuns: 40 },
  );
  closeDatabase(db);
  for (const drawn of ['moved', 'stock', 'taken', 'load', 'truck', 'new-load', 'run', 'policy'] as const) {
    expect(seen, drawn).toContain(drawn);
  }
});
