import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { countRows } from '../../app/export/count-rows.ts';
import { planDigest } from '../../app/import/plan-digest.ts';
import { type ReadImport, takeIn } from '../../app/import/take-in.ts';
import { demoSiteAt } from '../../lib/demo/demo-site-at.ts';
import { exportList } from '../../lib/import/export-lists.ts';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import { LIST_NAMES, type ListName } from '../../lib/import/lists.ts';
import { planImports } from '../../lib/import/plan-imports.ts';
import { readTable } from '../../lib/import/read-table.ts';
import type { Role } from '../../lib/model/permissions.ts';
import { readMappings } from '../../lib/store/import-mappings.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import * as save from '../../lib/store/save-site.ts';
import { renewSnapshot } from '../../lib/store/site-snapshot.ts';
import { makeLoad, makeSite } from '../site-builder.ts';

const ACTOR = { who: 'Test planner (planner)', at: '2026-03-02T06:30:00Z' };

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
  importSite(db, makeSite(), ACTOR);
});
afterEach(() => closeDatabase(db));

type Sent = Awaited<ReturnType<typeof shown>>;
type Chosen = { list: ListName; name: string; text: string };

/** What a browser would send after a dry run on the site as it stands. */
async function shown(files: readonly Chosen[], mode: ReadImport['mode'] = 'all-or-nothing') {
  const bytes = files.map(({ text }) => new TextEncoder().encode(text));
  const lists = await Promise.all(
    files.map(async ({ list, name }, at) => {
      const reading = await readTable(bytes[at]!, name, {});
      if (!reading.ok) throw new Error(reading.refusal.why);
      return { list, table: reading.table, mapping: guessMapping(list, reading.table).mapping };
    }),
  );
  const { plans } = planImports(readSite(db)!, lists, { mode });
  const asked: ReadImport = {
    mode,
    digest: planDigest(plans),
    files: lists.map(({ mapping }, at) => ({ name: files[at]!.name, choice: {}, mapping })),
  };
  return { asked, bytes, plans };
}

function take({ asked, bytes }: Sent, role: Role = 'planner') {
  return takeIn(db, renewSnapshot(db, null), { actor: ACTOR, role }, asked, bytes);
}

const LOADS: Chosen = {
  list: 'loads',
  name: 'erp.csv',
  text: '\ufeffWidth (in);SKU;Description;Gross weight (kg);Basis;Height (in);Length (in)\r\n39,37;new;Pumps;850,5;weighed;47,25;47,24\r\n',
};
const STOCK: Chosen = { list: 'stock', name: 'stock.csv', text: 'Location,Load\na1-1-1,new\n' };

