import { describe, expect, it } from 'vitest';
import { measureReader, typedAgain } from '../../app/_parts/typed-measures.ts';

describe('what is typed into plain forms', () => {
  it.each([
    { raw: { bow: '4' }, mm: 4 },
    { raw: { bow: '4', units: 'lb-in' }, mm: 101.6 },
    { raw: { bow: '4 mm', units: 'lb-in' }, mm: 4 },
    { raw: { bow: '0' }, mm: 0 },
    { raw: { bow: ' ' }, mm: null },
  ])('reads $raw as $mm mm', ({ raw, mm }) => {
    expect(measureReader(raw).read('bow', 'length')).toBe(mm);
  });

  it.each(['four', '-4', '4 kg', '1e9', '4,5'])('refuses %s as a length', (bow) => {
    const { read, refused } = measureReader({ bow });
    expect(read('bow', 'length')).toBeNull();
    expect(refused.map(({ path }) => path)).toEqual(['$.bow']);
  });

  it.each([
    { raw: { bow: '4' }, again: '4 mm' },
    { raw: { bow: '0.16', units: 'lb-in' }, again: '0.16 in' },
    { raw: { bow: '4 mm', units: 'lb-in' }, again: '4 mm' },
    { raw: { bow: 'four' }, again: 'four' },
    { raw: {}, again: '' },
  ])(
    'puts $raw back into its field as $again, so that a switch of units leaves it as it is',
    ({ raw, again }) => {
      expect(typedAgain(raw, 'bow', 'length')).toBe(again);
      if (again !== 'four') {
        expect(measureReader({ bow: again, units: 'lb-in' }).read('bow', 'length')).toBe(
          measureReader(raw).read('bow', 'length'),
        );
      }
    },
  );
});
