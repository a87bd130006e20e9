import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../lib/import/read-table.ts';
import { READ_LIMITS, type ReadOptions, type Table } from '../../lib/import/table.ts';
import { isoOfDateNumber } from '../../lib/import/xlsx-styles.ts';
import { makeSpreadsheet, withForgedSize } from './spreadsheet-builder.ts';

const HEADER =
  '<row r="1"><c r="A1" t="inlineStr"><is><t>Id</t></is></c><c r="B1" t="inlineStr"><is><t>What</t></is></c></row>';

async function tableOf(bytes: Uint8Array, options?: ReadOptions): Promise<Table> {
  const reading = await readTable(bytes, 'list.xlsx', options);
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusal));
  return reading.table;
}

async function refusalOf(bytes: Uint8Array, options?: ReadOptions) {
  const reading = await readTable(bytes, 'list.xlsx', options);
  return reading.ok ? 'read' : reading.refusal;
}

/** The cell B2 of a list that has this cell there. */
async function cellOf(xml: string, parts: Partial<Parameters<typeof makeSpreadsheet>[0]> = {}) {
  const table = await tableOf(
    makeSpreadsheet({ sheet: `${HEADER}<row r="2"><c r="A2"><v>1</v></c>${xml}</row>`, ...parts }),
  );
  return table.rows[0]![1];
}

describe('a cell of a spreadsheet', () => {
  it.each([
    ['a number', '<c r="B2"><v>2400.5</v></c>', 2400.5],
    [
      'a number as stored beyond fifteen digits, as it was shown',
      '<c r="B2"><v>2438.3999999999996</v></c>',
      2438.4,
    ],
    [
      'a whole number of more digits than that, untouched',
      '<c r="B2"><v>9007199254740991</v></c>',
      9007199254740991,
    ],
    ['a number with an exponent', '<c r="B2"><v>1.2E3</v></c>', 1200],
    ['a number kept as text stays text', '<c r="B2" t="s"><v>0</v></c>', '02400'],
    ['rich text, joined, without its phonetic reading', '<c r="B2" t="s"><v>1</v></c>', 'Rack A'],
    [
      'a text with an escaped line break and a real ampersand',
      '<c r="B2" t="s"><v>2</v></c>',
      'one\rtwo & three',
    ],
    ['a text in place', '<c r="B2" t="inlineStr"><is><t>here</t></is></c>', 'here'],
    ['true', '<c r="B2" t="b"><v>1</v></c>', true],
    ['an error stays an error', '<c r="B2" t="e"><v>#REF!</v></c>', { error: '#REF!' }],
    ['a formula gives the value stored with it', '<c r="B2"><f>A2*2</f><v>2</v></c>', 2],
    ['a formula that gives a text', '<c r="B2" t="str"><f>"x"&amp;"y"</f><v>xy</v></c>', 'xy'],
    ['a formula without a stored value is blank', '<c r="B2"><f>A2*2</f></c>', null],
    ['an ISO date', '<c r="B2" t="d"><v>2026-03-02</v></c>', '2026-03-02'],
    ['a cell without a reference stands right of the one before', '<c><v>7</v></c>', 7],
    ['a text that the table of texts does not have is blank', '<c r="B2" t="s"><v>99</v></c>', null],
  ])('%s', async (_, xml, expected) => {
    const strings = [
      '<t>02400</t>',
      '<r><t>Rack </t></r><r><t>A</t></r><rPh sb="0" eb="1"><t>rakku</t></rPh>',
      '<t>one_x000D_two &amp; three</t>',
    ];
    expect(await cellOf(xml, { strings })).toEqual(expected);
  });

  // From memory of ECMA-376 part 1, 18.17.4.1: 1 January 2008 is number 39448 in the 1900 system, 37986 in the 1904 one.
  it.each([
    ['a built-in date format', [0, 14], 39448, false, '2008-01-01'],
    ['the same date counted from 1904', [0, 14], 37986, true, '2008-01-01'],
    ['a built-in format with a time', [0, 22], 39448.25, false, '2008-01-01T06:00:00Z'],
    ['a format of its own with day and month', [0, 'dd\\-mm\\-yyyy'], 39448, false, '2008-01-01'],
    ['a format with elapsed hours', [0, '[h]:mm'], 39448.5, false, '2008-01-01T12:00:00Z'],
    ['letters in quotes and colours make no date', [0, '[Red]0.0" days m"'], 39448, false, 39448],
    ['General makes no date', [0, 'General'], 39448, false, 39448],
    ['a money format makes no date', [0, '[$kr-41D] #,##0'], 39448, false, 39448],
    ['leading zeros of the format belong to the text', [0, '00000'], 42, false, '00042'],
    ['more digits than zeros', [0, '000'], 39448, false, '39448'],
  ])('%s', async (_, styles, number, date1904, expected) => {
    expect(
      await cellOf(`<c r="B2" s="1"><v>${number}</v></c>`, {
        styles: styles as (number | string)[],
        date1904,
      }),
    ).toBe(expected);
  });

  it('a date number before the day that never was is not guessed at', async () => {
    expect(await cellOf('<c r="B2" s="1"><v>60</v></c>', { styles: [0, 14] })).toEqual({ error: '60' });
    expect(isoOfDateNumber(61, false)).toBe('1900-03-01');
    expect(isoOfDateNumber(0, true)).toBe('1904-01-01');
    expect(isoOfDateNumber(2_958_465, false)).toBe('9999-12-31');
    expect(isoOfDateNumber(2_958_466, false)).toBeNull();
    expect(isoOfDateNumber(Number.NaN, false)).toBeNull();
  });
});

