import { describe, expect, it } from 'vitest';
import {
  boundTo,
  changeUse,
  giveColumn,
  giveConstant,
  giveNothing,
  sourceOf,
  unusedColumns,
} from '../../app/import/edit-mapping.ts';
import { guessList } from '../../app/import/guess-list.ts';
import { findKept, keepUsed, readKept } from '../../app/import/kept-mapping.ts';
import { factLabel, valueWords } from '../../app/import/list-words.ts';
import { readConstant, readSamples } from '../../app/import/read-sample.ts';
import { exportList } from '../../lib/import/export-lists.ts';
import { guessMapping, type MappingGuess, neededFacts } from '../../lib/import/guess-mapping.ts';
import { LIST_NAMES, type ListName } from '../../lib/import/lists.ts';
import { headerSignature, type Mapping, mappingSchema } from '../../lib/import/mapping.ts';
import { readTable } from '../../lib/import/read-table.ts';
import type { Table } from '../../lib/import/table.ts';
import { makeSite } from '../site-builder.ts';

async function tableOf(text: string, file = 'list.csv'): Promise<Table> {
  const reading = await readTable(new TextEncoder().encode(text), file, {});
  if (!reading.ok) throw new Error(reading.refusal.why);
  return reading.table;
}

function guesses(table: Table) {
  return Object.fromEntries(LIST_NAMES.map((list) => [list, guessMapping(list, table)])) as Record<
    ListName,
    MappingGuess
  >;
}

function seen(table: Table) {
  return { header: table.header, firstRows: table.rows.map((cells) => ({ cells })) };
}

const OWN = makeSite({
  stock: [{ location: 'a1-0-1', load: 'crates' }],
  loads: [{ ...makeSite().loads[0]!, items: [{ name: 'box', massKg: 2, count: 3 }] }],
});

describe('the list that a file is', () => {
  it.each(LIST_NAMES)('is known of our own export of %s, whatever the file is called', async (list) => {
    const table = await tableOf(exportList(OWN, list));
    expect(guessList('download.csv', guesses(table))).toBe(list);
  });

  it.each([
    ['Location,SKU', 'stock'],
    ['SKU,Description,Weight (kg),Length (mm),Width (mm),Height (mm)', 'loads'],
    ['Aisle,Clear width (mm)', 'aisles'],
  ] as const)('is told by the headers %s', async (header, list) => {
    expect(guessList('export.csv', guesses(await tableOf(`${header}\n`)))).toBe(list);
  });

  it('is told by the file name where the headers leave it open', async () => {
    const all = guesses(await tableOf('Truck,Note\nT1,x\n'));
    expect(guessList('Trucks 2026.csv', all)).toBe('trucks');
    expect(guessList('walk-rounds.csv', all)).toBe('checks');
  });

  it('is not known where no header names a fact', async () => {
    expect(guessList('x.csv', guesses(await tableOf('foo,bar\n1,2\n')))).toBeNull();
  });
});

