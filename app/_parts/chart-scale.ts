import { kgToPounds, mmToInches } from '@/lib/units/conversions.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

/** The number that stands on a mass axis. */
export function massIn(kg: number, units: DisplayUnits): number {
  return units === 'metric' ? kg : kgToPounds(kg);
}

/** The number that stands on a length axis. */
export function lengthIn(mm: number, units: DisplayUnits): number {
  return units === 'metric' ? mm : mmToInches(mm);
}

export function massUnit(units: DisplayUnits): string {
  return units === 'metric' ? 'kg' : 'lb';
}

export function lengthUnit(units: DisplayUnits): string {
  return units === 'metric' ? 'mm' : 'in';
}

/** Round marks for an axis from 0 to at least `most`: steps of 1, 2 or 5 times a power of ten, at most `marks` of them. */
export function axisMarks(most: number, marks: number): number[] {
  if (!(most > 0) || marks < 1) return [0];
  const raw = most / marks;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((times) => times * power).find((size) => size >= raw) ?? 10 * power;
  // counted, not summed: a sum of tenths drifts
  return Array.from({ length: Math.ceil(most / step) + 1 }, (_, at) => Number((at * step).toPrecision(12)));
}

/**
 * Places for labels along one axis: as near as can be to where each belongs, at least `apart` from the next, between
 * `from` and `to` (room permitting). In the order given.
 */
export function spreadLabels(
  wanted: readonly number[],
  { apart, from, to }: { apart: number; from: number; to: number },
): number[] {
  const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = new Array<number>(wanted.length);
  let least = from;
  for (const at of order) {
    placed[at] = Math.max(least, wanted[at]!);
    least = placed[at]! + apart;
  }
  let most = to;
  for (const at of order.toReversed()) {
    placed[at] = Math.min(most, placed[at]!);
    most = placed[at]! - apart;
  }
  return placed;
}
