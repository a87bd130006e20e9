import { describe, expect, it } from 'vitest';
import { planImport } from '../../lib/import/plan-import.ts';
import { planImports } from '../../lib/import/plan-imports.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { makeSite } from '../site-builder.ts';
import { mappingOf, planOf, refusals, tableOf } from './list-of.ts';

const site = makeSite();
const LOADS = 'Load,Name,Pallet type,Gross kg,Mass basis,Load depth mm,Load width mm,Load height mm';

describe('rows that add and change', () => {
  it('say what is new, what differs fact by fact, and count what is the same', () => {
    const plan = planOf(
      site,
      'loads',
      `${LOADS}\ncrates,Crates,p1200,800,weighed,1200,800,1000\ndrums,Steel drums,p1200,,calculated,1200,800,1100\nbags,Bags,,500,declared,1200,1000,900\n`,
    );
    expect(plan.refused).toEqual([]);
    expect(plan.added).toEqual([{ what: 'entry', id: 'bags' }]);
    expect(plan.changed).toEqual([
      {
        what: 'entry',
        id: 'drums',
        fields: [
          { fact: 'name', before: 'Drums', after: 'Steel drums' },
          { fact: 'heightMm', before: 1000, after: 1100 },
        ],
      },
    ]);
    expect(plan.unchanged).toBe(1);
    expect(plan.site.loads.map(({ id }) => id)).toEqual(['crates', 'drums', 'bags']);
    expect(plan.site.loads[1]!.items).toEqual(site.loads[1]!.items);
    expect(readSite(plan.site).ok).toBe(true);
  });

  it('leave the given site as it was', () => {
    const before = structuredClone(site);
    planOf(site, 'trucks', 'Truck,Fork length mm,Outside radius mm\nreach-1,1000,1700\n');
    expect(site).toEqual(before);
  });

  it('keep facts that no column gives, and take a blank as not known', () => {
    const plan = planOf(site, 'trucks', 'Truck,Mast lowered (mm),Mast extended (mm)\nreach-1,2300,\n');
    expect(plan.refused).toEqual([]);
    expect(plan.changed[0]!.fields).toEqual([
      { fact: 'loweredMm', before: 2400, after: 2300 },
      { fact: 'extendedMm', before: 6800, after: null },
    ]);
    expect(plan.site.trucks[0]!.plate).toEqual(site.trucks[0]!.plate);
  });

  it('take a group whose facts are all blank as not known at all', () => {
    const plan = planOf(
      site,
      'trucks',
      'Truck,Outside radius mm,Load distance mm,Inside offset mm\nreach-1,,,\n',
    );
    expect(plan.site.trucks[0]!.turning).toBeNull();
    expect(
      refusals(
        planOf(
          site,
          'trucks',
          'Truck,Outside radius mm,Load distance mm,Inside offset mm\nreach-1,1700,,0\n',
        ),
      ),
    ).toEqual([[2, 'Load distance mm', 'nothing', 'present']]);
  });

  it('take constants for what no column gives', () => {
    const plan = planOf(
      site,
      'loads',
      'Load,Name,Load depth mm,Load width mm,Load height mm\nbags,Bags,1200,1000,900\n',
      {
        constants: { massBasis: 'declared', grossKg: '500' },
      },
    );
    expect(plan.refused).toEqual([]);
    expect(plan.site.loads[2]).toMatchObject({
      id: 'bags',
      massBasis: 'declared',
      grossKg: 500,
      palletType: null,
    });
  });

  it('read inches and pounds, decimal commas and words of their own', () => {
    const table = tableOf(
      'Load;Name;Weight (lb);Mass basis;Length (in);Width (in);Height (in)\nbags;Bags;1.000,5;geschätzt;48;40;35,5\n',
    );
    const mapping = mappingOf('loads', table);
    mapping.columns.find((use) => use.fact === 'massBasis')!.words = { geschätzt: 'declared' };
    const plan = planImport(site, 'loads', table, mapping);
    expect(plan.refused).toEqual([]);
    // 1000.5 lb x 0.45359237 and 48, 40, 35.5 in x 25.4, by hand.
    expect(plan.site.loads[2]).toMatchObject({
      grossKg: 453.819166185,
      depthMm: 1219.2,
      widthMm: 1016,
      heightMm: 901.7,
    });
  });

  it('may be stopped, and then nothing comes of it', () => {
    const table = tableOf(`${LOADS}\n${'x,X,,1,weighed,1,1,1\n'.repeat(3)}`);
    const seen: string[] = [];
    expect(() =>
      planImport(site, 'loads', table, mappingOf('loads', table), {
        watch: (stage) => {
          seen.push(stage);
          return stage === 'agreeing' ? 'stop' : undefined;
        },
      }),
    ).toThrow('stopped');
    expect(seen).toEqual(['rows', 'rows', 'agreeing']);
  });
});

