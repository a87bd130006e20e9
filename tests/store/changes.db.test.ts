import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { indexSite } from '../../lib/model/site-index.ts';
import { lastChangeOf, readAuthors, readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { readKeptSite, SITES_KEPT } from '../../lib/store/kept-sites.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { revertChange, tryRevert } from '../../lib/store/revert-change.ts';
import { savePolicy, saveSiteName } from '../../lib/store/save-policy.ts';
import * as save from '../../lib/store/save-site.ts';
import { addCheck, moveStockRow, removeStockRow, saveStockRow } from '../../lib/store/save-stock.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { drawSite } from '../properties/arbitrary-site.ts';
import { makeSite, makeTruck } from '../site-builder.ts';
import { DRAWN, type Drawn, drawChange } from './draw-change.ts';

const PLANNER = { who: 'A planner', at: '2026-03-02T06:30:00Z' };
const LEAD = { who: 'A shift lead', at: '2026-03-02T07:00:00Z' };
const SEED = 20260302;

const stocked = makeSite({
  stock: [
    { location: 'a2-1-1', load: 'crates' },
    { location: 'a1-1-1', load: 'drums' },
  ],
});
const [reach, counter] = stocked.trucks as [(typeof stocked.trucks)[0], (typeof stocked.trucks)[0]];
const heldBy = (reason: string) => ({ ...reach, hold: { since: '2026-03-02', reason } });

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
  importSite(db, stocked, PLANNER);
});
afterEach(() => closeDatabase(db));

describe('two people who edit the same truck', () => {
  it('do not overwrite each other: the second is told who was first, what stands now and what was read', () => {
    expect(save.saveTruck(db, heldBy('Chain'), PLANNER, 1)).toEqual({ ok: true, revision: 2 });
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 1)).toEqual({
      ok: false,
      refusals: [],
      conflict: {
        noun: 'truck',
        subject: 'reach-1',
        since: 1,
        by: PLANNER.who,
        at: PLANNER.at,
        kind: 'save',
        base: { known: true, fact: reach },
        theirs: heldBy('Chain'),
        revision: 2,
      },
    });
    expect(readSite(db)?.trucks[0]).toEqual(heldBy('Chain'));
    expect(readRevision(db)).toBe(2);
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 2)).toEqual({ ok: true, revision: 3 });
  });

  it('and one removes it: the other learns that it is gone, and the other way round', () => {
    save.removeTruck(db, 'reach-1', PLANNER, 1);
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 1)).toMatchObject({
      conflict: { kind: 'remove', theirs: null, base: { known: true } },
    });
    save.saveTruck(db, { ...counter, name: 'Other name' }, PLANNER, 2);
    expect(save.removeTruck(db, 'counter-1', LEAD, 1)).toMatchObject({
      ok: false,
      conflict: { kind: 'save' },
    });
    expect(readSite(db)?.trucks.map(({ id }) => id)).toEqual(['counter-1']);
  });

  it('and agree to the letter: nothing is left to store', () => {
    save.saveTruck(db, heldBy('Chain'), PLANNER, 1);
    expect(save.saveTruck(db, heldBy('Chain'), LEAD, 1)).toEqual({ ok: true, revision: 2 });
  });

  it('is nobody’s conflict when something else was changed meanwhile', () => {
    save.saveTruck(db, { ...counter, name: 'Other name' }, PLANNER, 1);
    saveStockRow(db, { location: 'a1-0-1', load: 'crates' }, PLANNER, 1);
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 1).ok).toBe(true);
  });

  it('while the whole site is read in anew: what was read then is not known to the log', () => {
    importSite(db, stocked, PLANNER);
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 1)).toMatchObject({
      conflict: { kind: 'import', base: { known: false }, theirs: reach, revision: 2 },
    });
  });

  it('is a script’s own matter: without a revision it overwrites', () => {
    save.saveTruck(db, heldBy('Chain'), PLANNER, 1);
    expect(save.saveTruck(db, heldBy('Horn'), LEAD).ok).toBe(true);
    expect(save.saveTruck(db, heldBy('Fork'), LEAD, null).ok).toBe(true);
  });

  it('from a revision that this database never had is a conflict too', () => {
    expect(save.saveTruck(db, heldBy('Horn'), LEAD, 7)).toMatchObject({ ok: false, conflict: { since: 7 } });
  });
});

