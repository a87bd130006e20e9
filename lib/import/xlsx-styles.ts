import { walkXml } from './xlsx-parts.ts';

/** How a number in a cell of this style is meant. */
export type NumberMeaning =
  | { means: 'number' }
  | { means: 'date' }
  /** A format such as 00000: the leading zeros belong to what the person sees, so the cell is text. */
  | { means: 'padded'; digits: number };

const NUMBER: NumberMeaning = { means: 'number' };
const DATE: NumberMeaning = { means: 'date' };

// The built-in formats that show a date or a time (ECMA-376 part 1, 18.8.30); 27-36 and 50-58 are the East Asian ones.
const isBuiltInDate = (id: number): boolean =>
  (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58);

/** The meaning of each cell style, in the order in which cells point at them. */
export function readStyles(part: Uint8Array | null): NumberMeaning[] {
  if (part === null) return [];
  const codes = new Map<number, string>();
  const styles: NumberMeaning[] = [];
  let inCellStyles = false;
  walkXml(part, {
    open(name, attributes) {
      if (name === 'numFmt') codes.set(Number(attributes.numFmtId), attributes.formatCode ?? '');
      else if (name === 'cellXfs') inCellStyles = true;
      else if (name === 'xf' && inCellStyles) styles.push(meaningOf(Number(attributes.numFmtId ?? 0), codes));
    },
    close(name) {
      if (name === 'cellXfs') inCellStyles = false;
    },
  });
  return styles;
}

function meaningOf(id: number, codes: ReadonlyMap<number, string>): NumberMeaning {
  const code = codes.get(id);
  if (code === undefined) return isBuiltInDate(id) ? DATE : NUMBER;
  if (/^00+$/.test(code)) return { means: 'padded', digits: code.length };
  // Quoted text, escaped characters and [colours] say nothing; a y, m, d, h or s that is left shows a date or time.
  const bare = code.replace(/"[^"]*"|\\.|_.|\*./g, '').replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '');
  return /[ymdhs]/i.test(bare) && !/^general$/i.test(bare) ? DATE : NUMBER;
}

const DAY_MS = 86_400_000;
const EPOCH_1900_MS = Date.UTC(1899, 11, 30);
const EPOCH_1904_MS = Date.UTC(1904, 0, 1);

/**
 * A spreadsheet's date number as ISO text: a date alone where there is no time of day, else date and time. A spreadsheet
 * knows no time zone; the time is taken as UTC. null before 1 March 1900, where the 1900 system counts a day that never
 * was, and past the year 9999.
 */
export function isoOfDateNumber(days: number, from1904: boolean): string | null {
  if (!Number.isFinite(days) || days < 0 || (!from1904 && days < 61)) return null;
  const seconds = Math.round(days * 86_400);
  const at = (from1904 ? EPOCH_1904_MS : EPOCH_1900_MS) + (seconds / 86_400) * DAY_MS;
  if (at >= Date.UTC(10_000, 0, 1)) return null;
  const iso = new Date(Math.round(at / 1000) * 1000).toISOString();
  return seconds % 86_400 === 0 ? iso.slice(0, 10) : `${iso.slice(0, 19)}Z`;
}
