import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { type Context, type LiftAnswer, OUTCOMES, type Outcome, VERDICTS } from '../../lib/check/step.ts';
import { answerGrid } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { type GridAnswer, type GridQuestion, NO_ANSWER } from '../../lib/grid/question.ts';
import type { Load } from '../../lib/model/load.ts';
import { MASS_RULES, RULE_IDS, type RuleId } from '../../lib/model/rule-ids.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { indexSite, type SiteIndex } from '../../lib/model/site-index.ts';
import type { Truck } from '../../lib/model/truck.ts';
import { chance, drawContext, drawLoad, drawSite } from './arbitrary-site.ts';

const SEED = 20260302;
const SITES = 400;

/** Which outcomes each rule can reach at all. */
const YES_NO: Outcome[] = ['pass', 'fail', 'not-applicable'];
const MASS: Outcome[] = ['pass', 'thin', 'fail', 'unknown'];
const REACHABLE: Record<RuleId, Outcome[]> = {
  'truck-fit': ['pass', 'fail', 'unknown', 'not-applicable'],
  'operator-authorised': YES_NO,
  'slot-free': YES_NO,
  'depth-reach': ['pass', 'fail'],
  'lift-height': ['pass', 'fail'],
  'aisle-turn': ['pass', 'fail', 'unknown'],
  'plate-capacity': MASS,
  'tilt-capacity': [...MASS, 'not-applicable'],
  'centre-height': YES_NO,
  'fork-length': ['pass', 'fail', 'unknown'],
  'fork-arms': MASS,
  'mast-overhead': ['pass', 'fail', 'unknown', 'not-applicable'],
  'load-overhead': ['pass', 'fail', 'unknown', 'not-applicable'],
  'opening-height': YES_NO,
  'sprinkler-clearance': ['pass', 'fail', 'unknown', 'not-applicable'],
  'opening-width': YES_NO,
  'pallet-support': YES_NO,
  'unit-load': [...MASS, 'not-applicable'],
  'beam-level': [...MASS, 'not-applicable'],
  'bay-load': [...MASS, 'not-applicable'],
  'frame-load': [...MASS, 'not-applicable'],
  'rack-condition': ['pass', 'fail'],
};

const seen = {
  triples: 0,
  outcomes: new Map<string, number>(),
  causes: new Map<string, number>(),
  governing: new Map<string, number>(),
  equal: 0,
  /** Loads inside the wheel line in an aisle narrower even than the stated one: a fail by the stated aisle alone. */
  insideWheelsFail: 0,
};

function count(map: Map<string, number>, key: string): void {
  map.set(key, (map.get(key) ?? 0) + 1);
}

function note(answer: LiftAnswer, truck: Truck, load: Load): void {
  seen.triples += 1;
  count(seen.governing, `${answer.verdict} by ${answer.governing}`);
  for (const { rule, outcome, cause, need, have } of answer.steps) {
    count(seen.outcomes, `${rule} ${outcome}`);
    if (cause !== undefined) count(seen.causes, `${rule}: ${cause}`);
    if (typeof need === 'number' && need === have) seen.equal += 1;
    const straddles = truck.kind === 'reach' || truck.kind === 'stacker';
    const inside = straddles && truck.turning !== null && load.depthMm <= truck.turning.loadDistanceMm;
    if (rule === 'aisle-turn' && outcome === 'fail' && inside) seen.insideWheelsFail += 1;
  }
}

