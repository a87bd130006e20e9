import { rankTrucks } from '@/lib/check/rank-trucks.ts';
import type { LiftAnswer } from '@/lib/check/step.ts';
import type { Load } from '@/lib/model/load.ts';
import { found, type SiteIndex } from '@/lib/model/site-index.ts';

/** Which trucks may take a load down from a place? `able` are clear or thin, best first; `best` is the best of all. */
export type TakeDown = {
  location: string;
  beamTopMm: number;
  able: readonly string[];
  best: LiftAnswer | null;
};

/** Asked with the racks as they stand, nobody named as the driver, at `asOf`. */
export function takeDownAt(index: SiteIndex, load: Load, location: string, asOf: string | null): TakeDown {
  const place = found(index.places, location, 'location');
  const ranked = rankTrucks(index, {
    load,
    place,
    context: { operation: 'retrieve', asOf, operator: null, stock: 'as-is', from: null },
  });
  return {
    location,
    beamTopMm: place.level.beamTopMm,
    able: ranked.filter(({ verdict }) => verdict === 'clear' || verdict === 'thin').map(({ truck }) => truck),
    best: ranked[0] ?? null,
  };
}
