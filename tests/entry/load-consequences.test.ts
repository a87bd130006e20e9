import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rankTrucks } from '../../lib/check/rank-trucks.ts';
import { leanLoad } from '../../lib/entry/lean-load.ts';
import { weighLoadChange } from '../../lib/entry/load-consequences.ts';
import type { Load } from '../../lib/model/load.ts';
import { indexSite, palletOf, type SiteIndex } from '../../lib/model/site-index.ts';
import { consequencesSentence } from '../../lib/words/entry.ts';
import { chance, drawSite, pick } from '../properties/arbitrary-site.ts';
import { makeDrums, makeIndex, makeLoad, makeSite } from '../site-builder.ts';

const stock = ['a1-1-1', 'a1-1-2', 'a1-2-1', 'a2-0-1'].map((location) => ({ location, load: 'crates' }));
const stocked = makeIndex({ stock });

describe('what a change of a load comes to where it stands', () => {
  it('is nothing when it only gets another name, or a mass that turns nothing', () => {
    expect(weighLoadChange(stocked, makeLoad({ name: 'Other' }))).toEqual({
      standing: 4,
      worse: 0,
      better: 0,
      turns: [],
    });
    expect(weighLoadChange(stocked, makeLoad({ grossKg: 801 }))).toMatchObject({ worse: 0, better: 0 });
  });

  // the notice: 1200 kg for one unit, 2400 kg for a pair of beams, on which two stand at level 1
  it.each([
    { kg: 1199, worse: 0, why: 'below the unit limit' },
    { kg: 1200, worse: 0, why: 'at the unit limit, and 2 x 1200 at the pair' },
    { kg: 1201, worse: 3, why: 'above it on the beams; on the floor there is none' },
  ])('of $kg kg each turns $worse places for the worse: $why', ({ kg, worse }) => {
    const result = weighLoadChange(makeIndex({ stock, trucks: [] }), makeLoad({ grossKg: kg }));
    expect(result).toMatchObject({ standing: 4, worse, better: 0 });
    for (const turn of result.turns) expect(turn.racks.map(({ step }) => step.rule)).toContain('unit-load');
  });

  it('tells how taking it down turns: 1001 kg is more than the reach truck proves above 3000 mm', () => {
    // level 2: lift 3000 + 100 + 150 = 3250: reach 1000 kg to 6000 mm, counterbalanced 2000 kg to 4500 mm
    const { turns } = weighLoadChange(stocked, makeLoad({ grossKg: 1001 }));
    expect(turns.map(({ location, lift }) => [location, lift?.mayBefore, lift?.mayAfter])).toEqual([
      ['a1-2-1', 2, 1],
    ]);
    expect(turns[0]).toMatchObject({ isWorse: true, lift: { from: 'clear', to: 'clear' } });
  });

  it('counts a load that gets lighter again as better', () => {
    const heavy = makeIndex({ stock, loads: [makeLoad({ grossKg: 1201 }), makeDrums()] });
    const result = weighLoadChange(heavy, makeLoad({ grossKg: 800 }));
    expect(result.worse).toBe(0);
    expect(result.better).toBeGreaterThan(0);
    expect(consequencesSentence(result)).toMatch(
      /^Of the 4 locations where it stands, \d turn: \d for the better\.$/,
    );
  });

  it('of a mass that is no longer known is for the worse wherever it stands', () => {
    expect(weighLoadChange(stocked, makeLoad({ grossKg: null }))).toMatchObject({ standing: 4, worse: 4 });
  });

  it('is none for a load that stands nowhere', () => {
    expect(weighLoadChange(stocked, makeDrums({ heightMm: 9000 }))).toEqual({
      standing: 0,
      worse: 0,
      better: 0,
      turns: [],
    });
  });

  it('is what every place asked by itself says, on any site', () => {
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const site = drawSite(g);
        const index = indexSite(site);
        const before = pick(g, site.loads);
        const after: Load = {
          ...before,
          grossKg: chance(g, 20) ? null : pick(g, [300, 900, 1000, 1200, 2000]),
          heightMm: pick(g, [900, 1250, 2000]),
          depthMm: pick(g, [800, 1200]),
        };
        const changed = indexSite({
          ...site,
          loads: site.loads.map((load) => (load.id === before.id ? after : load)),
        });
        const { standing, turns } = weighLoadChange(index, after);
        const places = site.stock.filter((row) => row.load === before.id).map(({ location }) => location);
        expect(standing).toBe(places.length);
        const told = new Map(turns.map((turn) => [turn.location, turn]));
        for (const location of places) {
          const [was, is] = [takeDown(index, before, location), takeDown(changed, after, location)];
          const lift = told.get(location)?.lift ?? null;
          if (was.verdict === is.verdict && was.may === is.may) expect(lift).toBeNull();
          else
            expect(lift).toMatchObject({
              from: was.verdict,
              to: is.verdict,
              mayBefore: was.may,
              mayAfter: is.may,
            });
        }
      }),
      { seed: 20260302, numRuns: 120 },
    );
  });

  it('is the same for the load without its lists', () => {
    const index = makeIndex({ stock: [{ location: 'a1-2-1', load: 'drums' }] });
    const heavier = makeDrums({ items: [{ name: 'drum', massKg: 300, count: 4 }] });
    const lean = leanLoad(heavier, palletOf(index, heavier));
    expect(lean).toMatchObject({ items: null, grossKg: 1260, massBasis: 'calculated' });
    // where the numbers came from is told otherwise, what they are is not
    const figures = (load: Load) =>
      JSON.parse(
        JSON.stringify(weighLoadChange(index, load), (key, value) => (key === 'needFrom' ? null : value)),
      );
    expect(figures(lean)).toEqual(figures(heavier));
    expect(figures(lean).worse).toBe(1);
  });

  it('does not grow with the trucks times the places: alike places are asked once', () => {
    const { turns } = weighLoadChange(indexSite(makeSite({ stock })), makeLoad({ grossKg: 1001 }));
    expect(turns).toHaveLength(1);
  });
});

function takeDown(index: SiteIndex, load: Load, location: string) {
  const ranked = rankTrucks(index, {
    load,
    place: index.places.get(location)!,
    context: { operation: 'retrieve', asOf: null, operator: null, stock: 'as-is', from: null },
  });
  const may = ranked.filter(({ verdict }) => verdict === 'clear' || verdict === 'thin').length;
  return { verdict: ranked[0]!.verdict, may };
}