describe('a row that is refused', () => {
  const row = (cells: string) => refusals(planOf(site, 'loads', `${LOADS}\n${cells}\n`));
  it.each([
    ['no id', ',Bags,,500,weighed,1200,800,1000', [[2, 'Load', 'nothing', 'present']]],
    ['no name', 'bags,,,500,weighed,1200,800,1000', [[2, 'Name', 'nothing', 'present']]],
    [
      'letters for a number',
      'bags,Bags,,heavy,weighed,1200,800,1000',
      [[2, 'Gross kg', '"heavy"', 'number-in-style']],
    ],
    [
      'a decimal comma in a column of points',
      'bags,Bags,,"500,5",weighed,1200,800,1000\ntins,Tins,,500.25,weighed,1200,800,1000\ncans,Cans,,1.5,weighed,1200,800,1000',
      [[2, 'Gross kg', '"500,5"', 'number-in-style']],
    ],
    ['a negative number', 'bags,Bags,,-500,weighed,1200,800,1000', [[2, 'Gross kg', '"-500"', 'at-least']]],
    ['a size of nothing', 'bags,Bags,,500,weighed,0,800,1000', [[2, 'Load depth mm', '"0"', 'above']]],
    [
      'a number past all sizes',
      'bags,Bags,,500,weighed,10000001,800,1000',
      [[2, 'Load depth mm', '"10000001"', 'at-most']],
    ],
    [
      'a kilogram for a length',
      'bags,Bags,,500,weighed,1200 kg,800,1000',
      [[2, 'Load depth mm', '"1200 kg"', 'number-in-style']],
    ],
    [
      'a word that is no choice',
      'bags,Bags,,500,guessed,1200,800,1000',
      [[2, 'Mass basis', '"guessed"', 'one-of']],
    ],
    [
      'a pallet type that the site does not have',
      'bags,Bags,p1300,500,weighed,1200,800,1000',
      [[2, 'Pallet type', '"p1300"', 'id-in']],
    ],
    [
      'an error that a spreadsheet wrote',
      'bags,#REF!,,500,weighed,1200,800,1000',
      [[2, 'Name', '"#REF!"', 'no-error-cell']],
    ],
    [
      'a cell too many',
      'bags,Bags,,500,weighed,1200,800,1000,extra',
      [[2, null, '"extra"', 'cells-for-columns']],
    ],
    [
      'several faults, each named',
      'bags,,p1300,x,weighed,1200,800,1000',
      [
        [2, 'Gross kg', '"x"', 'number-in-style'],
        [2, 'Pallet type', '"p1300"', 'id-in'],
      ],
    ],
    [
      'an id over a line break',
      '"ba\ngs",Bags,,500,weighed,1200,800,1000',
      [[2, 'Load', '"ba\\ngs"', 'text']],
    ],
  ])('%s', (_, cells, expected) => {
    expect(row(cells)).toEqual(expected);
  });

  it.each(['constructor', '__proto__', 'toString'])(
    'with the word %s for a unit, a choice or an id is refused like any other',
    (word) => {
      expect(row(`bags,Bags,,5 ${word},weighed,1200,800,1000`)).toEqual([
        [2, 'Gross kg', `"5 ${word}"`, 'number-in-style'],
      ]);
      expect(row(`bags,Bags,,5,${word},1200,800,1000`)).toEqual([[2, 'Mass basis', `"${word}"`, 'one-of']]);
      expect(row(`bags,Bags,${word},5,weighed,1200,800,1000`)).toEqual([
        [2, 'Pallet type', `"${word}"`, 'id-in'],
      ]);
      expect(row(`${word},${word},,5,weighed,1200,800,1000`)).toEqual([]);
    },
  );

  it.each([
    ['10000000', []],
    ['9999999', []],
    ['10000001', [[2, 'Load depth mm', '"10000001"', 'at-most']]],
  ])('a depth of %s is judged by the model’s limit', (depth, expected) => {
    expect(row(`bags,Bags,,500,weighed,${depth},800,1000`)).toEqual(expected);
  });

  it('that repeats an id in other words is refused with the row it repeats: which is right cannot be told', () => {
    const bags = (kg: number) => `bags,Bags,,${kg},weighed,1200,800,1000`;
    const plan = planOf(
      site,
      'loads',
      `${LOADS}\n${bags(500)}\ntins,Tins,,300,weighed,1200,800,1000\n${bags(600)}\n`,
    );
    expect(plan.refused).toMatchObject([
      { row: 2, column: 'Load', expected: { is: 'once-in-file', otherRow: 4 } },
      { row: 4, column: 'Load', expected: { is: 'once-in-file', otherRow: 2 } },
    ]);
    expect(plan.site.loads.map(({ id }) => id)).toEqual(['crates', 'drums', 'tins']);
    const same = planOf(site, 'loads', `${LOADS}\n${bags(500)}\n${bags(500)}\n`);
    expect(refusals(same)).toEqual([[3, 'Load', '"bags"', 'once-in-file']]);
    expect(same.site.loads[2]!.grossKg).toBe(500);
  });

  it('with a reference names the nearest id there is', () => {
    const plan = planOf(site, 'stock', 'Location,Load\na1-1-1,crate\nz9-9-9,crates\n');
    expect(plan.refused).toMatchObject([
      {
        row: 2,
        column: 'Load',
        came: '"crate"',
        expected: { is: 'id-in', list: 'loads', nearest: 'crates' },
      },
      { row: 3, column: 'Location', expected: { is: 'id-in', list: 'locations', nearest: null } },
    ]);
  });

  it('for facts that contradict each other names the column of one of them', () => {
    expect(
      refusals(planOf(site, 'trucks', 'Truck,Mast lowered mm,Mast extended mm\nreach-1,3000,2999\n')),
    ).toEqual([[2, 'Mast extended mm', '"2999"', 'at-least-field']]);
    expect(
      refusals(planOf(site, 'trucks', 'Truck,Mast lowered mm,Mast extended mm\nreach-1,3000,3000\n')),
    ).toEqual([]);
    expect(
      refusals(planOf(site, 'trucks', 'Truck,Fork arm capacity kg,Fork arm load centre mm\nreach-1,1000,\n')),
    ).toEqual([[2, 'Fork arm load centre mm', 'nothing', 'both-or-neither']]);
  });

  it('for a fact that no column gives says so without a column', () => {
    const plan = planOf(site, 'trucks', 'Truck,Name\nnew-1,New\n');
    expect(refusals(plan)).toContainEqual([2, null, 'nothing', 'present']);
    expect(plan.refused.map(({ fact }) => fact).sort()).toEqual(['kind', 'maxLiftMm', 'power', 'reachDepth']);
  });

  it('by a constant that cannot be read shows the constant', () => {
    const plan = planOf(site, 'trucks', 'Truck\nreach-1\n', { constants: { maxLiftMm: 'tall' } });
    expect(refusals(plan)).toEqual([[2, null, '"tall"', 'number-in-style']]);
  });

  it('leaves the file out as a whole when a mapped column is not in it', () => {
    const table = tableOf('Truck,Lift\nreach-1,6000\n');
    const columns = [
      { header: 'Truck', nth: 0, fact: 'id' },
      { header: 'Max lift', nth: 0, fact: 'maxLiftMm' },
    ];
    const plan = planImport(site, 'trucks', table, mappingOf('trucks', table, { columns }), {
      mode: 'good-rows-only',
    });
    expect(refusals(plan)).toEqual([[1, 'Max lift', 'nothing', 'column-in-file']]);
    expect(plan.applies).toBe(false);
    expect(plan.site).toBe(site);
  });
});

