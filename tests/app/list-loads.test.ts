import { describe, expect, it } from 'vitest';
import { LOADS_ON_A_PAGE, listLoads, readLoadsAsk, writeLoadsAsk } from '../../app/loads/list-loads.ts';
import { makeDrums, makeIndex, makeLoad } from '../site-builder.ts';

const index = makeIndex({
  loads: [
    makeLoad({ id: 'L10', name: 'Blue crates', grossKg: 800 }),
    makeLoad({ id: 'L2', name: 'Red crates', grossKg: 500, massBasis: 'declared' }),
    makeDrums({ id: 'L3', name: 'Drums of oil' }),
    makeLoad({ id: 'L4', name: 'Returned goods', grossKg: null }),
  ],
  stock: [
    { location: 'a1-1-1', load: 'L2' },
    { location: 'a1-1-2', load: 'L2' },
  ],
});
const list = (address: string) =>
  listLoads(index, readLoadsAsk(Object.fromEntries(new URLSearchParams(address))).ask);
const ids = (address: string) => list(address).rows.map(({ load }) => load.id);

describe('listLoads', () => {
  it('orders ids as people count', () => {
    expect(ids('')).toEqual(['L2', 'L3', 'L4', 'L10']);
    expect(ids('direction=down')).toEqual(['L10', 'L4', 'L3', 'L2']);
  });

  it('finds every word in the id, the name, the group or an item', () => {
    expect(ids('find=crates')).toEqual(['L2', 'L10']);
    expect(ids('find=crates+BLUE')).toEqual(['L10']);
    expect(ids('find=drum')).toEqual(['L3']);
    expect(ids('find=nothing')).toEqual([]);
  });

  it('puts a mass that is not known last either way', () => {
    expect(ids('sort=mass')).toEqual(['L2', 'L10', 'L3', 'L4']);
    expect(ids('sort=mass&direction=down')).toEqual(['L3', 'L10', 'L2', 'L4']);
  });

  it('narrows by the basis of the mass, what is calculated from items included', () => {
    expect(ids('basis=weighed')).toEqual(['L10']);
    expect(ids('basis=calculated')).toEqual(['L3']);
    expect(ids('basis=unknown')).toEqual(['L4']);
  });

  it('narrows by standing somewhere or nowhere, and counts the pallets', () => {
    expect(ids('standing=somewhere')).toEqual(['L2']);
    expect(ids('standing=nowhere')).toEqual(['L3', 'L4', 'L10']);
    expect(list('standing=somewhere').rows[0]?.places).toEqual(['a1-1-1', 'a1-1-2']);
  });

  it('adds the allowance of a declared mass: 500 kg and 10 % are 550 kg', () => {
    expect(list('basis=declared').rows[0]?.assessedKg).toBe(550);
  });

  it.each([
    { loads: LOADS_ON_A_PAGE - 1, pages: 1, onLast: LOADS_ON_A_PAGE - 1 },
    { loads: LOADS_ON_A_PAGE, pages: 1, onLast: LOADS_ON_A_PAGE },
    { loads: LOADS_ON_A_PAGE + 1, pages: 2, onLast: 1 },
  ])(
    'cuts $loads loads into $pages pages, and takes a page past the end as the last',
    ({ loads, pages, onLast }) => {
      const many = makeIndex({
        loads: Array.from({ length: loads }, (_, at) => makeLoad({ id: `M${at}` })),
      });
      const page = listLoads(many, readLoadsAsk({ page: '99' }).ask);
      expect([page.matching, page.pages, page.page, page.rows.length]).toEqual([loads, pages, pages, onLast]);
    },
  );

  it('finds and sorts among 50 000 loads within two seconds', () => {
    const many = makeIndex({
      loads: Array.from({ length: 50_000 }, (_, at) => makeLoad({ id: `M${at}`, name: `Crates ${at % 97}` })),
    });
    const start = performance.now();
    expect(listLoads(many, readLoadsAsk({ find: 'crates', sort: 'name' }).ask).matching).toBe(50_000);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});

describe('readLoadsAsk', () => {
  it.each([
    { address: { basis: 'guessed' }, path: '$.basis' },
    { address: { standing: 'up' }, path: '$.standing' },
    { address: { sort: 'colour' }, path: '$.sort' },
    { address: { page: '0' }, path: '$.page' },
    { address: { page: 'two' }, path: '$.page' },
  ])('names $path and shows the list without it', ({ address, path }) => {
    const { ask, refused } = readLoadsAsk(address);
    expect(refused.map((entry) => entry.path)).toEqual([path]);
    expect(ask).toEqual(readLoadsAsk({}).ask);
  });
});

describe('writeLoadsAsk', () => {
  it('is read back as what was asked, and a change of order goes to the first page', () => {
    const { ask } = readLoadsAsk({
      find: 'blue & red',
      basis: 'declared',
      sort: 'mass',
      direction: 'down',
      page: '3',
    });
    const back = (address: string) => readLoadsAsk(Object.fromEntries(new URLSearchParams(address))).ask;
    expect(back(writeLoadsAsk(ask, { page: 3 }))).toEqual(ask);
    expect(back(writeLoadsAsk(ask, { sort: 'name' }))).toEqual({ ...ask, sort: 'name', page: 1 });
  });
});
