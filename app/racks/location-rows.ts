import { mostAt, type RacksAnswer, spareAt, truckAt, verdictAt } from '@/app/_parts/racks-answer.ts';
import { VERDICTS, type Verdict } from '@/lib/check/step.ts';

export type LocationColumn = 'location' | 'level' | 'load' | 'verdict' | 'most' | 'spare' | 'truck';

export type Listing = {
  /** Site-order indices from first up to, but not including, end. */
  first: number;
  end: number;
  /** Verdicts to keep; `none` keeps places that nothing is asked of. */
  keep: ReadonlySet<Verdict | 'none'>;
  find: string;
  sort: { column: LocationColumn; direction: 'up' | 'down' } | null;
};

/** The site-order indices of a listing's rows, filtered and sorted; what is not known comes last either way. */
export function listLocations(answer: RacksAnswer, listing: Listing): number[] {
  const { first, end, keep, sort } = listing;
  const parts = listing.find.trim().toLowerCase().split(/\s+/).filter(Boolean);
  const rows: number[] = [];
  for (let place = first; place < end; place++) {
    if (!keep.has(verdictAt(answer, place) ?? 'none')) continue;
    if (parts.length > 0) {
      const text = wordsAt(answer, place);
      if (!parts.every((part) => text.includes(part))) continue;
    }
    rows.push(place);
  }
  if (sort === null) return rows;
  const sign = sort.direction === 'up' ? 1 : -1;
  const keys = new Map(rows.map((place) => [place, keyAt(answer, place, sort.column)]));
  return rows.sort((a, b) => {
    const [one, other] = [keys.get(a)!, keys.get(b)!];
    if (one === null || other === null) return one === other ? a - b : one === null ? 1 : -1;
    const order =
      typeof one === 'number' && typeof other === 'number'
        ? one - other
        : byWords(String(one), String(other));
    return sign * order || a - b;
  });
}

const byWords = new Intl.Collator('en', { numeric: true }).compare;

function wordsAt(answer: RacksAnswer, place: number): string {
  const { id } = answer.places[place]!;
  const load = answer.index.stockAt.get(id);
  return `${id} ${load?.id ?? ''} ${load?.name ?? ''} ${truckAt(answer, place) ?? ''}`.toLowerCase();
}

function keyAt(answer: RacksAnswer, place: number, column: LocationColumn): string | number | null {
  switch (column) {
    case 'location':
      return answer.places[place]!.id;
    case 'level':
      return answer.places[place]!.level.beamTopMm;
    case 'load':
      return answer.index.stockAt.get(answer.places[place]!.id)?.id ?? null;
    case 'verdict': {
      const verdict = verdictAt(answer, place);
      return verdict === null ? null : VERDICTS.indexOf(verdict);
    }
    case 'most':
      return mostAt(answer, place);
    case 'spare':
      return spareAt(answer, place);
    case 'truck':
      return truckAt(answer, place);
  }
}
