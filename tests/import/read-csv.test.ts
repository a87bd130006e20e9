import { describe, expect, it } from 'vitest';
import { readTable } from '../../lib/import/read-table.ts';
import { READ_LIMITS, type ReadOptions, type Table } from '../../lib/import/table.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);

function utf16(text: string, bigEndian: boolean): Uint8Array {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), !bigEndian);
  return bytes;
}

async function tableOf(bytes: Uint8Array, options?: ReadOptions): Promise<Table> {
  const reading = await readTable(bytes, 'list.csv', options);
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusal));
  return reading.table;
}

async function refusalOf(bytes: Uint8Array, options?: ReadOptions) {
  const reading = await readTable(bytes, 'list.csv', options);
  return reading.ok ? 'read' : reading.refusal;
}

describe('the encoding', () => {
  const text = 'Id;Näme\r\nA1;Größe 5 “x”\r\n';
  it.each([
    ['UTF-8', utf8(text)],
    ['UTF-8 with a byte order mark', utf8(`\ufeff${text}`)],
    ['UTF-16, low byte first', utf16(`\ufeff${text}`, false)],
    ['UTF-16, high byte first', utf16(`\ufeff${text}`, true)],
  ])('%s is read without a word', async (_, bytes) => {
    const table = await tableOf(bytes);
    expect(table.header).toEqual(['Id', 'Näme']);
    expect(table.rows).toEqual([['A1', 'Größe 5 “x”']]);
    expect(table.notes).toEqual([{ note: 'delimiter', delimiter: ';' }]);
  });

  it('bytes that are not UTF-8 are read as windows-1252, and it is said', async () => {
    // 0xE4 is ä, 0x80 the euro sign, 0x9C oe in windows-1252 (WHATWG encoding standard, index windows-1252).
    const table = await tableOf(
      new Uint8Array([0x49, 0x64, 0x2c, 0x4e, 0xe4, 0x6d, 0x65, 0x0a, 0x31, 0x2c, 0x80, 0x9c]),
    );
    expect(table.header).toEqual(['Id', 'Näme']);
    expect(table.rows).toEqual([['1', '€œ']]);
    expect(table.notes).toContainEqual({ note: 'encoding-guessed', encoding: 'windows-1252' });
  });

  it('a UTF-8 mark before bytes that are not UTF-8 is refused as damaged', async () => {
    expect(await refusalOf(new Uint8Array([0xef, 0xbb, 0xbf, 0x41, 0xff, 0xfe]))).toMatchObject({
      why: 'damaged',
    });
  });

  it('NUL characters mean that it is no text', async () => {
    expect(await refusalOf(utf16('Id,Name\n1,x\n', false))).toEqual({ why: 'binary' });
  });
});

describe('the delimiter', () => {
  it.each([
    ['commas', 'a,b,c\n1,2,3\n', ','],
    ['semicolons with decimal commas', 'a;b;c\n1,5;2,5;3,5\n1,25;2;3\n', ';'],
    ['tabs with commas in the texts', 'a\tb\n1, 2\t3, 4\n5\t6\n', '\t'],
    ['commas with semicolons in quotes', 'a,b\n"1;2;3","4;5"\n"6;7;8",9\n', ','],
    ['a comma inside one quoted header', '"Capacity, kg";b;c\n1;2;3\n', ';'],
    ['semicolons under a line of title', 'Locations, as of today\na;b\n1;2\n', ';'],
    ['one column only', 'a\n1\n2\n', ','],
  ])('%s', async (_, text, delimiter) => {
    expect((await tableOf(utf8(text))).notes).toEqual([{ note: 'delimiter', delimiter }]);
  });

  it('is the one of a first line that names it, which takes no row number', async () => {
    const table = await tableOf(utf8('sep=|\r\na|b\r\n1|2\r\n'));
    expect(table).toMatchObject({ header: ['a', 'b'], headerRow: 1, rows: [['1', '2']], rowNumbers: [2] });
  });

  it('is the one that the person chose', async () => {
    expect((await tableOf(utf8('a;b,c\n1;2,3\n'), { delimiter: ';' })).header).toEqual(['a', 'b,c']);
  });
});

describe('the rows', () => {
  it('count as a spreadsheet counts: a line break in quotes starts none, a blank line takes one', async () => {
    const table = await tableOf(utf8('\r\nid,name\r\n1,"two\r\nlines, and a ""quote"""\r\n\r\n,\r\n2,x\r\n'));
    expect(table.headerRow).toBe(2);
    expect(table.rows).toEqual([
      ['1', 'two\r\nlines, and a "quote"'],
      ['2', 'x'],
    ]);
    expect(table.rowNumbers).toEqual([3, 6]);
  });

  it.each([
    ['never closed', 'id,name\n1,"open\n2,x\n', 2],
    ['closed in the middle', 'id,name\n1,x\n2,"y" z\n3,w\n', 3],
  ])('a quotation mark %s refuses the file and names the row', async (_, text, row) => {
    expect(await refusalOf(utf8(text))).toEqual({ why: 'quotes', row });
  });

  it('a quotation mark inside an unquoted text is a mark of inches', async () => {
    expect((await tableOf(utf8('id,size\n1,96"\n'))).rows).toEqual([['1', '96"']]);
  });

  it('begin under the header row that the person chose, where titles stand above it', async () => {
    const text = 'Locations\r\nas of today\r\n\r\nid,name\r\n1,x\r\n';
    expect((await tableOf(utf8(text))).header).toEqual(['Locations']);
    expect(await tableOf(utf8(text), { headerRow: 4 })).toMatchObject({
      header: ['id', 'name'],
      headerRow: 4,
      rows: [['1', 'x']],
      rowNumbers: [5],
    });
    expect(await refusalOf(utf8(text), { headerRow: 3 })).toEqual({ why: 'no-header' });
    expect(await refusalOf(utf8(text), { headerRow: 99 })).toEqual({ why: 'no-such-row', row: 99 });
  });

  it('past the limit refuse the file, at it not', async () => {
    const limits = { ...READ_LIMITS, rows: 2 };
    const of = (count: number) => utf8(`id,name\n${'1,x\n'.repeat(count)}`);
    expect(await refusalOf(of(1), { limits })).toBe('read');
    expect(await refusalOf(of(2), { limits })).toBe('read');
    expect(await refusalOf(of(3), { limits })).toEqual({ why: 'too-many-rows', limit: 2 });
  });

  it.each([
    ['only blank lines', '\n\n  \n', { why: 'empty' }],
    [
      'columns past the limit',
      `${'x,'.repeat(256)}x\n1\n`,
      { why: 'too-many-columns', columns: 257, limit: 256 },
    ],
  ])('%s: refused', async (_, text, refusal) => {
    expect(await refusalOf(utf8(text))).toEqual(refusal);
  });
});