/** Cell by cell, the grid says what one lift check says. */
function expectSameAsCheck(index: SiteIndex, question: GridQuestion, answer: GridAnswer): void {
  const trucks = question.trucks.map((id) => index.trucks.get(id)!);
  let cell = 0;
  for (const [location, place] of [...index.places.values()].entries()) {
    const load: Load | undefined =
      question.load.kind === 'one' ? question.load.load : index.stockAt.get(place.id);
    const context: Context =
      question.load.kind === 'one' ? question.context : { ...question.context, from: place.id };
    for (const truck of trucks) {
      if (load === undefined) {
        expect([answer.verdicts[cell], answer.governing[cell]]).toEqual([NO_ANSWER, NO_ANSWER]);
      } else {
        const one = checkLift(index, { load, truck, place, context });
        note(one, truck, load);
        const grid = {
          verdict: VERDICTS[answer.verdicts[cell]!],
          governing: RULE_IDS[answer.governing[cell]!],
          mostKg: answer.mostKg[cell] === -1 ? null : answer.mostKg[cell],
          assessedKg: answer.assessedKg[question.load.kind === 'one' ? 0 : location],
        };
        const { verdict, governing, mostKg, assessedKg } = one;
        expect(grid, `${place.id} ${truck.id} ${load.id}`).toEqual({
          verdict,
          governing,
          mostKg,
          assessedKg: assessedKg ?? -1,
        });
      }
      cell += 1;
    }
  }
  expect(answer.verdicts.length).toBe(cell);
}

it('answers every cell as the one lift check does, for one load and for what stands there', () => {
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const site = drawSite(g);
      const reading = readSite(site);
      expect(reading.ok ? [] : reading.refusals).toEqual([]);
      const index = indexSite(site);
      const compiled = compileSite(index);
      const trucks = index.site.trucks.map(({ id }) => id);
      const loads = [site.loads[0]!, chance(g, 50) ? site.loads[1]! : drawLoad(g, 9)];
      const questions: GridQuestion[] = [
        ...loads.map(
          (load): GridQuestion => ({ load: { kind: 'one', load }, trucks, context: drawContext(g, site) }),
        ),
        { load: { kind: 'stored' }, trucks: [...trucks].reverse(), context: drawContext(g, site) },
      ];
      for (const question of questions) {
        expectSameAsCheck(index, question, answerGrid(compiled, question));
      }
    }),
    { seed: SEED, numRuns: SITES, endOnFailure: true },
  );
});

it('compared at least 20 000 triples, at their limits often, with every rule at every outcome it can reach', () => {
  expect(seen.triples).toBeGreaterThanOrEqual(20_000);
  expect(seen.equal).toBeGreaterThan(seen.triples / 10);
  expect(seen.insideWheelsFail).toBeGreaterThan(0);
  for (const rule of RULE_IDS) {
    for (const outcome of OUTCOMES) {
      const reached = (seen.outcomes.get(`${rule} ${outcome}`) ?? 0) > 0;
      expect(`${rule} ${outcome}: ${reached}`).toBe(
        `${rule} ${outcome}: ${REACHABLE[rule].includes(outcome)}`,
      );
    }
  }
});

it('had every rule decide a refusal, every mass rule a thin verdict, and every mustKnow default an unknown', () => {
  const decided = (verdict: string, rules: readonly RuleId[]) =>
    rules.filter((rule) => !seen.governing.has(`${verdict} by ${rule}`));
  expect(decided('refuse', RULE_IDS)).toEqual([]);
  expect(decided('thin', MASS_RULES)).toEqual([]);
  // unit-load is unknown for the load's own mass alone, and then plate-capacity, which is earlier, is unknown too
  const canBeUnknown = RULE_IDS.filter((rule) => REACHABLE[rule].includes('unknown'));
  expect(
    decided(
      'unproven',
      canBeUnknown.filter((rule) => rule !== 'unit-load'),
    ),
  ).toEqual([]);
});

afterAll(() => {
  const table = (map: Map<string, number>) =>
    [...map]
      .sort()
      .map(([key, times]) => `  ${key}: ${times}`)
      .join('\n');
  console.info(
    `seed ${SEED}: ${SITES} sites, ${seen.triples} triples, need = have in ${seen.equal} steps\n` +
      `outcomes\n${table(seen.outcomes)}\ncauses\n${table(seen.causes)}\ngoverning\n${table(seen.governing)}`,
  );
});
