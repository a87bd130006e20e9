import fc, { type GeneratorValue } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import type { Step, Verdict } from '../../lib/check/step.ts';
import type { Site } from '../../lib/model/site.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { changeRun } from '../../lib/rack-shape/change-run.ts';
import type { LiftChange } from '../../lib/rack-shape/compare-lifts.ts';
import { weighConsequences } from '../../lib/rack-shape/consequences.ts';
import { locationsOf, neighboursOf } from '../../lib/rack-shape/neighbours.ts';
import type { RunChange } from '../../lib/rack-shape/run-change.ts';
import { draftOf, movesOf } from '../../lib/rack-shape/run-draft.ts';
import { beforeAfter } from '../../lib/rack-shape/site-of-run.ts';
import { drawSite, pick } from '../properties/arbitrary-site.ts';
import { makeContext, makeLoad, makeSite, placeOf } from '../site-builder.ts';

const SEED = 20260916;
const AS_OF = '2026-03-02T06:30:00Z';
const reference = makeLoad({ id: 'reference', palletType: null });

function draw(site: Site, asked: RunChange, at = 0) {
  const saved = site.runs[at]!;
  const changed = changeRun(draftOf(saved), asked, neighboursOf(site, saved.id));
  return changed.ok ? { saved, draft: changed.value } : null;
}

function weigh(site: Site, asked: RunChange, asOf: string | null = null) {
  const drawn = draw(site, asked);
  if (drawn === null) throw new Error('this change cannot be made');
  return weighConsequences({ sites: beforeAfter(site, drawn.saved, drawn.draft), reference, asOf });
}

const whole = { first: 0, last: 1 };
const raise = (beamTopMm: number): RunChange => ({ kind: 'move-beam', range: whole, level: 1, beamTopMm });

describe('the steel of a change', () => {
  it('openings, largest gaps and the ratings that then apply, bays of one kind together', () => {
    // openings: floor 1500 - 120 = 1380 becomes 1780, level 1 becomes 3000 - 120 - 1900 = 980; gaps 1900 and 1100
    const { steel } = weigh(makeSite(), raise(1900));
    expect(steel.openings).toEqual([
      { firstBay: 'a1', lastBay: 'a2', level: 0, mm: { before: 1380, after: 1780 } },
      { firstBay: 'a1', lastBay: 'a2', level: 1, mm: { before: 1380, after: 980 } },
    ]);
    expect(steel.gaps).toEqual([{ firstBay: 'a1', lastBay: 'a2', mm: { before: 1500, after: 1900 } }]);
    expect(steel.frames).toEqual([
      {
        firstFrame: 'a-f1',
        lastFrame: 'a-f3',
        gapMm: { before: 1500, after: 1900 },
        ratingKg: { before: 9000, after: 7000 },
      },
    ]);
  });

  it.each([
    [1999.9, 7000],
    [2000, 7000],
    [2000.1, null],
  ])('a first beam at %d mm leaves a frame rating of %j kg', (beamTopMm, rating) => {
    const { steel } = weigh(makeSite(), raise(beamTopMm));
    expect(steel.frames[0]?.ratingKg.after).toBe(rating);
  });

  it('of new ids alone is none', () => {
    const labels = {
      pattern: '{aisle}{bay}-{level}-{position}',
      aisle: 'z',
      side: '',
      bayStart: 1,
      bayStep: 1,
      bayFrom: 'left',
      levelStart: 0,
      positionStart: 1,
      positionFrom: 'left',
    } as const;
    const stock = [{ location: 'a1-1-1', load: 'crates' }];
    const renamed = weigh(makeSite({ stock }), { kind: 'renumber', id: 'z', aisleId: 'aisle-1', labels });
    expect(renamed.steel).toEqual({ openings: [], gaps: [], frames: [] });
    expect(renamed.standing).toMatchObject({ worse: [], better: 0 });
    expect(renamed.lifts.changed).toBe(0);
    expect(renamed.lifts.counts.clear.clear + renamed.lifts.counts.refuse.refuse).toBeGreaterThan(0);
  });
});