describe('an import that is sent to be stored', () => {
  it('is stored as it was shown, several lists together, and the mappings are kept', async () => {
    expect(await take(await shown([STOCK, LOADS]))).toMatchObject({ state: 'done', revision: 3 });
    const site = readSite(db)!;
    // 39.37 in x 25.4 and so on, by the definition of the inch
    expect(site.loads.at(-1)).toMatchObject({
      ...{ id: 'new', name: 'Pumps', grossKg: 850.5, massBasis: 'weighed' },
      ...{ widthMm: 999.998, heightMm: 1200.15, depthMm: 1199.896 },
    });
    expect(site.stock).toEqual([{ location: 'a1-1-1', load: 'new' }]);
    expect(readMappings(db).map(({ list, usedBy }) => [list, usedBy])).toEqual(
      expect.arrayContaining([
        ['loads', ACTOR.who],
        ['stock', ACTOR.who],
      ]),
    );
    expect((await shown([STOCK, LOADS])).plans.map(({ added, changed }) => [added, changed])).toEqual([
      [[], []],
      [[], []],
    ]);
  });

  it('is not stored when the site has changed so that something else would come of it', async () => {
    const before = await shown([{ ...STOCK, text: 'Location,Load\na1-1-1,crates\n' }]);
    importSite(db, { ...readSite(db)!, stock: [{ location: 'a1-1-1', load: 'drums' }] }, ACTOR);
    expect(await take(before)).toEqual({ state: 'differs' });
    expect(readSite(db)!.stock).toEqual([{ location: 'a1-1-1', load: 'drums' }]);
    expect(readMappings(db)).toEqual([]);
  });

  it('is stored when the site has changed elsewhere, and leaves that change alone', async () => {
    const before = await shown([LOADS]);
    save.saveLoad(db, makeLoad({ id: 'meanwhile' }), ACTOR);
    expect(await take(before)).toMatchObject({ state: 'done' });
    expect(
      readSite(db)!
        .loads.map(({ id }) => id)
        .slice(-2),
    ).toEqual(['meanwhile', 'new']);
  });

  it.each([
    ['other bytes', (sent: Sent): Sent => ({ ...sent, bytes: [encode('Load,Gross mass (kg)\ncrates,8\n')] })],
    ['a made-up digest', (sent: Sent): Sent => ({ ...sent, asked: { ...sent.asked, digest: '0' } })],
    ['the other mode', (sent: Sent): Sent => ({ ...sent, asked: { ...sent.asked, mode: 'good-rows-only' } })],
  ])('is not stored with %s than those of the dry run', async (_what, change) => {
    const heavier: Chosen = { list: 'loads', name: 'x.csv', text: 'Load,Gross mass (kg)\ncrates,810\n' };
    const sent = await shown([heavier]);
    expect(await take(change(sent))).toEqual({ state: 'differs' });
    expect(readRevision(db)).toBe(1);
    expect(await take(sent)).toMatchObject({ state: 'done' });
  });

  it('of all or nothing stores nothing for one bad row, of good rows only the good ones', async () => {
    const bad = { ...LOADS, text: `${LOADS.text}39,37;bad;Pumps;heavy;weighed;47,25;47,24\r\n` };
    expect(await take(await shown([bad]))).toMatchObject({ state: 'refused' });
    expect(readRevision(db)).toBe(1);
    expect(await take(await shown([bad], 'good-rows-only'))).toMatchObject({ state: 'done' });
    expect(readSite(db)!.loads.map(({ id }) => id)).toEqual(['crates', 'drums', 'new']);
  });

  it('is refused to a role that may not change what it changes', async () => {
    expect(await take(await shown([LOADS]), 'safety-officer')).toMatchObject({
      state: 'refused',
      message: expect.stringContaining('planner'),
    });
    const inspection: Chosen = {
      list: 'locations',
      name: 'inspection.csv',
      text: 'Location,Level condition\na1-1-1,red\n',
    };
    expect(await take(await shown([inspection]), 'planner')).toMatchObject({ state: 'refused' });
    expect(readRevision(db)).toBe(1);
    expect(await take(await shown([inspection]), 'safety-officer')).toMatchObject({ state: 'done' });
    expect(readSite(db)!.runs[0]!.bays[0]!.levels[1]!.condition).toBe('red');
  });

  it('names the file that cannot be read', async () => {
    const sent = await shown([LOADS]);
    const answer = await take({ ...sent, bytes: [encode('a\0b')] });
    expect(answer).toMatchObject({ state: 'refused', message: expect.stringContaining('erp.csv') });
  });
});

describe('what is exported', () => {
  it('has as many rows as the export screen says, and changes nothing when it is read in again', async () => {
    importSite(db, demoSiteAt('2026-03-02T06:30:00Z'), ACTOR);
    const site = readSite(db)!;
    const files = LIST_NAMES.map((list) => ({ list, name: `${list}.csv`, text: exportList(site, list) }));
    for (const { list, name, text } of files) {
      const reading = await readTable(encode(text), name, {});
      expect([list, reading.ok && reading.table.rows.length]).toEqual([list, countRows(site, list)]);
    }
    const sent = await shown(files);
    for (const plan of sent.plans) expect(plan).toMatchObject({ added: [], changed: [], refused: [] });
    expect(await take(sent, 'viewer')).toMatchObject({ state: 'done', revision: 2 });
    expect(readSite(db)).toEqual(site);
  });
});

function encode(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}
