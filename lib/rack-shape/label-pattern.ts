import { nearestTo } from '../model/refusal.ts';
import type { ShapeFault } from './shape-fault.ts';

export const LABEL_PARTS = ['aisle', 'side', 'bay', 'level', 'position', 'row'] as const;
export type LabelPart = (typeof LABEL_PARTS)[number];

/**
 * How locations are named. `pattern` is text with parts in braces: `{aisle}`, `{side}`, `{bay}`, `{level}`,
 * `{position}`, `{row}`. After a colon stands how a number is written: `{bay:00}` at least two digits, `{level:A}`
 * letters (A to Z, then AA). Positions of a double-deep level count on from the front row into the rear one, unless
 * `{row}` (1 front, 2 rear) tells the rows apart.
 */
export type LabelPattern = {
  pattern: string;
  aisle: string;
  side: string;
  bayStart: number;
  /** 2 where one side of the aisle has the odd bays and the other the even ones. */
  bayStep: 1 | 2;
  /** The end of the run, seen from the aisle, at which counting starts. */
  bayFrom: 'left' | 'right';
  /** What the floor (level 0) is called; each level number counts on from there. */
  levelStart: number;
  positionStart: number;
  positionFrom: 'left' | 'right';
};

export const PLAIN_PATTERN = '{aisle}-{side}-{bay:00}-{level}-{position}';

export type LabelPiece =
  | { is: 'text'; text: string }
  | { is: 'part'; part: LabelPart; style: { is: 'digits'; least: number } | { is: 'letters' } };

/** The pieces of a pattern, or what is wrong with it. */
export function readPattern(
  pattern: string,
): { ok: true; pieces: LabelPiece[] } | { ok: false; fault: ShapeFault } {
  const pieces: LabelPiece[] = [];
  let rest = pattern;
  while (rest !== '') {
    const [text] = /^[^{}]*/.exec(rest)!;
    if (text !== '') pieces.push({ is: 'text', text });
    rest = rest.slice(text.length);
    if (rest === '') break;
    const braces = /^\{([^{}]*)\}/.exec(rest);
    if (braces === null) return { ok: false, fault: { is: 'open-brace' } };
    const [name = '', style] = braces[1]!.split(':', 2);
    const part = LABEL_PARTS.find((known) => known === name.trim());
    if (part === undefined)
      return {
        ok: false,
        fault: { is: 'unknown-part', came: name, nearest: nearestTo(name.trim(), LABEL_PARTS) },
      };
    if (style !== undefined && !/^(?:0{1,9}|A)$/.test(style))
      return { ok: false, fault: { is: 'unknown-style', came: style } };
    const digits = { is: 'digits', least: style?.length ?? 1 } as const;
    pieces.push({ is: 'part', part, style: style === 'A' ? { is: 'letters' } : digits });
    rest = rest.slice(braces[0].length);
  }
  return { ok: true, pieces };
}

/** Where a label stands; `bay` may be a text where a bay is named outside the count. */
export type LabelPlace = { bay: number | string; level: number; row: 1 | 2; column: number; perRow: number };

/** The label of a place. Throws on letters below 1: labelFault of the pattern is asked first. */
export function writeLabel(labels: LabelPattern, pieces: readonly LabelPiece[], at: LabelPlace): string {
  const hasRow = pieces.some((piece) => piece.is === 'part' && piece.part === 'row');
  const column = labels.positionFrom === 'left' ? at.column : at.perRow - 1 - at.column;
  const before = hasRow || at.row === 1 ? 0 : at.perRow;
  const values: Record<LabelPart, number | string> = {
    aisle: labels.aisle,
    side: labels.side,
    bay: at.bay,
    level: at.level + labels.levelStart,
    position: labels.positionStart + before + column,
    row: at.row,
  };
  return pieces
    .map((piece) => (piece.is === 'text' ? piece.text : writePart(values[piece.part], piece.style)))
    .join('');
}

/** The number of the bay at `index` of `count`, counted from the left as seen from the aisle. */
export function bayNumber(labels: LabelPattern, index: number, count: number): number {
  return labels.bayStart + labels.bayStep * (labels.bayFrom === 'left' ? index : count - 1 - index);
}

/** How the pattern writes a bay alone: the name of the bay itself. */
export function writeBay(pieces: readonly LabelPiece[], bay: number | string): string {
  const piece = pieces.find((entry) => entry.is === 'part' && entry.part === 'bay');
  return piece?.is === 'part' ? writePart(bay, piece.style) : String(bay);
}

type Style = Extract<LabelPiece, { is: 'part' }>['style'];

function writePart(value: number | string, style: Style): string {
  if (typeof value === 'string') return value;
  return style.is === 'digits' ? String(value).padStart(style.least, '0') : letters(value);
}

/** 1 A, 26 Z, 27 AA. */
export function letters(number: number): string {
  if (number < 1) throw new Error(`letters begin at 1, not ${number}`);
  let text = '';
  for (let rest = number; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    text = String.fromCharCode(65 + ((rest - 1) % 26)) + text;
  }
  return text;
}

/** Which part would be written in letters from a number below 1? null: none. */
export function lettersBelowOne(
  labels: LabelPattern,
  pieces: readonly LabelPiece[],
  lowestLevel: number,
): LabelPart | null {
  const least: Partial<Record<LabelPart, number>> = {
    bay: labels.bayStart,
    level: labels.levelStart + lowestLevel,
    position: labels.positionStart,
  };
  for (const piece of pieces) {
    if (piece.is === 'part' && piece.style.is === 'letters' && (least[piece.part] ?? 1) < 1)
      return piece.part;
  }
  return null;
}
