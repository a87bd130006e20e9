import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { attachmentDeratedKg } from '../../../lib/check/estimates/attachment.ts';
import {
  beyondPlateKg,
  fieldDeratedKg,
  momentDeratedKg,
} from '../../../lib/check/estimates/field-derating.ts';
import { inchesToMm, kgToPounds, poundsToKg } from '../../../lib/units/conversions.ts';
import { formatMass } from '../../../lib/units/format-quantity.ts';
import { makeLoad, makeTruck } from '../../site-builder.ts';
import { answerTo } from '../judge.ts';

const pounds = (lb: number, plateIn: number, loadIn: number) => ({
  capacityKg: poundsToKg(lb),
  plateLoadCentreMm: inchesToMm(plateIn),
  loadCentreMm: inchesToMm(loadIn),
});

describe('the field rule for a longer load centre', () => {
  it.each([
    {
      lb: 5000,
      plateIn: 24,
      loadIn: 28,
      shown: 4285,
      source: 'OSHA powered industrial trucks eTool, rounded down',
    },
    {
      lb: 4000,
      plateIn: 24,
      loadIn: 36,
      shown: 2666,
      source: 'OSHA powered industrial trucks eTool, rounded down',
    },
    { lb: 3000, plateIn: 24, loadIn: 30, shown: 2400, source: '29 CFR 1910.178 appendix A-5' },
    {
      lb: 5000,
      plateIn: 24,
      loadIn: 40,
      shown: 3000,
      source: 'by the rule; less 100 lb an inch would make 3400',
    },
  ])(
    '$lb lb at $plateIn in carried at $loadIn in: about $shown lb ($source)',
    ({ lb, plateIn, loadIn, shown }) => {
      const kg = fieldDeratedKg(pounds(lb, plateIn, loadIn));
      expect(Math.floor(kgToPounds(kg) + 1e-6)).toBe(shown);
      expect(formatMass(kg, 'lb-in', 'down').replace(/\D/g, '')).toBe(String(shown));
    },
  );

  it.each([
    { loadCentreMm: 400, kg: 2000, why: 'a shorter one adds nothing' },
    { loadCentreMm: 599, kg: 2000, why: 'just shorter' },
    { loadCentreMm: 600, kg: 2000, why: 'equal' },
    { loadCentreMm: 601, kg: 1996.67, why: 'just longer' },
  ])('2000 kg at 600 mm carried at $loadCentreMm mm: $kg kg, $why', ({ loadCentreMm, kg }) => {
    const derating = { capacityKg: 2000, plateLoadCentreMm: 600, loadCentreMm };
    expect(fieldDeratedKg(derating)).toBeCloseTo(kg, 2);
    expect(momentDeratedKg(derating, 400)).toMatchObject({ kind: 'estimate' });
  });
});

describe('the moment form', () => {
  const derating = { capacityKg: 2000, plateLoadCentreMm: 500, loadCentreMm: 600 };

  it('gives 1809.5 kg for 2000 kg at 500 mm carried at 600 mm, 450 mm ahead of the axle (statics, by hand)', () => {
    const estimate = momentDeratedKg(derating, 450);
    expect(estimate.kind === 'estimate' && estimate.kg).toBeCloseTo(1809.5, 1);
    expect(fieldDeratedKg(derating)).toBeCloseTo(1666.7, 1);
  });

  it('is never below the field rule', () => {
    for (const x of [0, 1, 300, 900]) {
      const estimate = momentDeratedKg(derating, x);
      expect(estimate.kind === 'estimate' && estimate.kg).toBeGreaterThanOrEqual(fieldDeratedKg(derating));
    }
  });

  it('is refused for a fork face behind the wheels', () => {
    expect(momentDeratedKg(derating, -1)).toEqual({ kind: 'refused', cause: 'load-behind-wheels' });
  });

  it('gives no credit for a shorter load centre', () => {
    expect(momentDeratedKg({ ...derating, loadCentreMm: 400 }, 450)).toEqual({ kind: 'estimate', kg: 2000 });
  });
});

describe('an attachment', () => {
  // moments about the front axle, by hand: (2500 x 980 - 60 x 490) / 1020; a fork shank of 40 mm
  const sideshift = {
    capacityKg: 2500,
    loadCentreMm: 500,
    axleToForkFaceMm: 480,
    attachmentKg: 60,
    attachmentCentreMm: 10,
    lostLoadCentreMm: 40,
  };
  it('of 60 kg that pushes the load out 40 mm leaves about 2373.1 kg of 2500 kg', () => {
    expect(attachmentDeratedKg(sideshift)).toBeCloseTo(2373.1, 1);
  });

  it('never adds, never goes below nothing, and is not reckoned behind the wheels', () => {
    expect(attachmentDeratedKg({ ...sideshift, attachmentKg: 0, lostLoadCentreMm: 0 })).toBe(2500);
    expect(attachmentDeratedKg({ ...sideshift, attachmentKg: 9000 })).toBe(0);
    expect(attachmentDeratedKg({ ...sideshift, axleToForkFaceMm: -100 })).toBeNull();
  });
});

describe('an estimate', () => {
  it('never enters a verdict: beyond the plate a lift stays unproven however light the load', () => {
    const load = makeLoad({ grossKg: 1, depthMm: 1300, centreFromHeelMm: 650 });
    const answer = answerTo({ load });
    expect(beyondPlateKg(makeTruck(), 1750, 650)).toBeCloseTo((1600 * 600) / 650, 9);
    expect(answer).toMatchObject({ verdict: 'unproven', governing: 'plate-capacity', mostKg: null });
  });

  it('is not made above the height of the plate or for another attachment', () => {
    expect(beyondPlateKg(makeTruck(), 6001, 650)).toBeNull();
    expect(beyondPlateKg(makeTruck({ fittedAttachment: 'clamp' }), 1750, 650)).toBeNull();
    expect(beyondPlateKg(makeTruck(), 3001, 650)).toBeCloseTo((1000 * 600) / 650, 9);
  });

  it('is read by no rule and by nothing that decides', () => {
    const room = join(import.meta.dirname, '../../../lib/check');
    for (const folder of [room, join(room, 'rules')]) {
      for (const file of readdirSync(folder).filter((name) => name.endsWith('.ts'))) {
        expect(readFileSync(join(folder, file), 'utf8'), file).not.toContain('estimates/');
      }
    }
  });
});