describe('a conflict', () => {
  it('is found in stock: the same location, and both ends of a move', () => {
    saveStockRow(db, { location: 'a1-0-1', load: 'crates' }, PLANNER, 1);
    expect(saveStockRow(db, { location: 'a1-0-1', load: 'drums' }, LEAD, 1)).toMatchObject({
      conflict: { subject: 'a1-0-1', theirs: 'crates', base: { known: true, fact: null } },
    });
    expect(removeStockRow(db, 'a1-0-1', LEAD, 1)).toMatchObject({ conflict: { theirs: 'crates' } });
    expect(moveStockRow(db, 'a1-1-1', 'a1-0-1', LEAD, 1)).toMatchObject({ conflict: { subject: 'a1-0-1' } });
    moveStockRow(db, 'a1-1-1', 'a1-2-1', PLANNER, 2);
    expect(moveStockRow(db, 'a1-1-1', 'a2-2-2', LEAD, 2)).toMatchObject({
      conflict: { subject: 'a1-1-1', theirs: null },
    });
  });

  it('is found in the one policy value that both set, not in its neighbours', () => {
    savePolicy(db, { thinPercent: 5 }, PLANNER, 1);
    expect(savePolicy(db, { thinPercent: 5, handlingS: 20 }, LEAD, 1).ok).toBe(true);
    expect(savePolicy(db, { thinPercent: 7, handlingS: 20 }, LEAD, 1)).toMatchObject({
      conflict: { noun: 'policy', subject: 'thinPercent', theirs: 5, base: { fact: null } },
    });
    saveSiteName(db, 'Pier', PLANNER);
    expect(saveSiteName(db, 'Quay', LEAD, 1)).toMatchObject({ conflict: { theirs: 'Pier' } });
  });

  it('leaves no part of a save behind', () => {
    savePolicy(db, { thinPercent: 5 }, PLANNER, 1);
    const before = readSite(db);
    // handlingS is written first and the conflict is in thinPercent
    expect(savePolicy(db, { handlingS: 20, thinPercent: 7 }, LEAD, 1).ok).toBe(false);
    expect(readSite(db)).toEqual(before);
    expect(readRevision(db)).toBe(2);
  });
});

