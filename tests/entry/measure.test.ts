import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  keptMeasure,
  type MeasureKind,
  measureText,
  measureValue,
  NO_MEASURE,
  typedMeasure,
} from '../../lib/entry/measure.ts';
import type { DisplayUnits } from '../../lib/units/format-quantity.ts';

const UNITS: DisplayUnits[] = ['metric', 'lb-in'];
const KINDS: MeasureKind[] = ['mass', 'length', 'speed', 'number'];
const anyFact = fc.double({ min: 1e-6, max: 1e7, noNaN: true });
const anyKind = fc.constantFrom(...KINDS);
const anyUnits = fc.constantFrom(...UNITS);

describe('a field that is opened with a fact', () => {
  it('stores the fact unchanged to the last bit while nobody writes in it, in either unit', () => {
    fc.assert(
      fc.property(anyFact, anyKind, anyUnits, (fact, kind, units) => {
        const opened = keptMeasure(fact);
        measureText(opened, kind, units);
        expect(measureValue(opened)).toBe(fact);
      }),
      { seed: 20260302 },
    );
  });

  it('stores it unchanged when the text it was shown as is written again', () => {
    fc.assert(
      fc.property(anyFact, anyKind, anyUnits, (fact, kind, units) => {
        const opened = keptMeasure(fact);
        const shown = measureText(opened, kind, units);
        const cleared = typedMeasure(opened, '', kind, units);
        expect(cleared.value).toBeNull();
        expect(typedMeasure(cleared, shown, kind, units).value).toBe(fact);
      }),
      { seed: 20260302 },
    );
  });

  it('shows a third of a millimetre that it does not write', () => {
    expect(measureText(keptMeasure(2267.96185), 'mass', 'metric')).toBe('2267.962');
    expect(measureText(keptMeasure(2267.96185), 'mass', 'lb-in')).toBe('5000'); // 5000 x 0.45359237
    expect(measureText(keptMeasure(2438.4), 'length', 'lb-in')).toBe('96'); // 96 x 25.4
  });
});

describe('what is written in a field', () => {
  it.each([
    { text: '96', kind: 'length', units: 'lb-in', value: 2438.4, why: '96 x 25.4 exactly' },
    { text: '5000', kind: 'mass', units: 'lb-in', value: 2267.96185, why: 'the pound by definition (1959)' },
    { text: '1 250', kind: 'mass', units: 'metric', value: 1250, why: 'digits in threes' },
    { text: '47 in', kind: 'length', units: 'metric', value: 1193.8, why: 'a unit of its own counts' },
    { text: '7.2 km/h', kind: 'speed', units: 'metric', value: 2, why: '7.2 / 3.6' },
    { text: '400', kind: 'speed', units: 'lb-in', value: 2.032, why: '400 ft/min x 0.3048 / 60' },
    { text: '0', kind: 'mass', units: 'metric', value: 0, why: 'zero is a number, which the model refuses' },
    { text: '', kind: 'mass', units: 'metric', value: null, why: 'nothing is stated' },
    { text: '  ', kind: 'mass', units: 'metric', value: null, why: 'blanks are nothing' },
    { text: '1,250', kind: 'mass', units: 'metric', value: 'unread', why: 'a thousand or a decimal?' },
    { text: '-5', kind: 'mass', units: 'metric', value: 'unread', why: 'no plain number' },
    { text: 'NaN', kind: 'number', units: 'metric', value: 'unread', why: 'no number at all' },
  ] as const)('$text as $kind in $units: $why', ({ text, kind, units, value }) => {
    expect(typedMeasure(NO_MEASURE, text, kind, units).value).toBe(value);
  });

  it('keeps its value when the reader switches units, and shows it in the new ones', () => {
    const typed = typedMeasure(NO_MEASURE, '96', 'length', 'lb-in');
    expect(measureText(typed, 'length', 'metric')).toBe('2438.4');
    expect(typed.value).toBe(2438.4);
    expect(measureText(typed, 'length', 'lb-in')).toBe('96');
  });

  it('that cannot be read stays as it was written, whatever the units', () => {
    const typed = typedMeasure(keptMeasure(1200), '1,2', 'length', 'metric');
    expect(measureText(typed, 'length', 'lb-in')).toBe('1,2');
    expect(measureValue(typed)).toBeUndefined();
  });
});
