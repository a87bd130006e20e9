import { describe, expect, it } from 'vitest';
import type { PlateRating } from '../../lib/model/truck.ts';
import { makeCounterbalance, makeFrame, makeLoad, makeRun, makeTruck } from '../site-builder.ts';
import { AS_OF, find, inShort } from './find.ts';

const stock = [{ location: 'a1-2-1', load: 'crates' }];
const check = (truck: string, at: string, result: 'pass' | 'fail' = 'pass') => ({
  truck,
  at,
  by: 'Operator one',
  result,
});
const line = (liftHeightMm: number, loadCentreMm: number, capacityKg: number): PlateRating => ({
  mast: 'vertical',
  attachment: null,
  liftHeightMm,
  loadCentreMm,
  capacityKg,
});
const plated = (ratings: PlateRating[], facts: Parameters<typeof makeTruck>[0] = {}) => ({
  trucks: [makeTruck({ plate: { verticalLoadCentreMm: 600, ratings }, ...facts })],
  checks: [],
});

describe('who can take a stored load down', () => {
  it('two trucks: nothing is found', () => {
    expect(find('one-truck', { stock })).toEqual([]);
    expect(find('stranded', { stock })).toEqual([]);
  });

  it('one truck fit for service: its loss strands the load, and it is named', () => {
    const checks = [check('reach-1', '2026-03-02T06:00:00Z')];
    expect(find('one-truck', { stock, checks }).map(({ truck }) => truck)).toEqual(['reach-1']);
    expect(find('one-truck', { stock, checks }, null)).toEqual([]); // without a time all count
  });

  it('no truck fit for service: stranded until one is', () => {
    expect(find('stranded', { stock, checks: [] }).map(({ severity }) => severity)).toEqual(['plan']);
    expect(find('stranded', { stock, checks: [] }, null)).toEqual([]);
    expect(find('stranded-for-fleet', { stock, checks: [] })).toEqual([]);
  });

  // the counterbalanced truck proves 1700 kg tilted forward (2 x 1250 on its arms), the reach truck 1000 kg that high
  it.each([
    { kg: 1000, kinds: [] },
    { kg: 1001, kinds: ['one-truck'] },
    { kg: 1700, kinds: ['one-truck'] },
    { kg: 1701, kinds: ['stranded-for-fleet'] },
  ])('$kg kg at 3000 mm', ({ kg, kinds }) => {
    const site = { loads: [makeLoad({ grossKg: kg })], stock };
    const found = (['one-truck', 'stranded', 'stranded-for-fleet'] as const).filter(
      (kind) => find(kind, site).length > 0,
    );
    expect(found).toEqual(kinds);
  });

  it('names the truck that comes nearest and what stands against it', () => {
    const [found] = find('stranded-for-fleet', { loads: [makeLoad({ grossKg: 1701 })], stock });
    expect(found).toMatchObject({
      severity: 'stop',
      truck: 'counter-1',
      source: { of: 'rule', rule: 'tilt-capacity' },
      figures: { need: 1701, have: 1700, excess: 1, unit: 'kg' },
    });
  });

  it('a plate that does not reach is to stop for, a record that lacks facts to plan', () => {
    expect(find('stranded-for-fleet', { stock, ...plated([line(3000, 600, 1600)]) })).toMatchObject([
      { severity: 'stop', advice: 'bring-in-a-truck' },
    ]);
    const noTurning = { turning: null };
    expect(
      find('stranded-for-fleet', { stock, ...plated([line(6000, 600, 1600)], noTurning) }),
    ).toMatchObject([{ severity: 'plan', advice: 'enter-missing-facts' }]);
  });

  it('a load of unknown mass is to be weighed, not stranded', () => {
    const site = { loads: [makeLoad({ grossKg: null })], stock };
    expect(find('stranded-for-fleet', site)).toEqual([]);
    expect(find('mass-unknown', site)).toMatchObject([
      { subject: { load: 'crates', locations: ['a1-2-1'] } },
    ]);
  });

  it('a site without trucks strands all that stands', () => {
    expect(find('stranded-for-fleet', { stock, trucks: [], checks: [] })).toMatchObject([{ truck: null }]);
  });
});

