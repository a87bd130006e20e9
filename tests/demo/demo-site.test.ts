import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { type Context, VERDICTS, type Verdict } from '../../lib/check/step.ts';
import { DEMO_AS_OF, DEMO_OPERATOR, demoSite } from '../../lib/demo/demo-site.ts';
import { assessedMassKg } from '../../lib/model/load.ts';
import { readSiteText, writeSiteText } from '../../lib/model/site-file.ts';
import { indexSite, palletOf } from '../../lib/model/site-index.ts';
import { TRUCK_KINDS } from '../../lib/model/truck.ts';

const site = demoSite();
const index = indexSite(site);
const trucks = site.trucks;
const takingDown: Context = {
  operation: 'retrieve',
  asOf: DEMO_AS_OF,
  operator: null,
  stock: 'as-is',
  from: null,
};

/** How many of the answers are of each verdict. */
function tally(verdicts: Iterable<Verdict>): Record<Verdict, number> {
  const counts = { clear: 0, thin: 0, unproven: 0, refuse: 0 };
  for (const verdict of verdicts) counts[verdict] += 1;
  return counts;
}

describe('the demo depot', () => {
  it('is a site that the reader accepts and that its file brings back unchanged', () => {
    expect(readSiteText(writeSiteText(site))).toEqual({ ok: true, site });
    expect(readSiteText(JSON.stringify(site))).toEqual({ ok: true, site });
  });

  it('is the same on every call, in a copy that its caller may change', () => {
    const other = demoSite();
    expect(other).toEqual(site);
    other.aisles[0]!.clearWidthMm = 1;
    other.runs[0]!.bays[0]!.maxBayLoadKg = 1;
    other.trucks[0]!.plate.ratings.length = 0;
    other.loads.at(-1)!.heightMm = 1;
    expect(demoSite()).toEqual(site);
  });

  it('is made in well under 200 ms', () => {
    const quickest = Math.min(...[1, 2, 3].map(() => timed(demoSite)));
    expect(quickest).toBeLessThan(200);
  });

  it('has the size and the variety of a real depot', () => {
    expect(site.aisles.length).toBeGreaterThanOrEqual(6);
    expect(new Set(site.aisles.map((aisle) => aisle.clearWidthMm)).size).toBe(site.aisles.length);
    const overhead = site.aisles.map((aisle) => aisle.overheadClearMm);
    expect(overhead).toContain('none');
    expect(overhead).toContain(null);
    expect(index.places.size).toBeGreaterThanOrEqual(3000);
    expect(site.frameTypes.length).toBe(3);
    expect(new Set(trucks.map((truck) => truck.kind))).toEqual(new Set(TRUCK_KINDS));
    expect(site.loads.length).toBe(300);
    expect(site.stock.length).toBe(2000);
    const levels = site.runs.flatMap((run) => run.bays.flatMap((bay) => bay.levels));
    expect(Math.max(...levels.map((level) => level.beamTopMm))).toBe(9000);
    expect(new Set(levels.map((level) => level.depthPositions))).toEqual(new Set([1, 2]));
    expect(levels.some((level) => level.decked)).toBe(true);
    expect(site.runs.every((run) => run.at !== null)).toBe(true);
    expect(site.operators.find((entry) => entry.id === DEMO_OPERATOR)?.authorisations.length).toBe(5);
  });

  it('has loads from 120 to 2000 kg whose mass is weighed, calculated, declared or unknown', () => {
    const masses = site.loads.map((load) => assessedMassKg(load, palletOf(index, load), index.policy));
    const known = masses.filter((kg) => kg !== null);
    expect(known.length).toBe(298);
    expect(Math.min(...known)).toBeGreaterThanOrEqual(120);
    expect(Math.max(...site.loads.map((load) => load.grossKg ?? 0))).toBe(2000);
    expect(new Set(site.loads.map((load) => load.massBasis))).toEqual(
      new Set(['weighed', 'calculated', 'declared']),
    );
  });

  it('lets a checked truck take down at least 99 of 100 stocked pallets without a doubt', () => {
    const served = site.stock.filter((row) => {
      const place = index.places.get(row.location)!;
      const load = index.loads.get(row.load)!;
      return trucks.some(
        (truck) => checkLift(index, { load, truck, place, context: takingDown }).verdict === 'clear',
      );
    });
    expect(served.length / site.stock.length).toBeGreaterThanOrEqual(0.99);
  });

  it('would be stocked the same way again, without a doubt, in most locations', () => {
    const best = site.stock.map((row): Verdict => {
      const place = index.places.get(row.location)!;
      const load = index.loads.get(row.load)!;
      const context: Context = { ...takingDown, operation: 'place', from: row.location };
      const verdicts = trucks.map((truck) => checkLift(index, { load, truck, place, context }).verdict);
      return VERDICTS.find((verdict) => verdicts.includes(verdict))!;
    });
    expect(tally(best).clear / best.length).toBeGreaterThan(0.88);
  });

  it('shows all four verdicts in a sample of loads, trucks and locations', () => {
    const places = [...index.places.values()];
    const verdicts: Verdict[] = [];
    for (let n = 0; n < 12_000; n++) {
      const place = places[(n * 7919) % places.length]!;
      const truck = trucks[n % trucks.length]!;
      const load = site.loads[(n * 104_729) % site.loads.length]!;
      const context: Context = { ...takingDown, operation: n % 2 === 0 ? 'place' : 'retrieve' };
      verdicts.push(checkLift(index, { load, truck, place, context }).verdict);
    }
    for (const count of Object.values(tally(verdicts))) expect(count).toBeGreaterThan(20);
  });
});

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
