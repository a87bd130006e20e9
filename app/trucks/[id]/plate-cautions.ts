import type { PlateRating, Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';

/** What should be put right on a plate, or read with care. Lines are places in the plate's list, from 0. */
export type PlateCaution =
  | { kind: 'no-rating-for-fitted' }
  | { kind: 'stops-short'; plateToMm: number }
  | { kind: 'rises-with-height'; lower: number; higher: number }
  | { kind: 'rises-with-load-centre'; nearer: number; further: number }
  | { kind: 'lines-differ'; first: number; second: number };

/**
 * What on this plate contradicts itself or leaves the truck unrated? A capacity never rises with height or load centre
 * on a sound plate. Each kind of rise is named once, at the first pair of lines that shows it for each block.
 */
export function plateCautions(truck: Truck): PlateCaution[] {
  const { ratings } = truck.plate;
  const fitted = ratings.filter(
    (line) => line.mast === 'vertical' && line.attachment === truck.fittedAttachment,
  );
  const cautions: PlateCaution[] = [];
  if (fitted.length === 0) cautions.push({ kind: 'no-rating-for-fitted' });
  const plateToMm = Math.max(0, ...fitted.map((line) => line.liftHeightMm));
  if (fitted.length > 0 && plateToMm < truck.maxLiftMm) cautions.push({ kind: 'stops-short', plateToMm });
  const told = new Set<string>();
  for (const [a, one] of ratings.entries()) {
    for (const [b, other] of ratings.entries()) {
      if (one.mast !== other.mast || one.attachment !== other.attachment) continue;
      const caution = pairCaution(a, one, b, other);
      const key = `${caution?.kind} ${one.mast} ${one.attachment}`;
      if (caution === null || told.has(key)) continue;
      told.add(key);
      cautions.push(caution);
    }
  }
  return cautions;
}

function pairCaution(a: number, one: PlateRating, b: number, other: PlateRating): PlateCaution | null {
  const sameHeight = one.liftHeightMm === other.liftHeightMm;
  const sameCentre = one.loadCentreMm === other.loadCentreMm;
  if (a < b && sameHeight && sameCentre && one.capacityKg !== other.capacityKg)
    return { kind: 'lines-differ', first: a, second: b };
  if (other.capacityKg <= one.capacityKg) return null;
  if (sameCentre && one.liftHeightMm < other.liftHeightMm)
    return { kind: 'rises-with-height', lower: a, higher: b };
  if (sameHeight && one.loadCentreMm < other.loadCentreMm)
    return { kind: 'rises-with-load-centre', nearer: a, further: b };
  return null;
}

/** The caution as a person reads it, with what to do. */
export function plateCautionWords(caution: PlateCaution, truck: Truck, units: DisplayUnits): string {
  const line = (at: number) => {
    const rating = truck.plate.ratings[at];
    if (rating === undefined) throw new Error(`the plate of ${truck.id} has no line ${at}`);
    return `line ${at + 1} (${formatMass(rating.capacityKg, units, 'down')} to ${formatLength(rating.liftHeightMm, units, 'down')} at ${formatLength(rating.loadCentreMm, units, 'down')})`;
  };
  switch (caution.kind) {
    case 'no-rating-for-fitted':
      return `Nothing is rated for what is fitted (${truck.fittedAttachment ?? 'forks'}): no lift of this truck is proven. Ask the maker for a plate.`;
    case 'stops-short':
      return `The plate states nothing above ${formatLength(caution.plateToMm, units, 'down')}, though the truck lifts to ${formatLength(truck.maxLiftMm, units, 'down')}: lifts above are not proven.`;
    case 'rises-with-height':
      return `Capacity rises with height from ${line(caution.lower)} to ${line(caution.higher)}: one of them is misread. Compare with the plate on the truck.`;
    case 'rises-with-load-centre':
      return `Capacity rises with the load centre from ${line(caution.nearer)} to ${line(caution.further)}: one of them is misread. Compare with the plate on the truck.`;
    case 'lines-differ':
      return `Two lines state different masses for one height and load centre: ${line(caution.first)} and ${line(caution.second)}. Compare with the plate on the truck.`;
  }
}
