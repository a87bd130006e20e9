import type { Step } from '@/lib/check/step.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';

/** What a step needs or has, for reading: a need is rounded up and what there is rounded down, so that neither flatters. */
export function showStepValue(step: Step, side: 'need' | 'have', units: DisplayUnits): string {
  const value = step[side];
  if (value === null) return 'not known';
  if (typeof value === 'string') return value;
  const lean = side === 'need' ? 'up' : 'down';
  switch (step.unit) {
    case 'kg':
      return formatMass(value, units, lean);
    case 'mm':
      return formatLength(value, units, lean);
    case 'row':
      return `row ${value}`;
    case 'state':
      return String(value);
  }
}
