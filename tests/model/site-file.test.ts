import { describe, expect, it } from 'vitest';
import type { Refusal } from '../../lib/model/refusal.ts';
import { readSite, readSiteText, writeSiteText } from '../../lib/model/site-file.ts';
import { refusalSentence } from '../../lib/words/refusal.ts';

// A site file as a person would write it: what may be null is left out where it is not known.
function rawSite() {
  return {
    format: 'tinewise-site',
    version: 1,
    site: { name: 'Two bays', policy: { thinPercent: 15, massAllowancePercent: { declared: 5 } } },
    palletTypes: [{ id: 'P12', depthMm: 1200, widthMm: 800, tareKg: 25, entryHeightMm: 100 }],
    frameTypes: [{ id: 'F90', ratings: [{ maxGapMm: 1500, capacityKg: 9000 }] }],
    aisles: [{ id: 'A1', clearWidthMm: 3000, sprinklerMm: 'none' }],
    runs: [
      {
        id: 'A1-L',
        aisleId: 'A1',
        frameDepthMm: 1100,
        frames: [
          { id: 'f0', typeId: 'F90', condition: 'sound' },
          { id: 'f1', typeId: 'F90', condition: 'amber' },
          { id: 'f2', typeId: 'F90', condition: 'red' },
        ],
        bays: ['b0', 'b1'].map((id) => ({
          id,
          clearWidthMm: 2700,
          levels: [
            {
              level: 0,
              beamTopMm: 0,
              beamHeightMm: 0,
              depthPositions: 1,
              decked: false,
              condition: 'sound',
              locations: [`${id}-0-1`, `${id}-0-2`],
            },
            {
              level: 1,
              beamTopMm: 1500,
              beamHeightMm: 110,
              pairCapacityKg: 2000,
              depthPositions: 2,
              decked: true,
              condition: 'sound',
              locations: [`${id}-1-1`, `${id}-1-2`],
            },
          ],
        })),
      },
    ],
    trucks: [
      {
        id: 'T1',
        name: 'Truck one',
        kind: 'reach',
        power: 'electric',
        maxLiftMm: 6000,
        reachDepth: 1,
        forks: { lengthMm: 1150 },
        plate: { ratings: [{ mast: 'vertical', liftHeightMm: 6000, loadCentreMm: 600, capacityKg: 1600 }] },
      },
    ],
    operators: [
      { id: 'O1', name: 'Operator one', authorisations: [{ kind: 'reach', expires: '2026-12-31' }] },
    ],
    loads: [
      {
        id: 'L1',
        name: 'Load one',
        palletType: 'P12',
        items: [{ name: 'box', massKg: 10.5, count: 40 }],
        massBasis: 'calculated',
        depthMm: 1200,
        widthMm: 800,
        heightMm: 1450,
      },
    ],
    stock: [{ location: 'b0-1-1', load: 'L1' }],
    checks: [{ truck: 'T1', at: '2026-03-02T06:30:00Z', by: 'O1', result: 'pass' }],
  };
}

type Raw = ReturnType<typeof rawSite>;

function refusalsOf(change: (raw: Raw & Record<string, unknown>) => void): Refusal[] {
  const raw = rawSite() as Raw & Record<string, unknown>;
  change(raw);
  const reading = readSite(raw);
  return reading.ok ? [] : reading.refusals;
}

const set = (target: object, key: string, value: unknown) => {
  (target as Record<string, unknown>)[key] = value;
};

describe('reading a site file', () => {
  it('fills what may be absent with null or an empty list', () => {
    const reading = readSite(rawSite());
    if (!reading.ok) throw new Error(reading.refusals.map(refusalSentence).join('\n'));
    expect(reading.site.aisles[0]).toEqual({
      id: 'A1',
      clearWidthMm: 3000,
      overheadClearMm: null,
      sprinklerMm: 'none',
    });
    expect(reading.site.docks).toEqual([]);
    expect(reading.site.trucks[0]!.turning).toBeNull();
    expect(reading.site.trucks[0]!.plate.ratings[0]!.attachment).toBeNull();
    expect(reading.site.loads[0]!.grossKg).toBeNull();
  });

  it('keeps a partial policy as the site wrote it, so that a changed default still reaches it', () => {
    const reading = readSite(rawSite());
    expect(reading.ok && reading.site.site.policy).toEqual({
      thinPercent: 15,
      massAllowancePercent: { declared: 5 },
    });
  });

  it('reads back exactly what it writes', () => {
    const reading = readSite(rawSite());
    if (!reading.ok) throw new Error('refused');
    const text = writeSiteText(reading.site);
    const again = readSiteText(text);
    expect(again.ok && again.site).toEqual(reading.site);
    expect(again.ok && writeSiteText(again.site)).toBe(text);
  });

  it('reads a text that begins with a byte order mark', () => {
    expect(readSiteText(`\ufeff${JSON.stringify(rawSite())}`).ok).toBe(true);
  });

  it('names the place where a text stops being JSON', () => {
    const reading = readSiteText('{"format": "tinewise-site",,}');
    expect(reading.ok).toBe(false);
    expect(!reading.ok && refusalSentence(reading.refusals[0]!)).toMatch(
      /^This is not a JSON text: .*position 27/,
    );
  });
});