describe('a change that is undone', () => {
  it('of random sites gives back exactly the site before it, order included, and can be redone the same way', () => {
    const reverted = new Map<Drawn, number>();
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const site = drawSite(g);
        importSite(db, site, PLANNER);
        for (let n = 0; n < 6; n++) {
          const before = readSite(db)!;
          const revision = readRevision(db);
          const { drawn, saved } = drawChange(g, db, before, n);
          if (!saved.ok || saved.revision === revision) {
            expect(readSite(db)).toEqual(before);
            continue;
          }
          const after = readSite(db);
          const undone = revertChange(db, saved.revision, LEAD);
          if (drawn === 'check') {
            expect(undone).toMatchObject({ ok: false, cannot: 'check-is-kept' });
            continue;
          }
          expect(undone.ok, drawn).toBe(true);
          // the checks of a truck that comes back stand at the end
          expect(sorted(readSite(db))).toEqual(sorted(before));
          reverted.set(drawn, (reverted.get(drawn) ?? 0) + 1);
          expect(revertChange(db, readRevision(db), LEAD).ok).toBe(true);
          expect(sorted(readSite(db))).toEqual(sorted(after));
        }
      }),
      { seed: SEED, numRuns: 25 },
    );
    for (const drawn of DRAWN.filter((one) => one !== 'check')) {
      expect(reverted.get(drawn) ?? 0, drawn).toBeGreaterThan(0);
    }
  });

  it('is a new row of its own that names the other', () => {
    save.saveTruck(db, heldBy('Chain'), PLANNER);
    expect(revertChange(db, 2, LEAD)).toEqual({ ok: true, revision: 3 });
    const [undoing, undone] = readChanges(db, { limit: 2 });
    expect(undoing).toMatchObject({
      ...LEAD,
      kind: 'revert',
      reverts: 2,
      before: heldBy('Chain'),
      after: reach,
    });
    expect(undone).toMatchObject({ kind: 'save', revertedBy: 3 });
  });

  it('takes both ends of a move back in one step', () => {
    moveStockRow(db, 'a2-1-1', 'a2-2-2', PLANNER);
    expect(revertChange(db, 3, LEAD).ok).toBe(true);
    expect(readSite(db)).toEqual(stocked);
    expect(readChanges(db, { limit: 9 }).filter((change) => change.revertedBy !== null)).toHaveLength(2);
  });

  it('is refused with the conflict when the fact is no longer what it made of it', () => {
    save.saveTruck(db, heldBy('Chain'), PLANNER);
    save.saveTruck(db, heldBy('Horn'), LEAD);
    expect(revertChange(db, 2, PLANNER)).toMatchObject({
      ok: false,
      conflict: { by: LEAD.who, theirs: heldBy('Horn'), base: { known: true, fact: heldBy('Chain') } },
    });
    expect(readRevision(db)).toBe(3);
    // back to what it made of it: now it can be
    save.saveTruck(db, heldBy('Chain'), LEAD);
    expect(revertChange(db, 2, PLANNER).ok).toBe(true);
  });

  it('is refused as any save when what it would bring back can no longer stand', () => {
    removeStockRow(db, 'a1-1-1', PLANNER);
    save.removeLoad(db, 'drums', PLANNER);
    expect(revertChange(db, 2, LEAD)).toMatchObject({
      ok: false,
      refusals: [{ path: '$.stock[1].load', expected: { is: 'id-in' } }],
    });
    expect(readSite(db)?.stock).toHaveLength(1);
  });

  it('is refused for an addition that others have come to need', () => {
    save.saveLoad(db, { ...stocked.loads[0]!, id: 'barrels' }, PLANNER);
    saveStockRow(db, { location: 'a1-0-1', load: 'barrels' }, PLANNER);
    expect(revertChange(db, 2, LEAD)).toMatchObject({ ok: false, refusals: [{ path: '$.stock[2].load' }] });
  });

  it('never takes a check away', () => {
    addCheck(
      db,
      { truck: 'reach-1', at: '2026-03-02', by: 'x', result: 'fail', defects: ['Fork bent'] },
      LEAD,
    );
    expect(revertChange(db, 2, LEAD)).toEqual({ ok: false, refusals: [], cannot: 'check-is-kept' });
    expect(revertChange(db, 99, LEAD)).toEqual({ ok: false, refusals: [], cannot: 'no-such-change' });
  });

  it('can be tried first: the same answer and nothing kept', () => {
    moveStockRow(db, 'a2-1-1', 'a2-2-2', PLANNER);
    const before = readSite(db);
    expect(tryRevert(db, 2, LEAD)).toEqual({ ok: true, revision: 5 });
    expect(readSite(db)).toEqual(before);
    expect(readRevision(db)).toBe(3);
    save.saveTruck(db, heldBy('Chain'), PLANNER);
    save.saveTruck(db, heldBy('Horn'), LEAD);
    expect(tryRevert(db, 4, LEAD)).toMatchObject({ ok: false, conflict: { by: LEAD.who } });
  });

  it('is found for who made it last: neither what is undone already nor an undoing', () => {
    save.saveTruck(db, heldBy('Chain'), LEAD);
    moveStockRow(db, 'a2-1-1', 'a2-2-2', LEAD);
    saveSiteName(db, 'Pier', PLANNER);
    expect(lastChangeOf(db, LEAD.who)).toMatchObject({ id: 4, batch: 3 });
    revertChange(db, 4, LEAD);
    expect(lastChangeOf(db, LEAD.who)).toMatchObject({ id: 2 });
    revertChange(db, 2, LEAD);
    expect(lastChangeOf(db, LEAD.who)).toBeNull();
  });
});

describe('an import', () => {
  const other = makeSite({ site: { name: 'The other store' }, trucks: [makeTruck()], checks: [] });

  it('is undone from the site that it took away, and the undoing can be undone', () => {
    importSite(db, other, LEAD);
    expect(revertChange(db, 2, PLANNER)).toEqual({ ok: true, revision: 3 });
    expect(readSite(db)).toEqual(stocked);
    expect(readChanges(db, { limit: 1 })[0]).toMatchObject({ kind: 'revert', reverts: 2, wholeSite: true });
    expect(revertChange(db, 3, PLANNER).ok).toBe(true);
    expect(readSite(db)).toEqual(other);
  });

  it('is not undone once anything was changed after it: that would be lost', () => {
    importSite(db, other, LEAD);
    saveSiteName(db, 'Pier', PLANNER);
    expect(revertChange(db, 2, LEAD)).toMatchObject({ ok: false, conflict: { by: PLANNER.who, since: 2 } });
    expect(readKeptSite(db, 2)).toEqual(stocked);
  });

  it('is not undone when it was the first, or when the former site is kept no longer', () => {
    expect(revertChange(db, 1, LEAD)).toMatchObject({ ok: false, cannot: 'former-site-not-kept' });
    for (let n = 0; n < SITES_KEPT; n++) importSite(db, n % 2 === 0 ? other : stocked, LEAD);
    expect(readKeptSite(db, 2)).toEqual(stocked);
    importSite(db, other, LEAD);
    expect(readKeptSite(db, 2)).toBeNull();
    expect(readKeptSite(db, 3)).toEqual(other);
  });
});