describe('what stands', () => {
  const stock = [{ location: 'a1-0-1', load: 'crates' }];

  it.each([
    // crates are 1000 mm high and need 150 mm above them (policy): the beam's underside at 1150, its top at 1270
    [1269.9, 1],
    [1270, 0],
    [1270.1, 0],
  ])('with the beam above at %d mm: %d pallets no longer fit', (beamTopMm, count) => {
    const { standing } = weigh(makeSite({ stock }), raise(beamTopMm));
    expect(standing.worse.filter(({ step }) => step.rule === 'opening-height')).toHaveLength(count);
  });

  it('that a smaller capacity overloads is named with its figures', () => {
    const loaded = makeSite({ stock: [{ location: 'a1-1-1', load: 'crates' }] });
    const facts = { pairCapacityKg: 799.9 };
    const { standing } = weigh(loaded, { kind: 'level-facts', range: whole, level: 1, facts });
    expect(standing.worse).toMatchObject([
      {
        location: 'a1-1-1',
        load: 'crates',
        before: 'pass',
        step: { rule: 'beam-level', need: 800, have: 799.9 },
      },
    ]);
    const back = draw(loaded, {
      kind: 'level-facts',
      range: whole,
      level: 1,
      facts: { pairCapacityKg: 800 },
    });
    const sites = beforeAfter(loaded, back!.saved, back!.draft);
    expect(weighConsequences({ sites, reference: null, asOf: null }).standing.worse).toEqual([]);
  });

  it('on frames whose table ends below the new gap is named as unproven', () => {
    const loaded = makeSite({ stock: [{ location: 'a1-2-1', load: 'crates' }] });
    const { standing } = weigh(loaded, raise(2000.1));
    expect(standing.worse.map(({ step }) => [step.rule, step.outcome])).toEqual([['frame-load', 'unknown']]);
  });
});

/** Any change that keeps some locations, at random. */
function drawChange(g: GeneratorValue, site: Site): RunChange {
  const run = site.runs[0]!;
  const range = { first: 0, last: pick(g, [0, run.bays.length - 1]) };
  const level = pick(g, run.bays[0]!.levels).level;
  const top = run.bays[0]!.levels.at(-1)!.beamTopMm;
  return pick<() => RunChange>(g, [
    () => ({ kind: 'move-beam', range, level, beamTopMm: top + pick(g, [1, 250, 900, 3000]) }),
    () => ({ kind: 'move-beam', range, level, beamTopMm: Math.max(top - pick(g, [1, 100, 250]), 1) }),
    () => ({
      kind: 'level-facts',
      range,
      level,
      facts: { pairCapacityKg: pick(g, [null, 500, 1000, 4000]) },
    }),
    () => ({ kind: 'level-facts', range, level, facts: { maxUnitKg: pick(g, [null, 500, 1000]) } }),
    () => ({ kind: 'bay-facts', range, facts: { clearWidthMm: pick(g, [900, 1800, 2700, 3600]) } }),
    () => ({ kind: 'level-condition', range, level, condition: pick(g, ['sound', 'amber', 'red'] as const) }),
    () => ({ kind: 'frame-condition', range, condition: pick(g, ['sound', 'red'] as const) }),
    () => ({ kind: 'remove-bays', range: { first: 0, last: 0 } }),
    () => ({ kind: 'remove-level', range, level }),
  ])();
}

/** The same site with the changed run and the stock that stays, whole: nothing of lib/rack-shape but the draft itself. */
function siteAfter(
  site: Site,
  saved: Site['runs'][number],
  draft: NonNullable<ReturnType<typeof draw>>['draft'],
): Site {
  const gone = new Set(movesOf(saved, draft).gone);
  return {
    ...site,
    runs: site.runs.map((run) => (run.id === saved.id ? draft.run : run)),
    stock: site.stock.filter((row) => !gone.has(row.location)),
  };
}

