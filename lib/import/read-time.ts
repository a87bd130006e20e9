import { instant } from '../model/quantities.ts';
import type { TimeStyle } from './mapping.ts';

const ISO = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?)?$/i;
const ORDERED = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})(?:[T ,]+(\d{1,2}):(\d{2})(?::(\d{2}))?)?$/;

/**
 * A time as the model writes it (a date, or date and time in UTC), or null when the text is none in this style. A time
 * without a zone is taken as UTC. ISO 8601 is understood in every style; day.month.year and month/day/year only by
 * the style that names them. A day that the calendar does not have is none.
 */
export function readTime(text: string, style: TimeStyle): string | null {
  const trimmed = text.trim();
  const iso = ISO.exec(trimmed);
  if (iso) {
    const [, year, month, day, hour, minute, second = '00', fraction = '', zone = 'Z'] = iso;
    if (!isDay(Number(year), Number(month), Number(day))) return null;
    if (hour === undefined) return `${year}-${month}-${day}`;
    if (!isClock(hour, minute!, second)) return null;
    if (instant.safeParse(trimmed).success) return trimmed;
    if (/^z$/i.test(zone)) return `${year}-${month}-${day}T${hour}:${minute}:${second}${fraction}Z`;
    const offset = zone.length === 5 ? `${zone.slice(0, 3)}:${zone.slice(3)}` : zone;
    const at = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}${fraction}${offset}`);
    return Number.isNaN(at.getTime()) ? null : at.toISOString().replace('.000Z', 'Z');
  }
  if (style === 'iso') return null;
  const ordered = ORDERED.exec(trimmed);
  if (ordered === null) return null;
  const [, first, second, year, hour, minute, seconds = '00'] = ordered;
  const [day, month] = style === 'dmy' ? [first!, second!] : [second!, first!];
  if (!isDay(Number(year), Number(month), Number(day))) return null;
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  if (hour === undefined) return date;
  return isClock(hour, minute!, seconds) ? `${date}T${hour.padStart(2, '0')}:${minute}:${seconds}Z` : null;
}

function isDay(year: number, month: number, day: number): boolean {
  const at = new Date(Date.UTC(year, month - 1, day));
  return at.getUTCFullYear() === year && at.getUTCMonth() === month - 1 && at.getUTCDate() === day;
}

function isClock(hour: string, minute: string, second: string): boolean {
  return Number(hour) < 24 && Number(minute) < 60 && Number(second) < 60;
}

/** The style that the column's texts follow; `ambiguous` where day and month could be either way round. */
export function guessTimeStyle(texts: readonly string[]): { style: TimeStyle; ambiguous: boolean } {
  const ordered = texts.map((text) => ORDERED.exec(text.trim())).filter((match) => match !== null);
  if (ordered.length === 0) return { style: 'iso', ambiguous: false };
  const dayFirst = ordered.some((match) => Number(match[1]) > 12);
  const monthFirst = ordered.some((match) => Number(match[2]) > 12);
  return { style: monthFirst && !dayFirst ? 'mdy' : 'dmy', ambiguous: dayFirst === monthFirst };
}
