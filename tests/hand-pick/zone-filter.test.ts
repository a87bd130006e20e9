import { describe, expect, it } from 'vitest';
import { zoneFilter } from '../../lib/hand-pick/zone-filter.ts';

const at = (originMm: number, destinationMm = originMm, liftsPerMinute = 0, asymmetryDeg = 0) =>
  zoneFilter({ originMm, destinationMm, liftsPerMinute, asymmetryDeg });

describe('zoneFilter', () => {
  it.each([
    { mm: 249, zone: 'below-lower-leg' },
    { mm: 250, zone: 'lower-leg-to-knuckle' },
    { mm: 749, zone: 'lower-leg-to-knuckle' },
    { mm: 750, zone: 'knuckle-to-elbow' },
    { mm: 1049, zone: 'knuckle-to-elbow' },
    { mm: 1050, zone: 'elbow-to-shoulder' },
    { mm: 1399, zone: 'elbow-to-shoulder' },
    { mm: 1400, zone: 'above-shoulder' },
  ])('puts hands at $mm mm in $zone', ({ mm, zone }) => {
    expect(at(mm).zone).toBe(zone);
  });

  it('takes the least of the zones that the hands pass through', () => {
    expect(at(800, 1100).men.closeKg).toBe(20);
    expect(at(200, 1500).men.closeKg).toBe(10);
    expect(at(1500, 200)).toEqual(at(200, 1500));
  });

  it.each([
    { liftsPerMinute: 0.5, kg: 25 },
    { liftsPerMinute: 0.51, kg: 17.5 },
    { liftsPerMinute: 2, kg: 17.5 },
    { liftsPerMinute: 2.1, kg: 12.5 },
    { liftsPerMinute: 8, kg: 12.5 },
    { liftsPerMinute: 8.1, kg: 5 },
  ])('leaves $kg of 25 kg at $liftsPerMinute a minute', ({ liftsPerMinute, kg }) => {
    expect(at(900, 900, liftsPerMinute).men.closeKg).toBe(kg);
  });

  it.each([
    { deg: 45, kg: 25 },
    { deg: 46, kg: 22.5 },
    { deg: 90, kg: 22.5 },
    { deg: 91, kg: 20 },
  ])('leaves $kg of 25 kg at a twist of $deg degrees', ({ deg, kg }) => {
    expect(at(900, 900, 0, deg).men.closeKg).toBe(kg);
  });
});
