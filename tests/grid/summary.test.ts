import { describe, expect, it } from 'vitest';
import { VERDICTS, type Verdict } from '../../lib/check/step.ts';
import { type GridAnswer, NO_ANSWER } from '../../lib/grid/question.ts';
import { countVerdicts, countVerdictsByRun, NO_TRUCK, summariseLocations } from '../../lib/grid/summary.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';

type Cell = [Verdict | null, number];

function answerOf(rows: Cell[][]): GridAnswer {
  const cells = rows.flat();
  return {
    locationCount: rows.length,
    truckCount: rows[0]!.length,
    verdicts: Uint8Array.from(cells, ([verdict]) =>
      verdict === null ? NO_ANSWER : VERDICTS.indexOf(verdict),
    ),
    governing: Uint8Array.from(cells, ([verdict], i) => (verdict === null ? NO_ANSWER : i % RULE_IDS.length)),
    mostKg: Float64Array.from(cells, ([, kg]) => kg),
    assessedKg: new Float64Array(1),
  };
}

const answer = answerOf([
  [
    ['refuse', 0],
    ['thin', 900],
    ['clear', 1000],
  ],
  [
    ['thin', 900],
    ['thin', 950],
    ['thin', 950],
  ],
  [
    ['unproven', -1],
    ['refuse', 700],
    ['unproven', -1],
  ],
  [
    [null, -1],
    [null, -1],
    [null, -1],
  ],
]);

describe('the trucks together at each location', () => {
  it('give the best verdict, of equal verdicts the most mass, of equal masses the first truck', () => {
    const summary = summariseLocations(answer);
    expect([...summary.best].map((code) => VERDICTS[code] ?? null)).toEqual([
      'clear',
      'thin',
      'unproven',
      null,
    ]);
    expect([...summary.bestTruck]).toEqual([2, 1, 0, NO_TRUCK]);
    expect([...summary.bestMostKg]).toEqual([1000, 950, -1, -1]);
    expect([...summary.bestRule]).toEqual([2, 4, 6, NO_ANSWER]);
    expect([...summary.clear]).toEqual([1, 0, 0, 0]);
    expect([...summary.thin]).toEqual([1, 3, 0, 0]);
  });

  it('can be taken of some trucks only, and of none', () => {
    const one = summariseLocations(answer, [0]);
    expect([...one.bestTruck]).toEqual([0, 0, 0, NO_TRUCK]);
    expect([...one.best].map((code) => VERDICTS[code] ?? null)).toEqual(['refuse', 'thin', 'unproven', null]);
    expect([...summariseLocations(answer, []).bestTruck]).toEqual([NO_TRUCK, NO_TRUCK, NO_TRUCK, NO_TRUCK]);
  });
});

it('counts the best verdicts of a range and of each run', () => {
  const summary = summariseLocations(answer);
  expect(countVerdicts(summary, 0, 4)).toEqual({ clear: 1, thin: 1, unproven: 1, refuse: 0, unasked: 1 });
  expect(countVerdictsByRun(summary, [0, 1, 4])).toEqual([
    { clear: 1, thin: 0, unproven: 0, refuse: 0, unasked: 0 },
    { clear: 0, thin: 1, unproven: 1, refuse: 0, unasked: 1 },
  ]);
});
