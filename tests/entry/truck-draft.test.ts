import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptMeasure, NO_MEASURE, typedMeasure } from '../../lib/entry/measure.ts';
import {
  BLANK_TRUCK,
  drawableTruck,
  judgeTruck,
  type TruckDraft,
  truckDraftOf,
} from '../../lib/entry/truck-draft.ts';
import { TRUCK_KINDS, type Truck } from '../../lib/model/truck.ts';
import { drawSite } from '../properties/arbitrary-site.ts';
import { makeTruck } from '../site-builder.ts';

const withMeasure = (draft: TruckDraft, key: keyof TruckDraft['measures'], text: string): TruckDraft => ({
  ...draft,
  measures: { ...draft.measures, [key]: typedMeasure(draft.measures[key], text, 'length', 'metric') },
});

describe('the form of a truck', () => {
  it('opened and saved untouched stores every fact to the last bit', () => {
    const odd: Truck = makeTruck({
      maxLiftMm: 5999.9999999999,
      turning: { outsideRadiusMm: 1650.0000001, loadDistanceMm: 0, insideOffsetMm: 1 / 3 },
      speeds: { travelMps: 2.123456789, liftMps: 0.1 + 0.2 },
      statedAisleMm: 2743.2000000000003,
      hold: { since: '2026-03-02', reason: 'Chain stretched' },
      fittedAttachment: 'side shift',
    });
    expect(judgeTruck(truckDraftOf(odd)).fact).toEqual(odd);
  });

  it('does so for any truck of any site', () => {
    fc.assert(
      fc.property(fc.gen(), (g) => {
        for (const truck of drawSite(g).trucks) expect(judgeTruck(truckDraftOf(truck)).fact).toEqual(truck);
      }),
      { seed: 20260302, numRuns: 40 },
    );
  });

  it('changes only the figure that is typed', () => {
    const truck = makeTruck({ maxLiftMm: 6000.0000000001 });
    const draft = withMeasure(truckDraftOf(truck), 'loweredMm', '2500');
    expect(judgeTruck(draft).fact).toEqual({ ...truck, loweredMm: 2500 });
  });

  it('takes what is emptied as not stated, never as zero', () => {
    const draft = withMeasure(truckDraftOf(makeTruck()), 'loweredMm', '');
    expect(judgeTruck(draft).fact?.loweredMm).toBeNull();
  });

  it('names what a new truck still lacks at its fields', () => {
    const { fact, faults } = judgeTruck(BLANK_TRUCK);
    expect(fact).toBeNull();
    expect([...faults.keys()].sort()).toEqual(['id', 'kind', 'maxLiftMm', 'name', 'power', 'reachDepth']);
  });

  it.each([
    ['loweredMm', '0', 'loweredMm', 'above'],
    ['maxLiftMm', '10000001', 'maxLiftMm', 'at-most'],
    ['freeLiftMm', '6001', 'freeLiftMm', 'at-most-field'],
    ['extendedMm', '2399', 'extendedMm', 'at-least-field'],
    ['forks.armCapacityKg', '', 'forks.armCapacityKg', 'both-or-neither'],
    ['turning.loadDistanceMm', '', 'turning.loadDistanceMm', 'present'],
    ['speeds.travelMps', '2', 'speeds.liftMps', 'present'],
  ] as const)('refuses %s = "%s" at its own field', (key, text, field, expected) => {
    const { fact, faults } = judgeTruck(withMeasure(truckDraftOf(makeTruck()), key, text));
    expect(fact).toBeNull();
    expect(faults.get(field)).toMatchObject({ is: 'refused', refusal: { expected: { is: expected } } });
  });

  it('shows the refusal of a line of the plate at its cell or its heading', () => {
    const draft = truckDraftOf(makeTruck());
    const [block] = draft.plate;
    const zero = { ...typedMeasure(NO_MEASURE, '0', 'mass', 'metric'), at: null };
    const rows = [
      { ...block!.rows[0]!, cells: [zero] },
      { ...block!.rows[1]!, liftHeight: keptMeasure(-1) },
    ];
    const { faults } = judgeTruck({ ...draft, plate: [{ ...block!, rows }] });
    expect([...faults.keys()].sort()).toEqual(['plate.0.0.0', 'plate.0.1.-1']);
  });

  it('draws what can be drawn while it is typed', () => {
    const { plate } = truckDraftOf(makeTruck());
    const drawn = drawableTruck({ ...BLANK_TRUCK, plate });
    expect(drawn.maxLiftMm).toBe(6000);
    expect(drawn.plate.ratings).toEqual(makeTruck().plate.ratings);
    for (const kind of TRUCK_KINDS) expect(drawableTruck({ ...BLANK_TRUCK, kind }).kind).toBe(kind);
  });
});
