import type { Finding } from '../audit/finding.ts';
import { plateGaps } from '../audit/plate-gaps.ts';
import { forkArmKg } from '../check/fork-arm.ts';
import { blankSite } from '../model/site.ts';
import { indexSite } from '../model/site-index.ts';
import type { PlateRating, Truck } from '../model/truck.ts';

/** What is worth a second look at the truck's own plate or data sheet. None of it keeps a truck from being stored. */
export type PlateAdvice =
  | { kind: 'finding'; finding: Finding }
  | { kind: 'fork-arms-below-plate'; pairKg: number; plateKg: number; loadCentreMm: number }
  | { kind: 'line-above-mast'; liftHeightMm: number; maxLiftMm: number }
  | { kind: 'load-centre-unusual'; usualMm: number; statedMm: readonly number[]; capacityKg: number }
  | { kind: 'turning-data-missing' }
  | { kind: 'stated-aisle-missing' }
  | { kind: 'mast-heights-missing' };

/** 24 in, the standard load centre of trucks in the United States up to 20 000 lb (ASME B56.1, from memory). */
const TWENTY_FOUR_INCHES_MM = 609.6;

/**
 * What of this truck's figures does not look like a plate that was read rightly, or leaves a rule without its fact?
 *
 * The findings of lib/audit on plates (capacities that rise with height or load centre, lines that contradict each
 * other, a plate that stops short of the mast, none for what is fitted), and besides:
 * - a pair of fork arms that carries less than the plate at the same load centre (ISO 2330 marking);
 * - a line above the largest lift: one of the two was read wrongly;
 * - none of the load centres of the forks is the standard one of a truck of this capacity;
 * - facts without which a rule stays unknown.
 */
export function plateAdvice(truck: Truck): PlateAdvice[] {
  const index = indexSite({ ...blankSite('one fact'), trucks: [truck] });
  const findings = plateGaps({ index }).map((finding): PlateAdvice => ({ kind: 'finding', finding }));
  return [
    ...findings,
    ...armsBelowPlate(truck),
    ...lineAboveMast(truck),
    ...unusualCentre(truck),
    ...missingFacts(truck),
  ];
}

/**
 * The standard load centre that a truck is usually rated at, mm. Counterbalanced trucks by rated capacity (ISO 22915-1
 * and ISO 3691-1, from memory): below 1000 kg 400, below 5000 kg 500, to 10 000 kg 600, below 20 000 kg 900, above 1200.
 * Others 600 (ISO 22915-3 and common practice for 1200 mm pallets).
 */
export function usualLoadCentreMm(kind: Truck['kind'], ratedKg: number): number {
  if (kind !== 'counterbalance') return 600;
  if (ratedKg < 1000) return 400;
  if (ratedKg < 5000) return 500;
  if (ratedKg <= 10_000) return 600;
  return ratedKg < 20_000 ? 900 : 1200;
}

function armsBelowPlate({ forks, plate }: Truck): PlateAdvice[] {
  let worst: Extract<PlateAdvice, { kind: 'fork-arms-below-plate' }> | null = null;
  for (const { mast, attachment, loadCentreMm, capacityKg } of plate.ratings) {
    if (mast !== 'vertical' || attachment !== null) continue;
    const armKg = forkArmKg(forks, loadCentreMm);
    if (armKg === null || 2 * armKg >= capacityKg) continue;
    const short = {
      kind: 'fork-arms-below-plate',
      pairKg: 2 * armKg,
      plateKg: capacityKg,
      loadCentreMm,
    } as const;
    if (worst === null || capacityKg - 2 * armKg > worst.plateKg - worst.pairKg) worst = short;
  }
  return worst === null ? [] : [worst];
}

function lineAboveMast({ maxLiftMm, plate }: Truck): PlateAdvice[] {
  const liftHeightMm = Math.max(0, ...plate.ratings.map((line) => line.liftHeightMm));
  return liftHeightMm > maxLiftMm ? [{ kind: 'line-above-mast', liftHeightMm, maxLiftMm }] : [];
}

function unusualCentre({ kind, plate }: Truck): PlateAdvice[] {
  const lines = plate.ratings.filter((line) => line.mast === 'vertical' && line.attachment === null);
  if (lines.length === 0) return [];
  const capacityKg = Math.max(...lines.map((line) => line.capacityKg));
  const usualMm = usualLoadCentreMm(kind, capacityKg);
  const usual = [usualMm, 600, TWENTY_FOUR_INCHES_MM];
  const statedMm = centresOf(lines);
  if (statedMm.some((mm) => usual.some((known) => Math.abs(mm - known) < 1))) return [];
  return [{ kind: 'load-centre-unusual', usualMm, statedMm, capacityKg }];
}

function missingFacts({ kind, turning, statedAisleMm, loweredMm, extendedMm }: Truck): PlateAdvice[] {
  const byMaker = kind === 'order-picker' || kind === 'narrow-aisle';
  const advice: PlateAdvice[] = [];
  if (byMaker && statedAisleMm === null) advice.push({ kind: 'stated-aisle-missing' });
  if (!byMaker && turning === null && statedAisleMm === null) advice.push({ kind: 'turning-data-missing' });
  if (loweredMm === null || extendedMm === null) advice.push({ kind: 'mast-heights-missing' });
  return advice;
}

function centresOf(lines: readonly PlateRating[]): number[] {
  return [...new Set(lines.map((line) => line.loadCentreMm))].sort((a, b) => a - b);
}
