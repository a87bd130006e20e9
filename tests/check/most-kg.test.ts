import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { roomKg } from '../../lib/rack/stand.ts';
import {
  makeBay,
  makeContext,
  makeCounterbalance,
  makeDrums,
  makeIndex,
  makeLevel,
  makeLoad,
  makeRun,
  makeTruck,
  placeOf,
} from '../site-builder.ts';
import { answerTo } from './judge.ts';

const noForkMarking = { lengthMm: 1150, armCapacityKg: null, armLoadCentreMm: null };

describe('the most that a lift allows', () => {
  it.each([
    { why: 'the unit limit of the notice', ask: {}, mostKg: 1200 },
    { why: 'the plate at the higher level', ask: { at: 'a1-2-1' }, mostKg: 1000 },
    { why: 'the plate, tilted forward', ask: { at: 'a1-0-1', truck: makeCounterbalance() }, mostKg: 1700 },
    {
      why: 'twice the fork arm',
      ask: { truck: makeTruck({ forks: { lengthMm: 1150, armCapacityKg: 450, armLoadCentreMm: 600 } }) },
      mostKg: 900,
    },
    {
      why: 'what is left of the pair',
      ask: {
        site: {
          loads: [makeLoad({ id: 'heavy', grossKg: 1900 })],
          stock: [{ location: 'a1-1-2', load: 'heavy' }],
        },
      },
      mostKg: 500,
    },
    {
      why: 'what is left of the bay',
      ask: {
        site: {
          runs: [makeRun({ bays: [makeBay('a1', { maxBayLoadKg: 1500 }), makeBay('a2')] })],
          stock: [{ location: 'a1-2-2', load: 'drums' }],
        },
      },
      mostKg: 440,
    },
    {
      why: 'twice what is left of the middle frame: 2 x 1000 - 1060',
      ask: {
        site: {
          frameTypes: [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: 1000 }] }],
          stock: [{ location: 'a2-2-2', load: 'drums' }],
        },
      },
      mostKg: 940,
    },
  ])('is $mostKg kg: $why', ({ ask, mostKg }) => {
    expect(answerTo(ask).mostKg).toBe(mostKg);
  });

  it('does not depend on what this load weighs, known or not', () => {
    for (const grossKg of [1, 1200, 5000, null]) {
      expect(answerTo({ load: makeLoad({ grossKg }) }).mostKg).toBe(1200);
    }
  });

  it('is nothing when a rule other than the mass rules fails, whatever is unknown', () => {
    const plate = { verticalLoadCentreMm: null, ratings: [] };
    expect(answerTo({ load: makeLoad({ widthMm: 1400 }) }).mostKg).toBe(0);
    expect(answerTo({ load: makeLoad({ widthMm: 1400 }), truck: makeTruck({ plate }) }).mostKg).toBe(0);
  });

  it('cannot be said when a plate, a stock mass, a frame or a must-know survey is missing', () => {
    const stock = [{ location: 'a1-1-2', load: 'drums' }];
    const frameTypes = [{ id: 'f90', ratings: [] }];
    expect(
      answerTo({ truck: makeTruck({ plate: { verticalLoadCentreMm: null, ratings: [] } }) }).mostKg,
    ).toBeNull();
    expect(answerTo({ site: { loads: [makeDrums({ items: null })], stock } }).mostKg).toBeNull();
    expect(answerTo({ site: { frameTypes } }).mostKg).toBeNull();
    expect(answerTo({ truck: makeTruck({ turning: null }) }).mostKg).toBeNull();
  });

  it('passes over an unknown that need not be known, fork arms included', () => {
    expect(answerTo({ truck: makeTruck({ forks: noForkMarking }) }).mostKg).toBe(1200);
    const mustKnow = [...makeIndex().policy.mustKnow, 'fork-arms' as const];
    const site = { site: { name: 'Harbour store', policy: { mustKnow } } };
    expect(answerTo({ site, truck: makeTruck({ forks: noForkMarking }) }).mostKg).toBeNull();
  });

  it('is never below nothing', () => {
    const site = {
      loads: [makeLoad({ id: 'heavy', grossKg: 2500 })],
      stock: [{ location: 'a1-1-2', load: 'heavy' }],
    };
    expect(answerTo({ site }).mostKg).toBe(0);
  });

  it('takes the plate alone when taking down', () => {
    expect(answerTo({ context: { operation: 'retrieve' } }).mostKg).toBe(1600);
  });
});