describe('a mapping that is mended', () => {
  const empty: Mapping = mappingSchema.parse({ list: 'loads', columns: [] });

  it('reads a column in the unit of its header and in the way its cells are written', async () => {
    const table = await tableOf('SKU;Gross (lb);Len\nA;1.234,5;47,24\n');
    const given = giveColumn(giveColumn(empty, 'grossKg', 1, seen(table)), 'depthMm', 2, seen(table));
    expect(given.columns).toEqual([
      { header: 'Gross (lb)', nth: 0, fact: 'grossKg', unit: 'lb', numbers: { decimal: ',', group: '.' } },
      { header: 'Len', nth: 0, fact: 'depthMm', unit: 'mm', numbers: { decimal: ',', group: '' } },
    ]);
    // 1234.5 lb x 0.45359237 = 559.959780765 kg; 47.24 in x 25.4 = 1199.896 mm (exact definitions)
    const [gross] = readSamples(given, given.columns[0]!, seen(table));
    expect(gross).toMatchObject({
      came: '1.234,5',
      ok: true,
      read: expect.stringMatching(/^559\.959780765\skg$/),
    });
    const inches = changeUse(given, 'depthMm', { unit: 'in' });
    const [depth] = readSamples(inches, inches.columns[1]!, seen(table));
    expect(depth).toMatchObject({ ok: true, read: expect.stringMatching(/^1\s199\.896\smm$/) });
  });

  it('tells columns of one name apart by their order', async () => {
    const table = await tableOf('Height,Height\n1,2\n');
    const given = giveColumn(empty, 'heightMm', 1, seen(table));
    expect(given.columns[0]).toMatchObject({ header: 'Height', nth: 1 });
    expect(readSamples(given, given.columns[0]!, seen(table))[0]).toMatchObject({ came: '2' });
  });

  it('takes a fact from one place only', async () => {
    const table = await tableOf('Basis\nOK\n');
    const column = giveColumn(empty, 'massBasis', 0, seen(table));
    const constant = giveConstant(column, 'massBasis', 'weighed');
    expect(sourceOf(constant, 'massBasis')).toEqual({ from: 'constant', text: 'weighed' });
    expect(constant.columns).toEqual([]);
    expect(neededFacts(constant)).not.toContain('massBasis');
    expect(sourceOf(giveColumn(constant, 'massBasis', 0, seen(table)), 'massBasis')).toMatchObject({
      from: 'column',
    });
    expect(giveNothing(constant, 'massBasis')).toEqual(empty);
    expect(unusedColumns(column, table.header)).toEqual([]);
    expect(unusedColumns(constant, table.header)).toEqual(['Basis']);
  });

  it('shows a cell that cannot be read before those that can, with the reason', async () => {
    const table = await tableOf('Basis\nweighed\ndeclared\ncalculated\nOK\n');
    const given = giveColumn(empty, 'massBasis', 0, seen(table));
    expect(readSamples(given, given.columns[0]!, seen(table)).map(({ came, ok }) => [came, ok])).toEqual([
      ['OK', false],
      ['weighed', true],
      ['declared', true],
    ]);
    const words = changeUse(given, 'massBasis', { words: { ok: 'weighed' } });
    expect(readSamples(words, words.columns[0]!, seen(table)).every(({ ok }) => ok)).toBe(true);
  });

  it('reads a value for every row as a cell would be read, nothing while nothing is typed', () => {
    expect(readConstant(empty, 'heightMm', ' ')).toBeNull();
    expect(readConstant(empty, 'heightMm', '1200')).toMatchObject({ ok: true });
    expect(readConstant(empty, 'heightMm', '-1')).toMatchObject({ ok: false });
  });
});

describe('a mapping that was kept', () => {
  const mapping: Mapping = mappingSchema.parse({
    list: 'loads',
    columns: [
      { header: 'SKU', fact: 'id' },
      { header: 'Gross_Mass', fact: 'grossKg', unit: 'lb' },
    ],
  });
  const used = {
    signature: headerSignature(['SKU', 'Gross_Mass']),
    mapping,
    usedBy: 'x',
    usedAt: '2026-03-02',
  };

  it('is found for the same headers in another order and spelling, bound to them', () => {
    const found = findKept([used], ['GROSS MASS', 'sku'], LIST_NAMES);
    expect(found?.mapping.columns.map(({ header }) => header)).toEqual(['sku', 'GROSS MASS']);
    expect(findKept([used], ['GROSS MASS', 'sku', 'more'], LIST_NAMES)).toBeNull();
    expect(findKept([used], ['GROSS MASS', 'sku'], ['stock'])).toBeNull();
  });

  it('takes the place of the one before under the same header, and is found first', () => {
    const later = { ...used, usedAt: '2026-03-03' };
    const other = { ...used, signature: 'other' };
    expect(keepUsed([other, used], later)).toEqual([later, other]);
  });

  it('keeps a column that the file has lost, for the person to see', () => {
    expect(boundTo(mapping, ['SKU']).columns[1]).toMatchObject({ header: 'Gross_Mass' });
  });

  it('is passed over when it can no longer be read', () => {
    expect(readKept([used, { ...used, mapping: { list: 'gone' } }])).toEqual([used]);
  });
});

describe('what is shown of a value', () => {
  it.each([
    ['trucks', 'maxLiftMm', 6000, /^6\s000\smm$/],
    ['loads', 'grossKg', 0.1, /^0\.1\skg$/],
    ['trucks', 'speeds.travelMps', 2.5, /^2\.5\sm\/s$/],
    ['aisles', 'sprinklerMm', 'none', /^none$/],
    ['locations', 'decked', false, /^no$/],
    ['loads', 'grossKg', null, /^not known$/],
    ['checks', 'defects', ['Chain', 'Horn'], /^Chain; Horn$/],
    ['loads', 'items', [{ name: 'box', massKg: 2, count: 3 }], /^1 row: box, 2\skg, 3$/],
    ['loads', 'items', [], /^none$/],
  ] as const)('of %s, %s: %j', (list, fact, value, words) => {
    expect(valueWords(list, fact, value as never)).toMatch(words);
  });

  it('names facts as the export does, parts of racks and children by themselves', () => {
    expect(factLabel('locations', 'beamTopMm')).toBe('Beam top');
    expect(factLabel('locations', 'frameCondition')).toBe('Frame condition');
    expect(factLabel('plateRatings', 'plate.ratings')).toBe('Ratings');
  });
});
