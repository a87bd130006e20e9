import { plateRating } from '@/lib/check/plate-rating.ts';
import { MASTS, type PlateRating, type Truck } from '@/lib/model/truck.ts';

type Mast = PlateRating['mast'];

/** What the plate proves for one mast position and load centre, as steps over the lift height, lowest first. */
export type ChartLine = {
  mast: Mast;
  loadCentreMm: number;
  steps: readonly ChartStep[];
};
export type ChartStep = { fromMm: number; toMm: number; capacityKg: number };

/**
 * What does this truck's plate prove, drawn over the lift height? One line for each load centre of each mast position
 * that the plate rates for the fitted attachment; forward tilt only where the plate rates it.
 *
 * Every step is answered by the rule's own look-up, so that chart and verdict cannot differ. A line ends where the plate
 * ends: nothing is drawn beyond its last rating.
 */
export function chartLines(truck: Truck): ChartLine[] {
  return MASTS.flatMap((mast) => {
    const rated = truck.plate.ratings.filter(
      (rating) => rating.mast === mast && rating.attachment === truck.fittedAttachment,
    );
    const heights = distinct(rated.map((rating) => rating.liftHeightMm));
    return distinct(rated.map((rating) => rating.loadCentreMm)).map((loadCentreMm) => ({
      mast,
      loadCentreMm,
      steps: stepsOf(truck, mast, loadCentreMm, heights),
    }));
  });
}

function stepsOf(truck: Truck, mast: Mast, loadCentreMm: number, heights: readonly number[]): ChartStep[] {
  const steps: ChartStep[] = [];
  let fromMm = 0;
  for (const toMm of heights) {
    const proven = plateRating(truck, mast, toMm, loadCentreMm);
    if (proven.kind === 'unproven') break;
    const { capacityKg } = proven.rating;
    const last = steps.at(-1);
    if (last?.capacityKg === capacityKg) last.toMm = toMm;
    else steps.push({ fromMm, toMm, capacityKg });
    fromMm = toMm;
  }
  return steps;
}

function distinct(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

/** How high the plate rates the truck with its mast vertical. */
export function endOfPlateMm(lines: readonly ChartLine[]): number {
  return Math.max(0, ...lines.filter((line) => line.mast === 'vertical').map(endMm));
}

/** Where a line ends, mm of lift height. */
export function endMm(line: ChartLine): number {
  return line.steps.at(-1)?.toMm ?? 0;
}
