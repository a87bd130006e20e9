import { unguardCell } from './cell-guard.ts';
import { splitTexts } from './cell-list.ts';
import type { Fact } from './lists.ts';
import type { ColumnUse, Mapping } from './mapping.ts';
import { cutUnit, inModelUnits, PLAIN_NUMBERS, plainDecimal, unitFits } from './read-number.ts';
import { readTime } from './read-time.ts';
import type { RowExpected } from './row-refusal.ts';
import { type Cell, cellText } from './table.ts';

/** A fact as a cell gave it: null where the cell says that it is not known. */
export type FactValue = string | number | boolean | string[] | null;
export type CellReading = { ok: true; value: FactValue } | { ok: false; expected: RowExpected };

/** Reads the cells of one column: what is the same for all of them is worked out once. */
export function cellReader(
  fact: Fact,
  use: Pick<ColumnUse, 'unit' | 'numbers' | 'times' | 'words'>,
  mapping: Pick<Mapping, 'nullWords' | 'trim'>,
): (cell: Cell | undefined) => CellReading {
  const nothing = new Set(mapping.nullWords.map(key));
  const words = new Map(Object.entries(use.words ?? {}).map(([from, to]) => [key(from), to]));
  const read = valueReader(fact, use, mapping.trim);
  return (cell) => {
    if (cell === null || cell === undefined || cell === '') return NOTHING;
    const text = unguardCell(cellText(cell));
    const folded = key(text);
    if (folded === '' || nothing.has(folded)) return NOTHING;
    // A text file that a spreadsheet wrote has its errors as text.
    if (typeof cell === 'object' || SPREADSHEET_ERROR.test(folded))
      return { ok: false, expected: { is: 'no-error-cell' } };
    return read(words.get(folded) ?? text, typeof cell === 'number' ? cell : null);
  };
}

const SPREADSHEET_ERROR = /^#(ref!|n\/a|value!|div\/0!|name\?|null!|num!|spill!|calc!)$/;

const NOTHING: CellReading = { ok: true, value: null };

type ValueReader = (text: string, number: number | null) => CellReading;

function valueReader(
  fact: Fact,
  use: Pick<ColumnUse, 'unit' | 'numbers' | 'times'>,
  trim: boolean,
): ValueReader {
  switch (fact.kind) {
    case 'id':
      return (text) => value(text.trim());
    case 'text':
      return (text) => value(trim ? text.trim() : text);
    case 'texts':
      return (text) => value(splitTexts(text).map((entry) => (trim ? entry.trim() : entry)));
    case 'length':
    case 'mass':
      return quantityReader(fact.kind, use);
    case 'surveyed': {
      const length = quantityReader('length', use);
      return (text, number) => {
        if (key(text) === 'none') return value('none');
        const read = length(text, number);
        return read.ok ? read : { ok: false, expected: { is: 'size-or-none' } };
      };
    }
    case 'number':
      return (text, number) => {
        const decimal = decimalOf(text, number, use);
        return decimal === null ? notANumber(text, use) : value(Number(decimal));
      };
    case 'yes-no':
      return (text) => {
        const word = key(text);
        if (YES.has(word)) return value(true);
        return NO.has(word) ? value(false) : { ok: false, expected: { is: 'yes-or-no' } };
      };
    case 'time':
      return (text) => {
        const style = use.times ?? 'iso';
        const at = readTime(text, style);
        if (at !== null) return value(at);
        return { ok: false, expected: { is: 'day-month-order', order: style } };
      };
    case 'choice': {
      const choices = new Map(Object.entries(CHOICE_WORDS[fact.fact] ?? {}));
      for (const choice of fact.choices ?? []) choices.set(loose(choice), choice);
      return (text) => {
        const choice = choices.get(loose(text));
        if (choice !== undefined) return value(choice);
        return { ok: false, expected: { is: 'one-of', values: fact.choices ?? [] } };
      };
    }
    default:
      return fact.kind satisfies never;
  }
}

function quantityReader(kind: 'length' | 'mass', use: Pick<ColumnUse, 'unit' | 'numbers'>): ValueReader {
  const columnUnit = use.unit ?? (kind === 'length' ? 'mm' : 'kg');
  return (text, number) => {
    // The unit behind a number is what the writer meant; it goes before the column's.
    const cut = number === null ? cutUnit(text.trim()) : { number: text, unit: null };
    const unit = cut.unit ?? columnUnit;
    const decimal = decimalOf(cut.number, number, use);
    if (decimal === null || !unitFits(unit, kind)) return notANumber(text, use);
    return value(inModelUnits(decimal, unit));
  };
}

/** A plain decimal without sign, or null. A number of the spreadsheet is taken as it is, whatever the column's style. */
function decimalOf(text: string, number: number | null, use: Pick<ColumnUse, 'numbers'>): string | null {
  if (number !== null) return number >= 0 ? String(number) : null;
  return plainDecimal(text, use.numbers ?? PLAIN_NUMBERS);
}

function notANumber(text: string, use: Pick<ColumnUse, 'numbers'>): CellReading {
  if (/^\s*-\s*[\d.,]/.test(text)) return { ok: false, expected: { is: 'at-least', limit: 0 } };
  return { ok: false, expected: { is: 'number-in-style', ...(use.numbers ?? PLAIN_NUMBERS) } };
}

function value(read: FactValue): CellReading {
  return { ok: true, value: read };
}

/** Compared without regard to case and to blanks around it. */
function key(text: string): string {
  return text.trim().toLowerCase();
}

/** Compared without regard to case, blanks, hyphens and underscores. */
function loose(text: string): string {
  return text.toLowerCase().replace(/[\s_-]+/g, '');
}

const YES = new Set(['yes', 'y', 'true', '1', 'x', 'ja', 'j', 'oui', 'si', 'sí', 'sim']);
const NO = new Set(['no', 'n', 'false', '0', 'nein', 'non', 'nee', 'não']);

// Words of the trade for a choice. EN 15635 calls an upright without damage worth noting green.
const CONDITION_WORDS: Record<string, string> = { green: 'sound' };
const CHOICE_WORDS: Record<string, Record<string, string>> = {
  levelCondition: CONDITION_WORDS,
  leftFrameCondition: CONDITION_WORDS,
  rightFrameCondition: CONDITION_WORDS,
  frameCondition: CONDITION_WORDS,
  row: { '1': 'front', '2': 'rear', f: 'front', r: 'rear', back: 'rear' },
  kind: {
    counterbalanced: 'counterbalance',
    reachtruck: 'reach',
    pedestrianstacker: 'stacker',
    vna: 'narrow-aisle',
  },
  power: { battery: 'electric', gas: 'lpg', lpgas: 'lpg', gasoline: 'petrol' },
  mast: { upright: 'vertical', forwardtilt: 'forward-tilt', tilted: 'forward-tilt' },
  result: { passed: 'pass', ok: 'pass', failed: 'fail' },
  massBasis: { scale: 'weighed', estimated: 'declared' },
};