describe('trucks out of service', () => {
  it('held: a note, with a time or without', () => {
    const trucks = [makeTruck({ hold: { since: '2026-03-01', reason: 'Leaking hose.' } })];
    for (const asOf of [AS_OF, null]) {
      expect(find('truck-held', { trucks, checks: [] }, asOf)).toMatchObject([{ severity: 'note' }]);
    }
  });

  it('newest check failed: to stop for', () => {
    const checks = [
      check('reach-1', '2026-03-02T06:00:00Z', 'fail'),
      check('counter-1', '2026-03-02T06:00:00Z'),
    ];
    expect(find('truck-check-failed', { checks })).toMatchObject([{ severity: 'stop', truck: 'reach-1' }]);
    expect(find('truck-check-failed', { checks }, null)).toEqual([]);
  });

  it.each([
    { at: '2026-03-01T22:00:01Z', found: [] },
    { at: '2026-03-01T22:00:00Z', found: [] }, // 12 hours, still counts
    { at: '2026-03-01T21:00:00Z', found: [['plan', 13, 12]] },
  ])('checked at $at, 12 hours allowed', ({ at, found }) => {
    const site = { trucks: [makeTruck()], checks: [check('reach-1', at)] };
    expect(inShort(find('truck-unchecked', site))).toEqual(found);
  });
});

describe('authorisations', () => {
  const holding = (...expires: (string | null)[]) => ({
    operators: [
      {
        id: 'o',
        name: 'One',
        authorisations: expires.map((end) => ({ kind: 'reach' as const, expires: end })),
      },
    ],
  });

  it.each([
    { expires: '2026-03-02T09:59:59Z', kind: 'authorisation-ended' },
    { expires: '2026-03-02T10:00:00Z', kind: 'authorisation-ending' }, // exactly now: has not ended
    { expires: '2026-04-01T10:00:00Z', kind: 'authorisation-ending' }, // exactly 30 days
    { expires: '2026-04-01T10:00:01Z', kind: null },
    { expires: null, kind: null },
  ])('one that ends $expires', ({ expires, kind }) => {
    const found = (['authorisation-ended', 'authorisation-ending'] as const).filter(
      (entry) => find(entry, holding(expires)).length > 0,
    );
    expect(found).toEqual(kind === null ? [] : [kind]);
  });

  it('of several for one kind the one that ends last counts', () => {
    expect(find('authorisation-ended', holding('2026-01-01', '2027-01-01'))).toEqual([]);
    expect(find('authorisation-ended', holding('2026-01-01', null))).toEqual([]);
  });

  it('are not judged without a time', () => {
    expect(find('authorisation-ended', holding('2020-01-01'), null)).toEqual([]);
  });
});

describe('plates', () => {
  it.each([
    { highest: 5999, found: [['plan', 6000, 5999]] },
    { highest: 6000, found: [] },
    { highest: 6001, found: [] },
  ])('lines up to $highest for a mast of 6000', ({ highest, found }) => {
    expect(inShort(find('plate-stops-below-mast', plated([line(highest, 600, 1000)])))).toEqual(found);
  });

  it.each([
    { why: 'more at the greater height', lines: [line(3000, 600, 1000), line(6000, 600, 1001)], found: 1 },
    { why: 'as much at the greater height', lines: [line(3000, 600, 1000), line(6000, 600, 1000)], found: 0 },
    { why: 'more at the longer centre', lines: [line(6000, 500, 1000), line(6000, 600, 1200)], found: 1 },
    { why: 'more higher up but nearer in', lines: [line(3000, 700, 900), line(6000, 600, 1000)], found: 0 },
    {
      why: 'more for another attachment',
      lines: [line(3000, 600, 1000), { ...line(6000, 600, 1200), attachment: 'clamp' }],
      found: 0,
    },
  ])('$why', ({ lines, found }) => {
    expect(find('plate-rises', plated(lines))).toHaveLength(found);
  });

  it('two capacities for one point contradict each other, whichever comes first', () => {
    const [low, high] = [line(6000, 600, 1000), line(6000, 600, 1100)];
    for (const lines of [
      [low, high],
      [high, low],
    ]) {
      expect(find('plate-contradicts', plated(lines))).toMatchObject([
        { severity: 'stop', figures: { need: 1100, have: 1000 } },
      ]);
      expect(find('plate-rises', plated(lines))).toEqual([]);
    }
  });

  it('one without a line for what is fitted proves nothing', () => {
    const site = plated([line(6000, 600, 1000)], { fittedAttachment: 'clamp' });
    expect(find('plate-lacks-attachment', site)).toMatchObject([
      { severity: 'stop', subject: { attachment: 'clamp' } },
    ]);
  });
});

describe('facts of a truck that are missing', () => {
  it.each([
    { lacks: { turning: null }, cause: 'no-turning-data', severity: 'plan' },
    { lacks: { loweredMm: null }, cause: 'mast-height-unknown', severity: 'note' },
    {
      lacks: { forks: { lengthMm: null, armCapacityKg: 1000, armLoadCentreMm: 600 } },
      cause: 'fork-length-unknown',
      severity: 'note',
    },
    { lacks: { forks: { lengthMm: 1150 } }, cause: 'fork-arm-rating-unknown', severity: 'note' },
  ])('$cause', ({ lacks, cause, severity }) => {
    const found = find('truck-facts-missing', { trucks: [makeTruck(lacks), makeCounterbalance()] });
    expect(found).toMatchObject([{ severity, subject: { truck: 'reach-1', lacks: cause } }]);
  });
});

