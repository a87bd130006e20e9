import { type RacksAnswer, spareAt } from '@/app/_parts/racks-answer.ts';
import { VERDICTS } from '@/lib/check/step.ts';
import { NO_ANSWER } from '@/lib/grid/question.ts';
import type { Look } from './overview-query.ts';

const code = (verdict: (typeof VERDICTS)[number]) => VERDICTS.indexOf(verdict);

/**
 * One code per location in site order, as an index into VERDICTS; NO_ANSWER where nothing stands.
 *
 * `take-down`, `put-back`: the best verdict. `trucks`: how many trucks are clear or thin, in the same four steps: two or
 * more as clear, one as thin, none but one that might (unproven) as unproven, none at all as refuse.
 */
export function codesOf({ summary }: RacksAnswer, look: Look): Uint8Array {
  if (look !== 'trucks') return summary.best;
  return Uint8Array.from(summary.best, (best, place) => {
    if (best === NO_ANSWER) return NO_ANSWER;
    const able = summary.clear[place]! + summary.thin[place]!;
    if (able >= 2) return code('clear');
    if (able === 1) return code('thin');
    return best === code('unproven') ? code('unproven') : code('refuse');
  });
}

/** How many locations have each code, in the order of VERDICTS, and how many have none. */
export function countCodes(codes: Uint8Array, first: number, end: number): { each: number[]; none: number } {
  const each = VERDICTS.map(() => 0);
  let none = 0;
  for (let place = first; place < end; place++) {
    const at = codes[place]!;
    if (at === NO_ANSWER) none++;
    else each[at]!++;
  }
  return { each, none };
}

/** The places that are not in order, worst first: by code, then the least to spare, then site order; at most `limit`. */
export function worstPlaces(
  answer: RacksAnswer,
  codes: Uint8Array,
  limit: number,
): { places: number[]; inAll: number } {
  const found: number[] = [];
  for (const [place, at] of codes.entries()) if (at !== NO_ANSWER && at !== code('clear')) found.push(place);
  const spare = (place: number) => spareAt(answer, place) ?? Number.POSITIVE_INFINITY;
  found.sort((a, b) => codes[b]! - codes[a]! || compare(spare(a), spare(b)) || a - b);
  return { places: found.slice(0, limit), inAll: found.length };
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