describe('a sheet', () => {
  it('keeps the row numbers that the spreadsheet shows, over blank rows and rows left out', async () => {
    const sheet =
      '<row r="3"><c r="B3" t="inlineStr"><is><t>Id</t></is></c><c r="D3" t="inlineStr"><is><t>Kg</t></is></c></row><row r="4"/><row r="9"><c r="D9"><v>5</v></c></row><row><c r="B10"><v>6</v></c></row>';
    const table = await tableOf(makeSpreadsheet({ sheet }));
    expect(table).toMatchObject({
      header: ['', 'Id', '', 'Kg'],
      headerRow: 3,
      rowNumbers: [9, 10],
      rows: [
        [null, null, null, 5],
        [null, 6],
      ],
    });
  });

  it('is the first visible one unless another is named, and the others are told of', async () => {
    const bytes = makeSpreadsheet({
      sheet: `${HEADER}<row r="2"><c r="A2"><v>1</v></c></row>`,
      before: [{ name: 'Lookup', state: 'hidden' }],
    });
    const table = await tableOf(bytes);
    expect(table.sheet).toBe('List');
    expect(table.notes).toContainEqual({ note: 'other-sheets', read: 'List', left: ['Lookup'] });
    expect(await refusalOf(bytes, { sheet: 'Lookup' })).toEqual({ why: 'empty' });
    expect(await refusalOf(bytes, { sheet: 'Gone' })).toEqual({
      why: 'no-such-sheet',
      sheet: 'Gone',
      sheets: ['Lookup', 'List'],
    });
  });

  it('tells of formulas and of times without a zone', async () => {
    const sheet = `${HEADER}<row r="2"><c r="A2"><f>1+1</f><v>2</v></c><c r="B2" s="1"><v>39448.5</v></c></row>`;
    const { notes } = await tableOf(makeSpreadsheet({ sheet, styles: [0, 22] }));
    expect(notes).toEqual([{ note: 'formulas', count: 1, firstRow: 2 }, { note: 'dates-as-utc' }]);
  });
});

