import {
  type Cell,
  FileRefused,
  READ_LIMITS,
  type ReadLimits,
  type ReadNote,
  type ReadOptions,
  report,
  type Table,
  tableOf,
} from './table.ts';
import { openParts, type Parts, walkXml } from './xlsx-parts.ts';
import { isoOfDateNumber, type NumberMeaning, readStyles } from './xlsx-styles.ts';

/**
 * Reads one sheet of a spreadsheet file (SpreadsheetML, ECMA-376 part 1, 18): values only. A formula gives the value
 * that was stored with it, an error cell stays an error, a date becomes ISO text, a number kept as text stays text.
 */
export function readXlsx(bytes: Uint8Array, file: string, options: ReadOptions = {}): Table {
  const limits = options.limits ?? READ_LIMITS;
  const parts = openParts(bytes, limits);
  const book = readWorkbook(parts);
  const chosen =
    options.sheet === undefined
      ? (book.sheets.find((sheet) => !sheet.hidden) ?? book.sheets[0])
      : book.sheets.find((sheet) => sheet.name === options.sheet);
  if (chosen === undefined) {
    const sheets = book.sheets.map((sheet) => sheet.name);
    throw new FileRefused({ why: 'no-such-sheet', sheet: options.sheet ?? '', sheets });
  }
  const strings = readSharedStrings(parts.read(book.stringsPart));
  const styles = readStyles(parts.read(book.stylesPart));
  const part = parts.read(chosen.part);
  if (part === null) throw new FileRefused({ why: 'damaged', detail: `no part ${chosen.part}` });
  const sheet = readSheet(part, { strings, styles, from1904: book.from1904 }, limits, options);
  const notes: ReadNote[] = [];
  const left = book.sheets.filter((other) => other !== chosen).map((other) => other.name);
  if (left.length > 0) notes.push({ note: 'other-sheets', read: chosen.name, left });
  if (chosen.hidden) notes.push({ note: 'hidden-sheet', sheet: chosen.name });
  if (sheet.formulas > 0) {
    notes.push({ note: 'formulas', count: sheet.formulas, firstRow: sheet.firstFormulaRow });
  }
  if (sheet.times) notes.push({ note: 'dates-as-utc' });
  const table = tableOf(sheet.records, sheet.numbers, options);
  return { file, sheet: chosen.name, ...table, notes };
}

type Sheet = { name: string; part: string; hidden: boolean };
type Workbook = { sheets: Sheet[]; from1904: boolean; stringsPart: string; stylesPart: string };

function readWorkbook(parts: Parts): Workbook {
  const root = readRelations(parts, '', '_rels/.rels');
  const main =
    root.find((relation) => relation.type.endsWith('/officeDocument'))?.target ?? 'xl/workbook.xml';
  const part = parts.read(main);
  if (part === null) throw new FileRefused({ why: 'not-a-spreadsheet' });
  const folder = main.slice(0, main.lastIndexOf('/') + 1);
  const relations = readRelations(parts, folder, `${folder}_rels/${main.slice(folder.length)}.rels`);
  const target = (type: string, otherwise: string) =>
    relations.find((relation) => relation.type.endsWith(`/${type}`))?.target ?? `${folder}${otherwise}`;
  const sheets: Sheet[] = [];
  let from1904 = false;
  walkXml(part, {
    open(name, attributes) {
      if (name === 'workbookPr') from1904 = /^(1|true|on)$/.test(attributes.date1904 ?? '');
      if (name !== 'sheet') return;
      const idKey = Object.keys(attributes).find((key) => key.endsWith(':id')) ?? 'r:id';
      const relation = relations.find((entry) => entry.id === attributes[idKey]);
      // Chart and dialogue sheets hold no cells.
      if (relation === undefined || !relation.type.endsWith('/worksheet')) return;
      const hidden = attributes.state !== undefined && attributes.state !== 'visible';
      sheets.push({ name: attributes.name ?? '', part: relation.target, hidden });
    },
  });
  if (sheets.length === 0) throw new FileRefused({ why: 'not-a-spreadsheet' });
  const stringsPart = target('sharedStrings', 'sharedStrings.xml');
  return { sheets, from1904, stringsPart, stylesPart: target('styles', 'styles.xml') };
}

type Relation = { id: string; type: string; target: string };

function readRelations(parts: Parts, folder: string, name: string): Relation[] {
  const relations: Relation[] = [];
  const part = parts.read(name);
  if (part === null) return relations;
  walkXml(part, {
    open(tag, attributes) {
      if (tag !== 'Relationship' || attributes.TargetMode === 'External') return;
      const to = attributes.Target ?? '';
      const target = to.startsWith('/') ? to.slice(1) : `${folder}${to}`;
      relations.push({ id: attributes.Id ?? '', type: attributes.Type ?? '', target });
    },
  });
  return relations;
}