describe('all or nothing, or the good rows only', () => {
  const text = `${LOADS}\nbags,Bags,,500,weighed,1200,800,1000\nbad,Bad,,x,weighed,1200,800,1000\n`;
  it('all: one refused row and the site stays as it is, though the good rows are shown', () => {
    const plan = planOf(site, 'loads', text, {}, 'all-or-nothing');
    expect(plan).toMatchObject({ applies: false, added: [{ id: 'bags' }] });
    expect(plan.site).toBe(site);
  });

  it('good rows: they come in, and the site is valid', () => {
    const plan = planOf(site, 'loads', text);
    expect(plan.applies).toBe(true);
    expect(plan.site.loads.map(({ id }) => id)).toEqual(['crates', 'drums', 'bags']);
    expect(readSite(plan.site).ok).toBe(true);
  });
});

describe('an entry of several rows', () => {
  const PLATE = 'Truck,Mast,Lift height mm,Load centre mm,Capacity kg';
  it('has its children replaced as a whole, in the order of the rows, wherever they stand in the file', () => {
    const plan = planOf(
      site,
      'plateRatings',
      `${PLATE}\nreach-1,vertical,3000,600,1500\ncounter-1,vertical,4500,600,2000\nreach-1,vertical,6000,600,900\n`,
    );
    expect(plan.refused).toEqual([]);
    expect(plan.site.trucks[0]!.plate.ratings.map(({ capacityKg }) => capacityKg)).toEqual([1500, 900]);
    expect(plan.changed.map(({ id, fields }) => [id, fields.map(({ fact }) => fact)])).toEqual([
      ['reach-1', ['plate.ratings']],
      ['counter-1', ['plate.ratings']],
    ]);
    expect(plan.site.trucks[0]!.plate.verticalLoadCentreMm).toBe(600);
  });

  it('comes in whole or not at all: an item left out would make the load lighter', () => {
    const plan = planOf(
      site,
      'items',
      'Load,Item name,Item mass kg,Count\ndrums,drum,250,4\ndrums,lid,x,4\ncrates,crate,80,10\n',
    );
    expect(plan.refused).toMatchObject([
      { row: 2, column: null, expected: { is: 'whole-entry', id: 'drums', row: 3 } },
      { row: 3, column: 'Item mass kg', expected: { is: 'number-in-style' } },
    ]);
    expect(plan.site.loads[1]).toEqual(site.loads[1]);
    expect(plan.site.loads[0]!.items).toEqual([{ name: 'crate', massKg: 80, count: 10 }]);
  });

  it('is refused whole when the model refuses one of its children', () => {
    const plan = planOf(
      site,
      'items',
      'Load,Item name,Item mass kg,Count\ndrums,drum,250,4\ndrums,lid,2,1.5\n',
    );
    expect(plan.refused).toMatchObject([
      { row: 2, expected: { is: 'whole-entry', row: 3 } },
      { row: 3, column: 'Count', came: '"1.5"', expected: { is: 'whole-number' } },
    ]);
  });

  it('is not known whole when the row below it names no entry, as where cells were merged', () => {
    const plan = planOf(
      site,
      'items',
      'Load,Item name,Item mass kg,Count\ndrums,drum,250,4\n,lid,2,4\ncrates,crate,80,10\n',
    );
    expect(refusals(plan)).toEqual([
      [2, null, '"drums"', 'whole-entry'],
      [3, 'Load', 'nothing', 'present'],
    ]);
    expect(plan.site.loads[0]!.items).not.toBeNull();
  });

  it('must exist where its own list makes it', () => {
    expect(refusals(planOf(site, 'plateRatings', `${PLATE}\nreach-9,vertical,3000,600,1500\n`))).toEqual([
      [2, 'Truck', '"reach-9"', 'id-in'],
    ]);
  });

  it('takes its own facts from any of its rows, and refuses two that differ', () => {
    const text =
      'Operator,Operator name,Authorised for,Expires\nop-2,Second,reach,2026-12-31\nop-2,,stacker,\n';
    const plan = planOf(site, 'operators', text);
    expect(plan.refused).toEqual([]);
    expect(plan.site.operators[1]).toEqual({
      id: 'op-2',
      name: 'Second',
      authorisations: [
        { kind: 'reach', expires: '2026-12-31' },
        { kind: 'stacker', expires: null },
      ],
    });
    expect(refusals(planOf(site, 'operators', text.replace('op-2,,', 'op-2,Other,')))).toEqual([
      [2, null, '"op-2"', 'whole-entry'],
      [3, 'Operator name', '"Other"', 'same-as-row'],
    ]);
  });

  it('of one row without any child has none', () => {
    const plan = planOf(
      site,
      'operators',
      'Operator,Operator name,Authorised for,Expires\nop-1,Operator one,,\n',
    );
    expect(plan.site.operators[0]!.authorisations).toEqual([]);
    expect(
      planOf(site, 'items', 'Load,Item name,Item mass kg,Count\ndrums,,,\n').site.loads[1]!.items,
    ).toBeNull();
  });

  it('keeps its children where no column speaks of them', () => {
    const plan = planOf(site, 'operators', 'Operator,Operator name\nop-1,Renamed\n');
    expect(plan.site.operators[0]).toMatchObject({
      name: 'Renamed',
      authorisations: site.operators[0]!.authorisations,
    });
  });
});