describe('a site file is refused', () => {
  it.each([
    {
      why: 'a negative rating',
      at: '$.frameTypes[0].ratings[0].capacityKg',
      says: /-1 came, a number above 0/,
      change: (r: Raw) => set(r.frameTypes[0]!.ratings[0]!, 'capacityKg', -1),
    },
    {
      why: 'a rating of nothing',
      at: '$.trucks[0].plate.ratings[0].capacityKg',
      says: /0 came, a number above 0/,
      change: (r: Raw) => set(r.trucks[0]!.plate.ratings[0]!, 'capacityKg', 0),
    },
    {
      why: 'a clear width of nothing',
      at: '$.aisles[0].clearWidthMm',
      says: /0 came/,
      change: (r: Raw) => set(r.aisles[0]!, 'clearWidthMm', 0),
    },
    {
      why: 'not a number',
      at: '$.loads[0].depthMm',
      says: /NaN came, a number was expected/,
      change: (r: Raw) => set(r.loads[0]!, 'depthMm', Number.NaN),
    },
    {
      why: 'a number past 1e7',
      at: '$.loads[0].heightMm',
      says: /10000001 came, a number of at most 10000000/,
      change: (r: Raw) => set(r.loads[0]!, 'heightMm', 10_000_001),
    },
    {
      why: 'a number as text',
      at: '$.loads[0].widthMm',
      says: /"800" came, a number was expected/,
      change: (r: Raw) => set(r.loads[0]!, 'widthMm', '800'),
    },
    {
      why: 'a fact that may not be left out',
      at: '$.runs[0].frameDepthMm',
      says: /nothing came, a value/,
      change: (r: Raw) => set(r.runs[0]!, 'frameDepthMm', undefined),
    },
    {
      why: 'an unknown key, with the nearest known one',
      at: '$.runs[0].bays[0].levels[1].pairCapacity',
      says: /did you mean pairCapacityKg/,
      change: (r: Raw) => set(r.runs[0]!.bays[0]!.levels[1]!, 'pairCapacity', 2000),
    },
    {
      why: 'a kind of truck that there is not',
      at: '$.trucks[0].kind',
      says: /one of "counterbalance", "reach"/,
      change: (r: Raw) => set(r.trucks[0]!, 'kind', 'crane'),
    },
    {
      why: 'three depth positions',
      at: '$.runs[0].bays[0].levels[0].depthPositions',
      says: /one of 1, 2/,
      change: (r: Raw) => set(r.runs[0]!.bays[0]!.levels[0]!, 'depthPositions', 3),
    },
    {
      why: 'a time that is none',
      at: '$.checks[0].at',
      says: /a time in UTC/,
      change: (r: Raw) => set(r.checks[0]!, 'at', 'Monday'),
    },
    {
      why: 'a time with another offset',
      at: '$.checks[0].at',
      says: /a time in UTC/,
      change: (r: Raw) => set(r.checks[0]!, 'at', '2026-03-02T06:30:00+02:00'),
    },
    {
      why: 'an overhead height that is a word',
      at: '$.aisles[0].overheadClearMm',
      says: /or "none" where a survey found nothing/,
      change: (r: Raw) => set(r.aisles[0]!, 'overheadClearMm', 'open'),
    },
    {
      why: 'half a box',
      at: '$.loads[0].items[0].count',
      says: /0.5 came, a whole number/,
      change: (r: Raw) => set(r.loads[0]!.items[0]!, 'count', 0.5),
    },
    {
      why: 'an id with a blank at its end',
      at: '$.trucks[0].id',
      says: /no blank at either end/,
      change: (r: Raw) => set(r.trucks[0]!, 'id', 'T1 '),
    },
    {
      why: 'another version',
      at: '$.version',
      says: /2 came, 1 was/,
      change: (r: Raw) => set(r, 'version', 2),
    },
    {
      why: 'a policy that lets an unknown plate pass',
      at: '$.site.policy.mustKnow',
      says: /keeps plate-capacity/,
      change: (r: Raw) => set(r.site.policy, 'mustKnow', ['depth-reach']),
    },
    {
      why: 'a duplicate truck',
      at: '$.trucks[1].id',
      says: /it stands at \$\.trucks\[0\]\.id already/,
      change: (r: Raw) => r.trucks.push({ ...r.trucks[0]! }),
    },
    {
      why: 'one location in two levels',
      at: '$.runs[0].bays[1].levels[0].locations[0]',
      says: /not used yet/,
      change: (r: Raw) => set(r.runs[0]!.bays[1]!.levels[0]!, 'locations', ['b0-0-1']),
    },
    {
      why: 'an aisle that there is not',
      at: '$.runs[0].aisleId',
      says: /an id in \$\.aisles \(did you mean "A1"\?\)/,
      change: (r: Raw) => set(r.runs[0]!, 'aisleId', 'A2'),
    },
    {
      why: 'a frame type that there is not',
      at: '$.runs[0].frames[0].typeId',
      says: /\$\.frameTypes/,
      change: (r: Raw) => set(r.runs[0]!.frames[0]!, 'typeId', 'F12'),
    },
    {
      why: 'a pallet type that there is not',
      at: '$.loads[0].palletType',
      says: /\$\.palletTypes/,
      change: (r: Raw) => set(r.loads[0]!, 'palletType', 'Q'),
    },
    {
      why: 'stock in a location that there is not',
      at: '$.stock[0].location',
      says: /\$\.runs \(locations\)/,
      change: (r: Raw) => set(r.stock[0]!, 'location', 'b9-1-1'),
    },
    {
      why: 'stock of a load that there is not',
      at: '$.stock[0].load',
      says: /\$\.loads/,
      change: (r: Raw) => set(r.stock[0]!, 'load', 'L9'),
    },
    {
      why: 'two pallets in one location',
      at: '$.stock[1].location',
      says: /not used yet/,
      change: (r: Raw) => r.stock.push({ ...r.stock[0]! }),
    },
    {
      why: 'a check of a truck that there is not',
      at: '$.checks[0].truck',
      says: /\$\.trucks/,
      change: (r: Raw) => set(r.checks[0]!, 'truck', 'T9'),
    },
    {
      why: 'two frames for two bays',
      at: '$.runs[0].frames',
      says: /a list of 2 came, a list of 3 frames for 2 bays/,
      change: (r: Raw) => r.runs[0]!.frames.pop(),
    },
    {
      why: 'level numbers that do not rise',
      at: '$.runs[0].bays[0].levels[1].level',
      says: /more than the 0/,
      change: (r: Raw) => set(r.runs[0]!.bays[0]!.levels[1]!, 'level', 0),
    },
    {
      why: 'a beam top no higher than the one below',
      at: '$.runs[0].bays[0].levels[1].beamTopMm',
      says: /above 0 \(only level 0/,
      change: (r: Raw) => set(r.runs[0]!.bays[0]!.levels[1]!, 'beamTopMm', 0),
    },
    {
      why: 'a floor above the floor',
      at: '$.runs[0].bays[0].levels[0].beamTopMm',
      says: /the beam top of the floor/,
      change: (r: Raw) => set(r.runs[0]!.bays[0]!.levels[0]!, 'beamTopMm', 10),
    },
    {
      why: 'an odd number of locations two deep',
      at: '$.runs[0].bays[0].levels[1].locations',
      says: /an even number/,
      change: (r: Raw) => r.runs[0]!.bays[0]!.levels[1]!.locations.push('x'),
    },
    {
      why: 'a fork arm capacity without its load centre',
      at: '$.trucks[0].forks.armLoadCentreMm',
      says: /both or neither/,
      change: (r: Raw) => set(r.trucks[0]!.forks, 'armCapacityKg', 900),
    },
    {
      why: 'a mast that is lower extended than lowered',
      at: '$.trucks[0].extendedMm',
      says: /at least loweredMm, 2500/,
      change: (r: Raw) => Object.assign(r.trucks[0]!, { loweredMm: 2500, extendedMm: 2400 }),
    },
    {
      why: 'a free lift above the greatest lift',
      at: '$.trucks[0].freeLiftMm',
      says: /at most maxLiftMm, 6000/,
      change: (r: Raw) => set(r.trucks[0]!, 'freeLiftMm', 6001),
    },
  ])('for $why', ({ at, says, change }) => {
    const refusals = refusalsOf(change as (raw: Raw) => void);
    const here = refusals.filter((refusal) => refusal.path === at);
    expect(refusals.map((refusal) => refusal.path)).toContain(at);
    expect(here.map(refusalSentence).join('\n')).toMatch(says);
  });

  it.each([
    { why: 'a mast that is as high extended as lowered', truck: { loweredMm: 2500, extendedMm: 2500 } },
    { why: 'a lift that is free to its end', truck: { freeLiftMm: 6000 } },
    {
      why: 'a policy of whole percents',
      policy: { thinPercent: 100, massAllowancePercent: { declared: 100 } },
    },
    { why: 'a policy of no percents', policy: { thinPercent: 0, massAllowancePercent: { declared: 0 } } },
  ])('not for $why', ({ truck, policy }) => {
    expect(
      refusalsOf((raw) => {
        Object.assign(raw.trucks[0]!, truck);
        Object.assign(raw.site.policy, policy);
      }),
    ).toEqual([]);
  });

  it.each([
    { policy: { thinPercent: 100.1 }, at: '$.site.policy.thinPercent' },
    { policy: { thinPercent: -0.1 }, at: '$.site.policy.thinPercent' },
    { policy: { massAllowancePercent: { weighed: 101 } }, at: '$.site.policy.massAllowancePercent.weighed' },
    { policy: { massAllowancePercent: { weighed: -1 } }, at: '$.site.policy.massAllowancePercent.weighed' },
    { policy: { forkSupportFraction: 1.01 }, at: '$.site.policy.forkSupportFraction' },
    { policy: { forkSupportFraction: 0 }, at: '$.site.policy.forkSupportFraction' },
  ])('for a policy past its bounds: $policy', ({ policy, at }) => {
    const refusals = refusalsOf((raw) => Object.assign(raw.site.policy, policy));
    expect(refusals.map(({ path }) => path)).toEqual([at]);
  });

  it.each([
    { facts: '"id": "T1", "maxLiftMm": 6000', again: '"maxLiftMm": 9000', at: '$.trucks[0].maxLiftMm' },
    {
      facts: '"id": "T1", "x": {"a\\"b": 1, "c": "\\\\"',
      again: '"a\\u0022b": 2}',
      at: '$.trucks[0].x["a\\"b"]',
    },
    {
      facts: '"id": "T1", "x": [{"a": 1}, {"a": "{,\\"a\\":[", "b": []',
      again: '"a": 1}]',
      at: '$.trucks[0].x[1].a',
    },
    { facts: '"id": "T1", "__proto__": 1', again: '"__proto__": 2', at: '$.trucks[0].__proto__' },
  ])('for a key that comes twice in one object, at $at', ({ facts, again, at }) => {
    const reading = readSiteText(`{"trucks": [{${facts}, ${again}}, {"id": "T2"}]}`);
    const twice = reading.ok ? [] : reading.refusals.filter(({ expected }) => expected.is === 'once');
    expect(twice.map(({ path }) => path)).toEqual([at]);
    expect(refusalSentence(twice[0]!)).toBe(
      `${at}: a second value came, one value for each key was expected.`,
    );
  });

  it('lists every fault at once, those of the schema and those between facts', () => {
    const refusals = refusalsOf((raw) => {
      set(raw.trucks[0]!, 'maxLiftMm', -6000);
      set(raw.trucks[0]!, 'colour', 'blue');
      set(raw.loads[0]!, 'depthMm', 0);
      raw.runs[0]!.frames.pop();
      set(raw.stock[0]!, 'load', 'L2');
    });
    expect(refusals.map((refusal) => refusal.path).sort()).toEqual([
      '$.loads[0].depthMm',
      '$.runs[0].frames',
      '$.stock[0].load',
      '$.trucks[0].colour',
      '$.trucks[0].maxLiftMm',
    ]);
  });

  it('does not call a reference unresolved because the entry it names has another fault', () => {
    const refusals = refusalsOf((raw) => set(raw.aisles[0]!, 'clearWidthMm', -1));
    expect(refusals.map((refusal) => refusal.path)).toEqual(['$.aisles[0].clearWidthMm']);
  });

  it('is quick about a stock list that names nothing known: the nearest id is sought for the first few alone', () => {
    const refusals = refusalsOf((raw) => {
      raw.stock = Array.from({ length: 400 }, (_, at) => ({ location: `b0-1-${at + 3}`, load: 'L1' }));
    });
    const withNearest = refusals.filter(
      ({ expected }) => expected.is === 'id-in' && expected.nearest !== null,
    );
    expect(refusals).toHaveLength(400);
    expect(withNearest).toHaveLength(50);
  });

  it('names every fault of a list in which everything is wrong, however long it is', () => {
    const refusals = refusalsOf((raw) => {
      raw.stock = Array.from({ length: 100_000 }, (_, at) => ({ location: `x${at}`, load: `y${at}` }));
    });
    expect(refusals).toHaveLength(200_000);
  });

  it.each([null, [], 'text', 7, { format: 'tinewise-site' }])(
    'whatever the value at the top is: %j',
    (raw) => {
      expect(readSite(raw).ok).toBe(false);
    },
  );
});