/** The texts that cells share, in order. Phonetic readings (rPh) are not part of the text. */
function readSharedStrings(part: Uint8Array | null): string[] {
  const strings: string[] = [];
  if (part === null) return strings;
  let text = '';
  let inText = false;
  let inPhonetic = false;
  walkXml(part, {
    open(name) {
      if (name === 'si') text = '';
      else if (name === 'rPh') inPhonetic = true;
      else if (name === 't') inText = !inPhonetic;
    },
    close(name) {
      if (name === 'si') strings.push(unescapeText(text));
      else if (name === 'rPh') inPhonetic = false;
      else if (name === 't') inText = false;
    },
    text(piece) {
      if (inText) text += piece;
    },
  });
  return strings;
}

/** _x000D_ stands for a character that XML may not hold (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */
function unescapeText(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}

type Book = { strings: string[]; styles: NumberMeaning[]; from1904: boolean };

function readSheet(part: Uint8Array, book: Book, limits: ReadLimits, options: ReadOptions) {
  const records: Cell[][] = [];
  const numbers: number[] = [];
  let record: Cell[] = [];
  let row = 0;
  let column = -1;
  let type = 'n';
  let style: NumberMeaning | undefined;
  let value = '';
  let collecting = false;
  let inPhonetic = false;
  let cells = 0;
  let formulas = 0;
  let firstFormulaRow = 0;
  let times = false;
  walkXml(part, {
    open(name, attributes) {
      if (name === 'c') {
        column = attributes.r === undefined ? column + 1 : columnOf(attributes.r);
        if (column >= limits.columns) {
          throw new FileRefused({ why: 'too-many-columns', columns: column + 1, limit: limits.columns });
        }
        type = attributes.t ?? 'n';
        style = attributes.s === undefined ? book.styles[0] : book.styles[Number(attributes.s)];
        value = '';
      } else if (name === 'v') collecting = true;
      else if (name === 't') collecting = !inPhonetic;
      else if (name === 'rPh') inPhonetic = true;
      else if (name === 'f') {
        formulas++;
        if (firstFormulaRow === 0) firstFormulaRow = row;
      } else if (name === 'row') {
        row = attributes.r === undefined ? row + 1 : Number(attributes.r);
        record = [];
        column = -1;
      }
    },
    close(name) {
      if (name === 'v' || name === 't') collecting = false;
      else if (name === 'rPh') inPhonetic = false;
      else if (name === 'row') {
        // Sheets may be formatted down to their last row; rows without a value take no place.
        if (record.every((cell) => cell === null)) return;
        cells += record.length;
        if (cells > limits.cells) throw new FileRefused({ why: 'too-many-cells', limit: limits.cells });
        if (records.length > limits.rows) throw new FileRefused({ why: 'too-many-rows', limit: limits.rows });
        records.push(record);
        numbers.push(row);
      } else if (name === 'c') {
        const cell = cellOf(type, value, style, book);
        if (style?.means === 'date' && type === 'n' && String(cell).length > 10) times = true;
        while (record.length < column) record.push(null);
        record[column] = cell;
      }
    },
    text(piece) {
      if (collecting) value += piece;
    },
    piece: (done, total) => report(options.watch, 'reading', done, total),
  });
  return { records, numbers, formulas, firstFormulaRow, times };
}

/** One cell's value by its type (ECMA-376 part 1, 18.18.11, ST_CellType). */
function cellOf(type: string, value: string, style: NumberMeaning | undefined, book: Book): Cell {
  if (type === 's') return value === '' ? null : (book.strings[Number(value)] ?? null);
  if (type === 'inlineStr' || type === 'str') return unescapeText(value);
  if (value === '') return null;
  if (type === 'b') return value === '1' || value === 'true';
  if (type === 'e') return { error: value };
  if (type === 'd') return value;
  const number = Number(value);
  if (!Number.isFinite(number)) return { error: value };
  if (style?.means === 'date') return isoOfDateNumber(number, book.from1904) ?? { error: value };
  if (style?.means === 'padded' && Number.isInteger(number)) return value.padStart(style.digits, '0');
  // A spreadsheet reckons with fifteen digits; what it stored beyond them (2438.3999999999996) is not what it showed.
  return Number.isInteger(number) ? number : Number(number.toPrecision(15));
}

/** "C12" is column 2. */
function columnOf(reference: string): number {
  let column = 0;
  for (let i = 0; i < reference.length; i++) {
    const code = reference.charCodeAt(i);
    if (code < 65 || code > 90) break;
    column = column * 26 + (code - 64);
  }
  if (column === 0 || column > 16_384) throw new FileRefused({ why: 'damaged', detail: `cell ${reference}` });
  return column - 1;
}
