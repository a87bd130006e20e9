import { describe, expect, it } from 'vitest';
import { servedByRun } from '../../app/trucks/[id]/served-by-run.ts';
import { driversOf } from '../../app/trucks/drivers-of.ts';
import { checkLift } from '../../lib/check/check-lift.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { instantMs } from '../../lib/model/quantities.ts';
import { found } from '../../lib/model/site-index.ts';
import { makeContext, makeIndex, makeLoad, placeOf } from '../site-builder.ts';

const END = '2026-06-01T00:00:00Z';

describe('driversOf', () => {
  const index = makeIndex();
  it.each([
    { at: '2026-05-31T23:59:59Z', state: 'in force', why: 'a second before the end' },
    { at: END, state: 'in force', why: 'exactly at the end' },
    { at: '2026-06-01T00:00:01Z', state: 'ended', why: 'a second after it' },
  ])('counts an authorisation as $state $why', ({ at, state }) => {
    expect(driversOf(index, 'reach', instantMs(at)).map((driver) => driver.state)).toEqual([state]);
  });

  it('has no end for one without an end, and leaves out who has none for this kind', () => {
    expect(driversOf(index, 'counterbalance', instantMs(END))).toMatchObject([
      { expires: null, state: 'in force' },
    ]);
    expect(driversOf(index, 'stacker', instantMs(END))).toEqual([]);
  });

  it('takes the latest of several', () => {
    const twice = makeIndex({
      operators: [
        {
          id: 'op-2',
          name: 'Operator two',
          authorisations: [
            { kind: 'reach', expires: '2027-01-01' },
            { kind: 'reach', expires: '2025-01-01' },
          ],
        },
      ],
    });
    expect(driversOf(twice, 'reach', instantMs(END))).toMatchObject([
      { expires: '2027-01-01', state: 'in force' },
    ]);
  });
});

describe('servedByRun', () => {
  it('counts what the one lift check says of each standing pallet', () => {
    const index = makeIndex({
      loads: [
        makeLoad(),
        makeLoad({ id: 'slabs', grossKg: 1500 }),
        makeLoad({ id: 'returns', grossKg: null }),
      ],
      stock: [
        { location: 'a1-0-1', load: 'slabs' },
        { location: 'a1-2-1', load: 'slabs' },
        { location: 'a2-1-1', load: 'returns' },
        { location: 'a2-2-2', load: 'crates' },
      ],
    });
    const [run] = servedByRun(compileSite(index), 'reach-1');
    const truck = found(index.trucks, 'reach-1', 'truck');
    const counts = { clear: 0, thin: 0, unproven: 0, refuse: 0 };
    for (const [location, load] of index.stockAt) {
      const place = placeOf(index, location);
      counts[
        checkLift(index, { load, truck, place, context: makeContext({ operation: 'retrieve' }) }).verdict
      ] += 1;
    }
    expect(run).toEqual({ run: 'a', aisle: 'aisle-1', standing: 4, counts });
    expect(counts.refuse).toBe(1); // 1500 kg at 3250 mm, where the plate proves 1000 kg
    expect(counts.unproven).toBe(1); // the returns were never weighed
  });
});