describe('a snapshot that is renewed change by change', () => {
  it('is exactly what reading the site anew gives, and leaves the one before as it was', () => {
    const seen = new Set<Drawn>();
    fc.assert(
      fc.property(fc.gen(), (g) => {
        importSite(db, drawSite(g), PLANNER);
        let held = renewSnapshot(db, null)!;
        for (let n = 0; n < 8; n++) {
          const frozen = structuredClone(held.site);
          const { drawn, saved } = drawChange(g, db, held.site, n);
          if (saved.ok && saved.revision > held.revision) seen.add(drawn);
          if (saved.ok && n % 3 === 2) revertChange(db, readRevision(db), LEAD);
          const next = renewSnapshot(db, held)!;
          expect(next.revision).toBe(readRevision(db));
          const anew = readSite(db)!;
          expect(next.site, drawn).toEqual(anew);
          const index = indexSite(anew);
          expect({ ...next.index, places: null, stockAt: null }).toEqual({
            ...index,
            places: null,
            stockAt: null,
          });
          expect([...next.index.places]).toEqual([...index.places]);
          expect([...next.index.stockAt]).toEqual([...index.stockAt]);
          expect([...index.places.keys()].map((id) => next.index.stockAt.get(id))).toEqual(
            [...index.places.keys()].map((id) => index.stockAt.get(id)),
          );
          expect(held.site).toEqual(frozen);
          held = next;
        }
      }),
      { seed: SEED, numRuns: 20 },
    );
    expect([...DRAWN].filter((drawn) => !seen.has(drawn))).toEqual([]);
  });

  it('is the same one while nothing was changed, and read whole after an import', () => {
    const held = renewSnapshot(db, null)!;
    expect(renewSnapshot(db, held)).toBe(held);
    importSite(db, makeSite({ site: { name: 'x' } }), LEAD);
    expect(renewSnapshot(db, held)?.site).toEqual(makeSite({ site: { name: 'x' } }));
  });
});

describe('the change log', () => {
  beforeEach(() => {
    save.saveTruck(db, heldBy('100 % worn'), PLANNER);
    save.saveTruck(db, heldBy('Horn_silent'), LEAD);
    saveStockRow(
      db,
      { location: 'a1-0-1', load: 'crates' },
      { who: 'A shift lead', at: '2026-03-05T00:00:00Z' },
    );
  });

  it.each([
    ['who', { who: 'A shift lead' }, [4, 3]],
    ['noun', { noun: 'truck' }, [3, 2]],
    ['subject', { subject: 'a1-0-1' }, [4]],
    ['kind', { kind: 'add' }, [4]],
    ['the time from', { from: '2026-03-02T07:00:00Z' }, [4, 3]],
    ['the time to, which is not included', { to: '2026-03-02T07:00:00Z' }, [2, 1]],
    ['a word in what was there', { text: 'WORN' }, [3, 2]],
    ['a sign that is no wildcard', { text: '%' }, [3, 2]],
    ['another one', { text: 'n_s' }, [3]],
    ['several at once', { noun: 'truck', who: 'A planner' }, [2]],
  ] as const)('is narrowed by %s', (_by, filter, ids) => {
    expect(readChanges(db, { limit: 10, filter }).map(({ id }) => id)).toEqual(ids);
  });

  it('is paged within what is asked', () => {
    const filter = { noun: 'truck' } as const;
    const first = readChanges(db, { limit: 1, filter });
    expect(first.map(({ id }) => id)).toEqual([3]);
    expect(readChanges(db, { limit: 5, filter, before: 3 }).map(({ id }) => id)).toEqual([2]);
  });

  it('knows everybody who has changed something', () => {
    expect(readAuthors(db)).toEqual(['A planner', 'A shift lead']);
  });
});

function sorted(site: ReturnType<typeof readSite>) {
  const checks = [...(site?.checks ?? [])].sort((a, b) => JSON.stringify(a).localeCompare(JSON.stringify(b)));
  return { ...site, checks };
}
