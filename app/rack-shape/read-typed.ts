import { LARGEST_NUMBER } from '@/lib/model/quantities.ts';
import type { Typed } from '@/lib/rack-shape/description.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '@/lib/units/parse-quantity.ts';

export type TypedKind = 'mass' | 'length' | 'count';

/**
 * What figure was typed? kg, mm or a whole number; null for nothing; `unread` for what cannot be read. A comma is taken
 * as a decimal one where it can mean nothing else: alone, and not before exactly three digits ("1,5", "1,25"; not "1,200").
 */
export function readTyped(text: string, of: TypedKind, units: DisplayUnits): Typed {
  if (text.trim() === '') return null;
  if (of === 'count') return /^\s*\d{1,6}\s*$/.test(text) ? Number(text) : 'unread';
  const plain = withDecimalPoint(text);
  if (plain === null) return 'unread';
  const value = of === 'mass' ? parseMassKg(plain, units) : parseLengthMm(plain, units);
  return value !== null && value > 0 && value <= LARGEST_NUMBER ? value : 'unread';
}

/** Why a text was not read, for its field; null when it was. */
export function typedFault(text: string, of: TypedKind, units: DisplayUnits): string | null {
  if (readTyped(text, of, units) !== 'unread') return null;
  if (of !== 'count' && withDecimalPoint(text) === null)
    return 'This comma may mean a thousand or a decimal. Write 1200, 1 200 or 1.2.';
  if (of === 'count') return 'Write a whole number.';
  return `Not read. Write a ${of} above 0, such as ${of === 'mass' ? '980, 980 kg or 2160 lb' : '1200, 1.2 m or 47 in'}.`;
}

/** The figure as it stands in its field, in the shown units but without them. */
export function shownTyped(value: Typed, of: TypedKind, units: DisplayUnits): string {
  if (value === null || value === 'unread') return '';
  if (of === 'count') return String(value);
  const text = of === 'mass' ? formatMass(value, units, 'down') : formatLength(value, units, 'up');
  return text.replace(/\D+$/, '');
}

/** Clear widths: one for all bays, or one for each, between semicolons; "5 x 2700; 1350" says the same width often. */
export function readWidths(text: string, units: DisplayUnits): readonly number[] | 'unread' {
  if (text.trim() === '') return [];
  const widths: number[] = [];
  for (const part of text.split(';')) {
    const often = /^\s*(\d{1,3})\s*[x×]\s*(.+)$/i.exec(part);
    const width = readTyped(often?.[2] ?? part, 'length', units);
    if (typeof width !== 'number') return 'unread';
    for (let times = Number(often?.[1] ?? 1); times > 0; times -= 1) widths.push(width);
  }
  return widths;
}

export function shownWidths(widths: readonly number[] | 'unread', units: DisplayUnits): string {
  if (widths === 'unread') return '';
  const parts: { width: number; times: number }[] = [];
  for (const width of widths) {
    const last = parts.at(-1);
    if (last?.width === width) last.times += 1;
    else parts.push({ width, times: 1 });
  }
  return parts
    .map(({ width, times }) => `${times > 1 ? `${times} x ` : ''}${shownTyped(width, 'length', units)}`)
    .join('; ');
}

/** null: the comma could be either. */
function withDecimalPoint(text: string): string | null {
  if (!text.includes(',')) return text;
  const match = /^([^,.]*\d),(\d+)(?!\d)([^,.]*)$/.exec(text);
  if (match === null || match[2]!.length === 3) return null;
  return `${match[1]}.${match[2]}${match[3]}`;
}