describe('lifts before and after', () => {
  it('equal a direct check of every lift on the whole site, by random sites and changes', () => {
    let compared = 0;
    let turned = 0;
    let worsened = 0;
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const site = drawSite(g);
        const drawn = draw(site, drawChange(g, site));
        if (drawn === null) return;
        const { saved, draft } = drawn;
        const asOf = pick(g, [null, AS_OF]);
        const sites = beforeAfter(site, saved, draft);
        const { lifts, standing } = weighConsequences({ sites, reference, asOf });
        const [was, is] = [indexSite(site), indexSite(siteAfter(site, saved, draft))];
        const wanted: Omit<LiftChange, 'asked'>[] = [];
        const counts: Record<string, number> = {};
        const worse: string[] = [];
        for (const location of locationsOf(draft.run)) {
          const stands = was.stockAt.get(location);
          for (const operation of ['retrieve', 'place'] as const) {
            for (const load of operation === 'retrieve' ? [stands] : [stands, reference]) {
              if (load === undefined) continue;
              const context = makeContext({ operation, asOf, from: load === reference ? null : location });
              for (const truck of site.trucks) {
                const [old, now] = [was, is].map((index) =>
                  checkLift(index, { load, truck, place: placeOf(index, location), context }),
                ) as [ReturnType<typeof checkLift>, ReturnType<typeof checkLift>];
                compared += 1;
                const key = `${old.verdict} ${now.verdict}`;
                counts[key] = (counts[key] ?? 0) + 1;
                if (old.verdict !== now.verdict)
                  wanted.push({
                    truck: truck.id,
                    before: location,
                    after: location,
                    from: old.verdict,
                    to: now.verdict,
                    fromRule: old.governing,
                    toRule: now.governing,
                  });
                if (load === reference || operation === 'retrieve' || truck !== site.trucks[0]) continue;
                for (const [at, step] of now.steps.entries())
                  if (isWorse(old.steps[at]!, step)) worse.push(`${location} ${step.rule} ${step.outcome}`);
              }
            }
          }
        }
        turned += wanted.length;
        worsened += worse.length;
        expect(lifts.changed).toBe(wanted.length);
        const plain = ({ asked: _, ...rest }: LiftChange) => JSON.stringify(rest);
        expect(lifts.changes.map(plain).toSorted()).toEqual(
          wanted.map((entry) => JSON.stringify(entry)).toSorted(),
        );
        for (const [from, row] of Object.entries(lifts.counts))
          for (const [to, count] of Object.entries(row)) expect(count).toBe(counts[`${from} ${to}`] ?? 0);
        expect(
          standing.worse.map(({ location, step }) => `${location} ${step.rule} ${step.outcome}`).toSorted(),
        ).toEqual(worse.toSorted());
      }),
      { seed: SEED, numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(1000);
    expect(turned).toBeGreaterThan(100);
    expect(worsened).toBeGreaterThan(20);
  });

  it('of a new run are those of the reference load alone', () => {
    const site = makeSite();
    const draft = {
      run: site.runs[0]!,
      bays: [null, null],
      frames: [null, null, null],
      locations: new Map(),
    };
    const sites = beforeAfter({ ...site, runs: [] }, null, draft);
    const { lifts } = weighConsequences({ sites, reference, asOf: null });
    expect(lifts.changed).toBe(0);
    const total = Object.values(lifts.fresh).reduce((sum, count) => sum + count, 0);
    expect(total).toBe(locationsOf(draft.run).length * site.trucks.length);
    const direct: Record<Verdict, number> = { clear: 0, thin: 0, unproven: 0, refuse: 0 };
    const index = indexSite(site);
    for (const place of index.places.values())
      for (const truck of site.trucks)
        direct[checkLift(index, { load: reference, truck, place, context: makeContext() }).verdict] += 1;
    expect(lifts.fresh).toEqual(direct);
  });
});

const RACK_RULES = new Set([
  'opening-height',
  'sprinkler-clearance',
  'opening-width',
  'pallet-support',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
  'rack-condition',
]);
const GRADE: Record<string, number> = { 'not-applicable': 0, pass: 0, thin: 0, unknown: 1, fail: 2 };

function isWorse(old: Step, now: Step): boolean {
  return RACK_RULES.has(now.rule) && GRADE[now.outcome]! > GRADE[old.outcome]!;
}