describe('a file that is refused', () => {
  const good = makeSpreadsheet({ sheet: `${HEADER}<row r="2"><c r="A2"><v>1</v></c></row>` });
  const limits = { ...READ_LIMITS };

  it.each([
    [
      'an old or locked spreadsheet',
      new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 1, 2]),
      'old-or-locked-spreadsheet',
    ],
    ['an empty file', new Uint8Array(), 'empty'],
    ['a zip that is none', strToU8('PK not a zip at all, only two letters of one'), 'damaged'],
    ['a zip without a workbook', zipSync({ 'readme.txt': strToU8('hello') }), 'not-a-spreadsheet'],
    ['a file cut short', good.slice(0, good.length - 40), 'damaged'],
    ['a sheet that is not well-formed', makeSpreadsheet({ sheet: '<row><c>' }), 'damaged'],
    [
      'a cell at no place',
      makeSpreadsheet({ sheet: '<row r="1"><c r="ZZZZ1"><v>1</v></c></row>' }),
      'damaged',
    ],
    [
      'a document type, whose entities could swell',
      makeSpreadsheet({
        sheet: HEADER,
        others: {
          'xl/sharedStrings.xml': strToU8(
            '<!DOCTYPE sst [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><sst><si><t>&b;</t></si></sst>',
          ),
        },
      }),
      'damaged',
    ],
    [
      'an entity that is not XML’s own',
      makeSpreadsheet({ sheet: HEADER, strings: ['<t>&swell;</t>'] }),
      'damaged',
    ],
  ])('%s', async (_, bytes, why) => {
    expect(await refusalOf(bytes)).toMatchObject({ why });
  });

  it('one byte past the limit of the file, not one at it', async () => {
    expect(await refusalOf(good, { limits: { ...limits, fileBytes: good.length - 1 } })).toMatchObject({
      why: 'too-large',
    });
    expect(await refusalOf(good, { limits: { ...limits, fileBytes: good.length } })).toBe('read');
    expect(await refusalOf(good, { limits: { ...limits, fileBytes: good.length + 1 } })).toBe('read');
  });

  it('rows and columns past their limits, not those at them', async () => {
    const rows = [2, 3, 4].map((row) => `<row r="${row}"><c r="A${row}"><v>1</v></c></row>`).join('');
    const bytes = makeSpreadsheet({ sheet: HEADER + rows });
    expect(await refusalOf(bytes, { limits: { ...limits, rows: 2 } })).toEqual({
      why: 'too-many-rows',
      limit: 2,
    });
    expect(await refusalOf(bytes, { limits: { ...limits, rows: 3 } })).toBe('read');
    expect(await refusalOf(bytes, { limits: { ...limits, rows: 4 } })).toBe('read');
    expect(await refusalOf(bytes, { limits: { ...limits, columns: 1 } })).toEqual({
      why: 'too-many-columns',
      columns: 2,
      limit: 1,
    });
    expect(await refusalOf(bytes, { limits: { ...limits, columns: 2 } })).toBe('read');
  });

  it('cells past their limit, the blanks before a cell far to the right among them', async () => {
    const bytes = makeSpreadsheet({ sheet: `${HEADER}<row r="2"><c r="J2"><v>1</v></c></row>` });
    expect(await refusalOf(bytes, { limits: { ...limits, cells: 11 } })).toEqual({
      why: 'too-many-cells',
      limit: 11,
    });
    expect(await refusalOf(bytes, { limits: { ...limits, cells: 12 } })).toBe('read');
    expect(await refusalOf(bytes, { limits: { ...limits, cells: 13 } })).toBe('read');
  });

  it('but not rows that are only formatted', async () => {
    const formatted = Array.from(
      { length: 50 },
      (_, at) => `<row r="${at + 3}" s="1"><c r="A${at + 3}" s="0"/></row>`,
    ).join('');
    const bytes = makeSpreadsheet({ sheet: `${HEADER}<row r="2"><c r="A2"><v>1</v></c></row>${formatted}` });
    expect(await refusalOf(bytes, { limits: { ...limits, rows: 1 } })).toBe('read');
  });

  it('a bomb: small in the file, past the limit unzipped, and never unzipped', async () => {
    const blanks = ' '.repeat(30 * 1024 * 1024);
    const bomb = makeSpreadsheet({ sheet: HEADER + blanks });
    expect(bomb.length).toBeLessThan(100_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await refusalOf(bomb, { limits: { ...limits, unzippedBytes: 20 * 1024 * 1024 } })).toMatchObject({
      why: 'unzipped-too-large',
      limit: 20 * 1024 * 1024,
    });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(5 * 1024 * 1024);
    expect(await refusalOf(bomb)).toBe('read');
  });

  it('a bomb that lies about its size: cut short where it said it would end', async () => {
    const bomb = withForgedSize(
      makeSpreadsheet({ sheet: HEADER + ' '.repeat(30 * 1024 * 1024) }),
      'xl/worksheets/sheet0.xml',
      1000,
    );
    const before = process.memoryUsage().arrayBuffers;
    expect(await refusalOf(bomb)).toMatchObject({ why: 'damaged' });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(5 * 1024 * 1024);
  });
});
