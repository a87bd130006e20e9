import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { VERDICTS } from '../../lib/check/step.ts';
import { answerGrid } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { type GridAnswer, NO_ANSWER } from '../../lib/grid/question.ts';
import type { Load } from '../../lib/model/load.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import type { SiteIndex } from '../../lib/model/site-index.ts';
import type { Truck } from '../../lib/model/truck.ts';
import { makeContext, makeIndex, makeLoad, makeTruck, placeOf } from '../site-builder.ts';

const BOTH = ['reach-1', 'counter-1'];

function cellOf(answer: GridAnswer, cell: number) {
  return {
    verdict: VERDICTS[answer.verdicts[cell]!],
    governing: RULE_IDS[answer.governing[cell]!],
    mostKg: answer.mostKg[cell],
  };
}

function askOne(index: SiteIndex, load: Load, trucks = BOTH): GridAnswer {
  return answerGrid(compileSite(index), { load: { kind: 'one', load }, trucks, context: makeContext() });
}

describe('the order of cells', () => {
  it('is location by location as the site lists them, and within a location the trucks as asked', () => {
    const index = makeIndex();
    const there = askOne(index, makeLoad());
    const back = askOne(index, makeLoad(), [...BOTH].reverse());
    expect([there.locationCount, there.truckCount, there.verdicts.length]).toEqual([12, 2, 24]);
    for (let location = 0; location < 12; location += 1) {
      expect(cellOf(there, 2 * location)).toEqual(cellOf(back, 2 * location + 1));
    }
    // the top beams of a1 stand at 3000 mm: lift 3250, past the 1600 kg step of the reach truck's plate
    expect(there.mostKg[2 * 4]).toBe(1000);
    expect(there.mostKg[2 * 4 + 1]).toBe(1200); // the notice's unit load, below the counterbalanced truck's plate
  });

  it('answers nothing for a site without locations and for no trucks', () => {
    expect(askOne(makeIndex({ runs: [] }), makeLoad()).verdicts.length).toBe(0);
    expect(askOne(makeIndex(), makeLoad(), []).verdicts.length).toBe(0);
  });

  it('throws on a truck and on an operator that the site does not have, and on an asOf that is no time', () => {
    const site = compileSite(makeIndex());
    const ask = (trucks: string[], context: Parameters<typeof makeContext>[0]) =>
      answerGrid(site, { load: { kind: 'stored' }, trucks, context: makeContext(context) });
    expect(() => ask(['none'], {})).toThrow('no truck none');
    expect(() => ask(BOTH, { operator: 'nobody' })).toThrow('no operator nobody');
    expect(() => ask(BOTH, { asOf: 'noon' })).toThrow('not an ISO 8601 time');
  });
});

describe('what stands there', () => {
  const index = makeIndex({
    stock: [
      { location: 'a1-1-1', load: 'crates' },
      { location: 'a2-2-2', load: 'drums' },
    ],
  });

  it('has no answer where nothing stands', () => {
    const answer = answerGrid(compileSite(index), {
      load: { kind: 'stored' },
      trucks: BOTH,
      context: makeContext({ operation: 'retrieve' }),
    });
    const asked = [...answer.verdicts.keys()].filter((cell) => answer.verdicts[cell] !== NO_ANSWER);
    expect(asked).toEqual([4, 5, 22, 23]);
    expect([...answer.assessedKg].filter((kg) => kg >= 0)).toEqual([800, 1060]);
    // 1060 kg at 3250 mm: the reach truck's plate proves 1000
    expect(cellOf(answer, 22)).toEqual({ verdict: 'refuse', governing: 'plate-capacity', mostKg: 1000 });
  });

  it('placed back, does not count against itself', () => {
    const answer = answerGrid(compileSite(index), {
      load: { kind: 'stored' },
      trucks: ['counter-1'],
      context: makeContext(),
    });
    expect(cellOf(answer, 2)).toMatchObject({ verdict: 'clear' });
  });
});

describe('limits so near that uses round to one number', () => {
  const near = (capacityKg: number, armCapacityKg: number): Truck =>
    makeTruck({
      id: 'near',
      forks: { lengthMm: 1200, armCapacityKg, armLoadCentreMm: 600 },
      plate: {
        verticalLoadCentreMm: null,
        ratings: [{ mast: 'vertical', attachment: null, liftHeightMm: 6000, loadCentreMm: 600, capacityKg }],
      },
    });
  const belowKg = 500 * (1 - Number.EPSILON / 2); // arms one bit below half the plate

  it.each([
    { truck: near(1000, 500), why: 'equal limits' },
    { truck: near(1000, belowKg), why: 'arms one bit less' },
    { truck: near(2 * belowKg, 500), why: 'plate one bit less' },
  ])('the order of the table decides as in the one lift check: $why', ({ truck }) => {
    for (let grossKg = 899; grossKg <= 1100; grossKg += 1) {
      const load = makeLoad({ id: 'near', grossKg });
      const index = makeIndex({
        trucks: [truck],
        loads: [load],
        checks: [],
        stock: [{ location: 'a1-2-1', load: 'near' }],
      });
      const context = makeContext({ operation: 'retrieve' });
      const answer = answerGrid(compileSite(index), { load: { kind: 'stored' }, trucks: ['near'], context });
      const one = checkLift(index, { load, truck, place: placeOf(index, 'a1-2-1'), context });
      expect(cellOf(answer, 4), `${grossKg} kg`).toEqual({
        verdict: one.verdict,
        governing: one.governing,
        mostKg: one.mostKg,
      });
    }
  });
});

it('reports progress up to the whole', () => {
  const heard: number[] = [];
  answerGrid(
    compileSite(makeIndex()),
    { load: { kind: 'stored' }, trucks: BOTH, context: makeContext() },
    (done) => heard.push(done),
  );
  expect(heard).toEqual([1]);
});

describe('a question around what the site does not have', () => {
  it.each([
    { context: { from: 'nowhere' }, told: 'no location nowhere in this site' },
    { context: { operator: 'nobody' }, told: 'no operator nobody in this site' },
  ])('is not answered: $told', ({ context, told }) => {
    const site = compileSite(makeIndex());
    const load = { kind: 'one', load: makeLoad() } as const;
    expect(() => answerGrid(site, { load, trucks: BOTH, context: makeContext(context) })).toThrow(told);
  });
});
