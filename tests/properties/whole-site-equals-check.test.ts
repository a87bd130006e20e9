import fc, { type GeneratorValue } from 'fast-check';
import { expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { type Context, type LiftAnswer, VERDICTS } from '../../lib/check/step.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { NO_ANSWER } from '../../lib/grid/question.ts';
import { NO_TRUCK } from '../../lib/grid/summary.ts';
import { answerTakeDown, compileTakeDown } from '../../lib/grid/whole-site.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import type { Site } from '../../lib/model/site.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { chance, drawContext, drawLoad, drawSite, drawTruck, pick } from './arbitrary-site.ts';

const SEED = 20260304;

/** Best verdict first, then the most mass (not known: last), then the order of the trucks. */
function best(answers: readonly LiftAnswer[]): number {
  let at = NO_TRUCK;
  for (const [i, answer] of answers.entries()) {
    const better = at < 0 || VERDICTS.indexOf(answer.verdict) < VERDICTS.indexOf(answers[at]!.verdict);
    const equal = at >= 0 && answer.verdict === answers[at]!.verdict;
    if (better || (equal && (answer.mostKg ?? -1) > (answers[at]!.mostKg ?? -1))) at = i;
  }
  return at;
}

/** A random site with more trucks, more loads of few shapes and every location stocked or empty by the toss. */
function drawFullSite(g: GeneratorValue): Site {
  const site = drawSite(g);
  while (site.trucks.length < 9) {
    site.trucks.push(drawTruck({ g, calm: chance(g, 80) }, site.trucks.length, [1750, 2350, 3250]));
  }
  const shaped = site.loads.slice();
  const limits = site.trucks.flatMap(({ plate }) => plate.ratings.map(({ capacityKg }) => capacityKg));
  while (site.loads.length < 30) {
    const like = chance(g, 70) ? pick(g, shaped) : drawLoad(g, site.loads.length);
    const grossKg =
      chance(g, 50) && limits.length > 0 ? pick(g, limits) * pick(g, [1, 1, 0.9, 1.001]) : like.grossKg;
    site.loads.push({ ...like, id: `L${site.loads.length}`, grossKg });
  }
  site.stock = site.runs
    .flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)))
    .filter(() => chance(g, 85))
    .map((location) => ({ location, load: pick(g, site.loads).id }));
  return site;
}

it('says of each stored load what the one lift check says of every truck in turn', () => {
  let triples = 0;
  const bestBy = new Map<string, number>();
  const counts = new Set<number>();
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const site = drawFullSite(g);
      const index = indexSite(site);
      const { asOf, operator } = drawContext(g, site);
      const context: Context = { asOf, operator, operation: 'retrieve', stock: 'as-is', from: null };
      const trucks = site.trucks.map(({ id }) => id);
      const answer = answerTakeDown(compileTakeDown(compileSite(index), { trucks, asOf, operator }));
      for (const [location, place] of [...index.places.values()].entries()) {
        const load = index.stockAt.get(place.id);
        const grid = {
          able: answer.able[location],
          bestTruck: answer.bestTruck[location],
          verdict: answer.verdict[location],
          governing: answer.governing[location],
          marginKg: answer.marginKg[location],
        };
        if (load === undefined) {
          expect(grid).toEqual({
            able: 0,
            bestTruck: NO_TRUCK,
            verdict: NO_ANSWER,
            governing: NO_ANSWER,
            marginKg: Number.NaN,
          });
          continue;
        }
        const answers = site.trucks.map((truck) => checkLift(index, { load, truck, place, context }));
        triples += answers.length;
        const bestTruck = best(answers);
        const { verdict, governing, mostKg, assessedKg } = answers[bestTruck]!;
        bestBy.set(`${verdict} by ${governing}`, (bestBy.get(`${verdict} by ${governing}`) ?? 0) + 1);
        const able = answers.filter((one) => one.verdict === 'clear' || one.verdict === 'thin').length;
        counts.add(able);
        expect(grid, `${place.id} ${load.id} ${load.grossKg}`).toEqual({
          able,
          bestTruck,
          verdict: VERDICTS.indexOf(verdict),
          governing: RULE_IDS.indexOf(governing),
          marginKg: mostKg === null || assessedKg === null ? Number.NaN : mostKg - assessedKg,
        });
      }
    }),
    { seed: SEED, numRuns: 120, endOnFailure: true },
  );
  console.info(`seed ${SEED}: ${triples} triples\n`, [...bestBy].sort());
  expect(triples).toBeGreaterThan(10_000);
  expect(counts.size).toBeGreaterThan(5);
  expect([...bestBy.keys()].some((key) => key.startsWith('thin'))).toBe(true);
});
