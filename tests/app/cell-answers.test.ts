import { describe, expect, it } from 'vitest';
import { bestOfTrucks, countVerdicts } from '../../app/racks/cell-answers.ts';
import { type GridAnswer, NO_ANSWER } from '../../lib/grid/question.ts';

/** Two locations, three trucks; clear 0, thin 1, unproven 2, refuse 3. */
function answer(verdicts: number[], mostKg: number[], assessedKg: number[] = [900]): GridAnswer {
  return {
    locationCount: verdicts.length / 3,
    truckCount: 3,
    verdicts: Uint8Array.from(verdicts),
    governing: Uint8Array.from(verdicts.map((_, cell) => cell)),
    mostKg: Float64Array.from(mostKg),
    assessedKg: Float64Array.from(assessedKg),
  };
}

describe('bestOfTrucks', () => {
  it('takes the best verdict before the larger most-kg', () => {
    const best = bestOfTrucks(answer([1, 0, 3], [2000, 1000, 0]));
    expect([best.verdicts[0], best.bestTruck[0], best.mostKg[0], best.governing[0]]).toEqual([0, 1, 1000, 1]);
  });

  it('takes the larger most-kg among equal verdicts, and the earlier truck among equals', () => {
    expect(bestOfTrucks(answer([0, 0, 0], [900, 1200, 1200])).bestTruck[0]).toBe(1);
  });

  it('counts clear and thin trucks as able, unproven and refused ones not', () => {
    expect([...bestOfTrucks(answer([0, 1, 2, 2, 3, 3], [1, 1, -1, -1, 0, 0])).ableTrucks]).toEqual([2, 0]);
  });

  it('has no answer where nothing stands', () => {
    const best = bestOfTrucks(answer([NO_ANSWER, NO_ANSWER, NO_ANSWER], [-1, -1, -1], [-1]));
    expect([best.verdicts[0], best.ableTrucks[0], best.mostKg[0]]).toEqual([NO_ANSWER, 0, -1]);
  });

  it('spreads the one mass asked about over all locations, and keeps stored masses apart', () => {
    expect([...bestOfTrucks(answer([0, 0, 0, 0, 0, 0], [1, 1, 1, 1, 1, 1])).assessedKg]).toEqual([900, 900]);
    const stored = bestOfTrucks(answer([0, 0, 0, 0, 0, 0], [1, 1, 1, 1, 1, 1], [700, -1]));
    expect([...stored.assessedKg]).toEqual([700, -1]);
  });

  it('answers nothing for no trucks', () => {
    const none = bestOfTrucks({ ...answer([], []), locationCount: 2, truckCount: 0 });
    expect([...none.verdicts]).toEqual([NO_ANSWER, NO_ANSWER]);
  });
});

describe('countVerdicts', () => {
  it('counts each verdict and the places without one, over a span', () => {
    const verdicts = Uint8Array.from([0, 1, 1, 2, 3, NO_ANSWER]);
    expect(countVerdicts(verdicts)).toEqual({ each: [1, 2, 1, 1], none: 1 });
    expect(countVerdicts(verdicts, 4, 2)).toEqual({ each: [0, 0, 0, 1], none: 1 });
  });
});