describe('checks', () => {
  it('are told apart by truck, time and who checked', () => {
    const plan = planOf(
      site,
      'checks',
      'Truck,Checked at,Checked by,Result,Defects\nreach-1,2026-03-02T06:00:00Z,Operator one,fail,worn tyre; horn\nreach-1,2026-03-03T06:00:00Z,Operator one,pass,\n',
    );
    expect(plan.refused).toEqual([]);
    expect(plan.added).toHaveLength(1);
    expect(plan.changed[0]!.fields).toEqual([
      { fact: 'result', before: 'pass', after: 'fail' },
      { fact: 'defects', before: [], after: ['worn tyre', 'horn'] },
    ]);
  });
});

describe('several lists at once', () => {
  it('come in the order in which they lean on each other', () => {
    const of = (list: Parameters<typeof mappingOf>[0], text: string) => {
      const table = tableOf(text);
      return { list, table, mapping: mappingOf(list, table) };
    };
    const stock = of('stock', 'Location,Load\na1-1-1,bags\na1-1-2,gone\n');
    const loads = of(
      'loads',
      `${LOADS}\nbags,Bags,euro,500,weighed,1200,800,1000\ngone,Gone,none,500,weighed,1200,800,1000\n`,
    );
    const pallets = of(
      'palletTypes',
      'Pallet type,Depth mm,Width mm,Tare kg,Entry height mm\neuro,1200,800,25,100\n',
    );
    const good = planImports(site, [stock, loads, pallets], { mode: 'good-rows-only' });
    expect(
      good.plans.map(({ list, refused }) => [list, refused.map(({ row, expected }) => [row, expected.is])]),
    ).toEqual([
      ['palletTypes', []],
      ['loads', [[3, 'id-in']]],
      ['stock', [[3, 'id-in']]],
    ]);
    expect(good.site.stock).toEqual([{ location: 'a1-1-1', load: 'bags' }]);
    const all = planImports(site, [stock, loads, pallets]);
    expect(all.applies).toBe(false);
    expect(all.site).toBe(site);
  });
});
