import { describe, expect, it } from 'vitest';
import { fillMassSteps } from '../../lib/grid/mass-steps.ts';
import { CLEAR, codeOf, NO_RULE, REFUSE, RULE, THIN, UNPROVEN } from '../../lib/grid/tally.ts';
import { emptyTruckSide } from '../../lib/grid/truck-side.ts';

const PLATE = RULE['plate-capacity'];

type Row = { verdict: number; use: number; rule: number; limitKg: number; limitRule?: number };

/** What a row says of a mass. */
function saidBy(row: Row, thinPercent = 10): (massKg: number) => number {
  const side = emptyTruckSide(1);
  side.verdict[0] = row.verdict;
  side.use[0] = row.use;
  side.rule[0] = row.rule;
  side.leastKg[0] = row.limitKg;
  side.leastRule[0] = row.limitRule ?? PLATE;
  fillMassSteps(side, 0, thinPercent);
  expect([...side.aboveKg]).toEqual([...side.aboveKg].sort((a, b) => a - b));
  return (massKg) => side.code[side.aboveKg.filter((kg) => massKg > kg).length]!;
}

const above = (kg: number) => kg * (1 + Number.EPSILON);
const below = (kg: number) => kg * (1 - Number.EPSILON / 2);

describe('the steps of a row of the trucks side', () => {
  it('go from what weighs nothing to the limit as a pass, as thin, as a failure', () => {
    const clear = { verdict: CLEAR, use: 0.5, rule: RULE['aisle-turn'], limitKg: 1000 };
    const said = saidBy(clear);
    expect(said(below(500))).toBe(codeOf(CLEAR, RULE['aisle-turn']));
    expect(said(500)).toBe(codeOf(CLEAR, RULE['aisle-turn'])); // equal uses: aisle-turn is the earlier rule
    expect(said(above(500))).toBe(codeOf(CLEAR, PLATE));
    expect(said(900)).toBe(codeOf(CLEAR, PLATE)); // 90 % is not thin yet
    expect(said(above(900))).toBe(codeOf(THIN, PLATE));
    expect(said(1000)).toBe(codeOf(THIN, PLATE));
    expect(said(above(1000))).toBe(codeOf(REFUSE, PLATE));
  });

  it('give equal uses to the earlier rule, whichever side it is on', () => {
    const later = saidBy({ verdict: CLEAR, use: 0.5, rule: RULE['fork-length'], limitKg: 1000 });
    expect(later(below(500))).toBe(codeOf(CLEAR, RULE['fork-length']));
    expect(later(500)).toBe(codeOf(CLEAR, PLATE));
  });

  it('leave an unknown fact deciding until the limit is passed', () => {
    const said = saidBy({ verdict: UNPROVEN, use: 0, rule: RULE['truck-fit'], limitKg: 1000 });
    expect(said(999)).toBe(codeOf(UNPROVEN, RULE['truck-fit']));
    expect(said(1000)).toBe(codeOf(UNPROVEN, RULE['truck-fit']));
    expect(said(above(1000))).toBe(codeOf(REFUSE, PLATE));
  });

  it('leave a failure deciding until the mass fails by more', () => {
    const said = saidBy({ verdict: REFUSE, use: 1.25, rule: RULE['lift-height'], limitKg: 1000 });
    expect(said(1001)).toBe(codeOf(REFUSE, RULE['lift-height']));
    expect(said(1250)).toBe(codeOf(REFUSE, RULE['lift-height']));
    expect(said(above(1250))).toBe(codeOf(REFUSE, PLATE));
    const state = saidBy({ verdict: REFUSE, use: Number.POSITIVE_INFINITY, rule: 0, limitKg: 1000 });
    expect(state(1e7)).toBe(codeOf(REFUSE, 0));
  });

  it('never come where no limit is known', () => {
    const said = saidBy({
      verdict: CLEAR,
      use: 1,
      rule: 3,
      limitKg: Number.POSITIVE_INFINITY,
      limitRule: NO_RULE,
    });
    expect(said(1e7)).toBe(codeOf(CLEAR, 3));
  });

  it('know no thin band at 0 %, and nothing but it at 100 %', () => {
    const row = { verdict: CLEAR, use: 0.5, rule: 3, limitKg: 1000 };
    expect(saidBy(row, 0)(1000)).toBe(codeOf(CLEAR, PLATE));
    expect(saidBy(row, 100)(0.1)).toBe(codeOf(THIN, PLATE));
  });
});