describe('masses', () => {
  const declared = (grossKg: number) => makeLoad({ grossKg, massBasis: 'declared' });

  // assessed 10 % above the declared mass; 90 % of the 1200 kg that the notice allows is 1080
  it.each([
    { kg: 981, found: [] }, // 1079.1
    { kg: 981.9, found: [['plan', 1080.09, 1200]] },
    { kg: 1090, found: [['plan', 1199, 1200]] },
    { kg: 1091, found: [] }, // 1200.1: an overload, no longer thin
  ])('a declared mass of $kg kg on the first level', ({ kg, found }) => {
    const roomy = { stock: [{ location: 'a1-1-1', load: 'crates' }] };
    const thin = find('declared-thin', { loads: [declared(kg)], ...roomy });
    expect(inShort(thin)).toEqual(found);
  });

  it('a weighed mass is not asked to be weighed', () => {
    expect(find('declared-thin', { loads: [makeLoad({ grossKg: 1150 })], stock })).toEqual([]);
  });

  it('names each place once, and the load once', () => {
    const stands = ['a1-1-1', 'a1-1-2', 'a2-1-1'].map((location) => ({ location, load: 'crates' }));
    const [found, ...more] = find('declared-thin', { loads: [declared(1050)], stock: stands });
    expect(more).toEqual([]);
    expect(found?.subject).toEqual({ of: 'load', load: 'crates', locations: ['a1-1-1', 'a1-1-2', 'a2-1-1'] });
  });
});

describe('reach', () => {
  it('is found by cause: an aisle too narrow, steel that is damaged', () => {
    const aisles = [{ id: 'aisle-1', clearWidthMm: 2500, overheadClearMm: 9000, sprinklerMm: 8500 }];
    const frames = [
      makeFrame({ id: 'a-f1', condition: 'amber' }),
      makeFrame({ id: 'a-f2' }),
      makeFrame({ id: 'a-f3' }),
    ];
    expect(find('out-of-reach', { aisles }).map(({ subject }) => subject)).toMatchObject([
      { rule: 'aisle-turn', cause: null },
    ]);
    expect(find('out-of-reach', { runs: [makeRun({ frames })] })).toMatchObject([
      { subject: { rule: 'rack-condition', cause: 'amber' }, figures: { need: 12, have: 6, excess: 6 } },
    ]);
    expect(find('out-of-reach')).toEqual([]);
  });

  it('a load that fits nowhere is a note until it stands somewhere', () => {
    const loads = [makeLoad({ id: 'crates', widthMm: 2600 })];
    expect(find('unplaceable', { loads })).toMatchObject([
      { severity: 'note', source: { rule: 'opening-width' }, figures: { have: 0 } },
    ]);
    expect(find('unplaceable', { loads, stock })).toMatchObject([{ severity: 'plan' }]);
  });

  // the floor carries any mass; the strongest there is the counterbalanced truck, 1700 kg tilted forward
  it.each([
    { kg: 1700, found: 0 },
    { kg: 1701, found: 1 },
  ])('a load of $kg kg', ({ kg, found }) => {
    expect(find('unplaceable', { loads: [makeLoad({ grossKg: kg })] })).toHaveLength(found);
  });
});

describe('picks by hand', () => {
  const pick = (massKg: number, gripHeightMm = 750) => ({
    loads: [
      makeLoad({
        handPick: {
          massKg,
          horizontalMm: 250,
          gripHeightMm,
          destinationHeightMm: gripHeightMm,
          asymmetryDeg: 0,
          liftsPerMinute: 0.2,
          durationHours: 1,
          coupling: 'good',
        },
      }),
    ],
    stock: [{ location: 'a1-0-1', load: 'crates' }],
  });

  // every multiplier is 1: the limit is the load constant itself, 23 kg (NIOSH 94-110)
  it.each([
    { massKg: 22.9, found: [] },
    { massKg: 23, found: [] },
    { massKg: 46, found: [['plan', 2, 1]] },
  ])('a case of $massKg kg lifted at its best', ({ massKg, found }) => {
    expect(inShort(find('hand-pick', pick(massKg)))).toEqual(found);
  });

  it('above the reach of hands it is a note to bring the pallet down', () => {
    expect(find('hand-pick', pick(5, 1751))).toEqual([]);
    expect(find('hand-pick-too-high', pick(5, 1751))).toMatchObject([{ severity: 'note' }]);
  });
});