// in sixty-fourths, so that an allowance of 0 % gives back the very same double
const kg = fc.integer({ min: 32, max: 3000 * 64 }).map((parts) => parts / 64);
const anyKg = fc.double({ min: 0.5, max: 3000, noNaN: true, noDefaultInfinity: true });

describe('exactly the most', () => {
  it('is clear or thin, and a hair more is not, when the mass alone changes', () => {
    fc.assert(
      fc.property(
        fc.record({
          stands: fc.array(fc.record({ at: fc.nat(11), kg }), { maxLength: 6 }),
          at: fc.nat(11),
          plateKg: kg,
          armKg: kg,
          pairKg: kg,
          bayKg: kg,
          unitKg: fc.option(kg),
          frameKg: kg,
          operation: fc.constantFrom('place' as const, 'retrieve' as const),
        }),
        (facts) => {
          const ids = [...makeIndex().places.keys()];
          const at = ids[facts.at]!;
          const stock = new Map(
            facts.stands.map((stand, n) => [ids[stand.at]!, { load: `stands-${n}`, kg: stand.kg }]),
          );
          stock.delete(at);
          const bays = ['a1', 'a2'].map((id) =>
            makeBay(id, {
              maxBayLoadKg: facts.bayKg,
              levels: [0, 1, 2].map((level) =>
                makeLevel(
                  id,
                  level,
                  level === 0 ? {} : { pairCapacityKg: facts.pairKg, maxUnitKg: facts.unitKg },
                ),
              ),
            }),
          );
          const index = makeIndex({
            runs: [makeRun({ bays })],
            frameTypes: [{ id: 'f90', ratings: [{ maxGapMm: 1500, capacityKg: facts.frameKg }] }],
            loads: [...stock.values()].map(({ load, kg }) => makeLoad({ id: load, grossKg: kg })),
            stock: [...stock].map(([location, { load }]) => ({ location, load })),
          });
          const truck = makeTruck({
            forks: { lengthMm: 1150, armCapacityKg: facts.armKg, armLoadCentreMm: 600 },
            plate: {
              verticalLoadCentreMm: null,
              ratings: [
                {
                  mast: 'vertical',
                  attachment: null,
                  liftHeightMm: 6000,
                  loadCentreMm: 600,
                  capacityKg: facts.plateKg,
                },
              ],
            },
          });
          const verdictAt = (grossKg: number) =>
            checkLift(index, {
              load: makeLoad({ grossKg }),
              truck,
              place: placeOf(index, at),
              context: makeContext({ operation: facts.operation }),
            });
          const most = verdictAt(1).mostKg;
          expect(most).not.toBeNull();
          if (most === null) return;
          if (most > 0) expect(['clear', 'thin']).toContain(verdictAt(most).verdict);
          expect(verdictAt(most + 1e-6 * most + 0.001).verdict).toBe('refuse');
        },
      ),
      { numRuns: 300, seed: 20260302 },
    );
  });

  it('fits beside what stands there to the last bit', () => {
    fc.assert(
      fc.property(anyKg, anyKg, (limit, others) => {
        const room = roomKg(limit, others);
        expect(room).toBeGreaterThanOrEqual(0);
        if (others <= limit) {
          expect(others + room).toBeLessThanOrEqual(limit);
          expect(limit - others - room).toBeLessThanOrEqual(limit * 1e-15);
        }
      }),
      { numRuns: 2000, seed: 20260302 },
    );
  });
});
