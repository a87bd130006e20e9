import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BLANK_LOAD,
  blankItem,
  drawableLoad,
  judgeLoad,
  type LoadDraft,
  loadDraftOf,
  massOnly,
} from '../../lib/entry/load-draft.ts';
import { NO_MEASURE, typedMeasure } from '../../lib/entry/measure.ts';
import { assessedMassKg, grossMass } from '../../lib/model/load.ts';
import { policyInForce } from '../../lib/model/policy.ts';
import { drawSite } from '../properties/arbitrary-site.ts';
import { makeDrums, makeLoad, makeSite } from '../site-builder.ts';

const { palletTypes } = makeSite();
const typed = (text: string, kind: 'mass' | 'length' | 'number' = 'mass') =>
  typedMeasure(NO_MEASURE, text, kind, 'metric');
const handPick = {
  massKg: 12.3456789,
  horizontalMm: 400,
  gripHeightMm: 0,
  destinationHeightMm: 900,
  asymmetryDeg: 30,
  liftsPerMinute: 0.2,
  durationHours: 8,
  coupling: 'fair',
} as const;

describe('the form of a load', () => {
  it.each([
    ['weighed', makeLoad({ grossKg: 800.000000001 })],
    ['of items', makeDrums()],
    ['declared, with its items listed', makeDrums({ grossKg: 1100, massBasis: 'declared' })],
    ['of no known mass, on no pallet', makeLoad({ grossKg: null, massBasis: 'declared', palletType: null })],
    [
      'with everything',
      makeLoad({ centreFromHeelMm: 1 / 3, centreHeightMm: 0.1 + 0.2, group: ' chilled ', handPick }),
    ],
  ])('of a load %s, opened and saved untouched, stores every fact to the last bit', (_why, load) => {
    expect(judgeLoad(loadDraftOf(load), palletTypes).fact).toEqual(load);
  });

  it('does so for any load of any site', () => {
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const site = drawSite(g);
        for (const load of site.loads)
          expect(judgeLoad(loadDraftOf(load), site.palletTypes).fact).toEqual(load);
      }),
      { seed: 20260302, numRuns: 40 },
    );
  });

  it('adds up items and pallet: four drums of 250 kg and a pallet of 60 kg are 1060 kg', () => {
    const items = [{ ...blankItem([]), name: 'drum', mass: typed('250'), count: typed('4', 'number') }];
    const load = massOnly({ ...BLANK_LOAD, massFrom: 'items', palletType: 'p1200', items });
    expect(grossMass(load, palletTypes[0]!)).toEqual({ kg: 1060, basis: 'calculated' });
    expect(assessedMassKg(load, palletTypes[0]!, policyInForce({}))).toBe(1060);
  });

  it('names what a new load still lacks at its fields', () => {
    const { fact, faults } = judgeLoad(BLANK_LOAD, palletTypes);
    expect(fact).toBeNull();
    expect([...faults.keys()].sort()).toEqual(['depthMm', 'heightMm', 'id', 'name', 'widthMm']);
  });

  it('refuses at the line of an item, and an item that is not whole', () => {
    const items = [
      { key: 0, name: 'drum', mass: typed('0'), count: typed('1.5', 'number') },
      { key: 1, name: '', mass: typed('2,5'), count: NO_MEASURE },
    ];
    const draft: LoadDraft = { ...loadDraftOf(makeLoad()), massFrom: 'items', items };
    const { faults } = judgeLoad(draft, palletTypes);
    expect([...faults.keys()].sort()).toEqual([
      'items.0.count',
      'items.0.massKg',
      'items.1.count',
      'items.1.massKg',
      'items.1.name',
    ]);
    expect(faults.get('items.1.massKg')).toMatchObject({ is: 'unread' });
  });

  it('refuses a pallet type that is not there at its field', () => {
    const { faults } = judgeLoad({ ...loadDraftOf(makeLoad()), palletType: 'p1201' }, palletTypes);
    expect(faults.get('palletType')).toMatchObject({
      refusal: { expected: { is: 'id-in', nearest: 'p1200' } },
    });
  });

  it('does not store a gross mass that was typed before items were chosen, and does not judge it', () => {
    const draft = loadDraftOf(makeDrums());
    const measures = { ...draft.measures, grossKg: typed('about 900') };
    expect(judgeLoad({ ...draft, measures }, palletTypes).fact).toEqual(makeDrums());
  });

  it('wants all of a pick by hand or none of it', () => {
    const draft = { ...loadDraftOf(makeLoad()), isHandPicked: true };
    const { faults } = judgeLoad(draft, palletTypes);
    expect([...faults.keys()].filter((key) => key.startsWith('handPick.'))).toHaveLength(8);
  });

  it('is drawn once depth and height are there', () => {
    expect(drawableLoad(BLANK_LOAD)).toBeNull();
    expect(drawableLoad(loadDraftOf(makeLoad()))).toMatchObject({ depthMm: 1200, heightMm: 1000 });
  });
});
