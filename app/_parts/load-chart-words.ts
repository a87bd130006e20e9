import type { ChartLine } from '@/app/_parts/load-chart-lines.ts';
import { plateRating } from '@/lib/check/plate-rating.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { causeWords } from '@/lib/words/cause.ts';

/** The lift that is asked about, to be marked on the chart. */
export type ChartMark = { liftMm: number; loadCentreMm: number; assessedKg: number | null };

/** The lift that is marked, and what the plate says to it. */
export function markSentence(truck: Truck, mark: ChartMark, units: DisplayUnits): string {
  const plate = plateRating(truck, 'vertical', mark.liftMm, mark.loadCentreMm);
  const mass = mark.assessedKg === null ? 'a mass not known' : formatMass(mark.assessedKg, units, 'up');
  const lift = `This lift: ${mass} at ${formatLength(mark.liftMm, units, 'up')}, load centre ${formatLength(mark.loadCentreMm, units, 'up')}.`;
  return plate.kind === 'proven'
    ? `${lift} With the mast vertical the plate proves ${formatMass(plate.rating.capacityKg, units, 'down')} there.`
    : `${lift} The plate proves nothing there: ${causeWords(plate.cause)}.`;
}

/** The chart in words for those who hear the page: each line's steps, then the lift that is asked about. */
export function describeChart(
  lines: readonly ChartLine[],
  units: DisplayUnits,
  mark: ChartMark | undefined,
): string {
  const told = lines.map((line) => {
    const steps = line.steps.map(
      ({ toMm, capacityKg }) =>
        `${formatMass(capacityKg, units, 'down')} up to ${formatLength(toMm, units, 'down')}`,
    );
    const mast = line.mast === 'vertical' ? 'mast vertical' : 'mast tilted forward';
    return `Load centre ${formatLength(line.loadCentreMm, units, 'down')}, ${mast}: ${steps.join(', ')}.`;
  });
  if (mark !== undefined) {
    const mass =
      mark.assessedKg === null ? 'a load of unknown mass' : formatMass(mark.assessedKg, units, 'up');
    told.push(
      `This lift: ${mass} at ${formatLength(mark.liftMm, units, 'up')}, load centre ${formatLength(mark.loadCentreMm, units, 'up')}.`,
    );
  }
  return told.join(' ');
}
