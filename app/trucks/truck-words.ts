import type { Outcome } from '@/lib/check/step.ts';
import type { TruckFitState } from '@/lib/check/truck-fit-state.ts';
import type { PlateRating, Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';

export const KIND_WORDS: Record<Truck['kind'], string> = {
  counterbalance: 'Counterbalanced',
  reach: 'Reach truck',
  stacker: 'Stacker',
  'order-picker': 'Order picker',
  'narrow-aisle': 'Narrow-aisle truck',
};

export const POWER_WORDS: Record<Truck['power'], string> = {
  electric: 'Electric',
  lpg: 'LPG',
  diesel: 'Diesel',
  petrol: 'Petrol',
  manual: 'By hand',
};

/** How each state of fitness counts in a lift check, and what it is called. */
export const FIT_WORDS: Record<TruckFitState['state'], { outcome: Outcome; words: string }> = {
  'in service': { outcome: 'pass', words: 'Fit' },
  'check failed': { outcome: 'fail', words: 'Check failed' },
  held: { outcome: 'fail', words: 'On hold' },
  'check too old': { outcome: 'unknown', words: 'Check too old' },
  'never checked': { outcome: 'unknown', words: 'Never checked' },
};

/** The largest mass that the plate proves for what is fitted, mast vertical; null when it rates nothing for it. */
export function heaviestRating(truck: Truck): PlateRating | null {
  let heaviest: PlateRating | null = null;
  for (const rating of truck.plate.ratings) {
    if (rating.mast !== 'vertical' || rating.attachment !== truck.fittedAttachment) continue;
    if (heaviest === null || rating.capacityKg > heaviest.capacityKg) heaviest = rating;
  }
  return heaviest;
}

/** A line of a plate in a few words: "2 500 kg at 500 mm, to 3 300 mm". */
export function ratingWords(rating: PlateRating, units: DisplayUnits): string {
  const capacity = formatMass(rating.capacityKg, units, 'down');
  return `${capacity} at ${formatLength(rating.loadCentreMm, units, 'down')}, to ${formatLength(rating.liftHeightMm, units, 'down')}`;
}
