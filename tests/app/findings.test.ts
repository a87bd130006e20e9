import { describe, expect, it } from 'vitest';
import { findingLinks } from '../../app/findings/finding-links.ts';
import { findingsCsv } from '../../app/findings/findings-csv.ts';
import {
  type FindingsQuery,
  readFindingsQuery,
  writeFindingsQuery,
} from '../../app/findings/findings-query.ts';
import {
  countSeverities,
  type FoundThing,
  findWords,
  groupFindings,
  keepFindings,
} from '../../app/findings/group-findings.ts';
import { whereaboutsIn } from '../../app/findings/where-found.ts';
import type { Finding, Subject } from '../../lib/audit/finding.ts';
import { makeFinding, ruleSource } from '../../lib/audit/make-finding.ts';
import { DEFAULT_REFERENCE } from '../../lib/audit/reference-load.ts';
import { makeBay, makeFrame, makeIndex, makeRun } from '../site-builder.ts';

const index = makeIndex({
  aisles: [
    { id: 'X', clearWidthMm: 3000, overheadClearMm: 'none', sprinklerMm: 'none' },
    { id: 'Y', clearWidthMm: 3000, overheadClearMm: null, sprinklerMm: 'none' },
  ],
  runs: [
    makeRun({ id: 'x', aisleId: 'X', bays: [makeBay('a1'), makeBay('a2')] }),
    makeRun({
      id: 'y',
      aisleId: 'Y',
      frames: ['g1', 'g2'].map((id) => makeFrame({ id })),
      bays: [makeBay('b1')],
    }),
  ],
  stock: [
    { location: 'a2-1-2', load: 'crates' },
    { location: 'b1-1-1', load: 'crates' },
  ],
  checks: [],
});
const whereabouts = whereaboutsIn(index);

function finding(subject: Subject, rest: Partial<Finding> = {}): Finding {
  return makeFinding({
    kind: 'frame-overload',
    severity: 'stop',
    figures: { need: 5, have: 4, excess: 1, unit: 'kg', needIs: 'exact' },
    source: ruleSource('frame-load'),
    advice: 'take-load-off',
    subject,
    ...rest,
  });
}

function thing(found: Finding): FoundThing {
  const where = whereabouts(found);
  return { finding: found, where, words: findWords(found, where, 'metric') };
}

const PLAIN = readFindingsQuery({}).query;

describe('the address of the findings', () => {
  it.each<FindingsQuery>([
    PLAIN,
    {
      time: { kind: 'at', instant: '2026-03-02T06:30:00Z' },
      severity: 'plan',
      kind: 'one-truck',
      where: { of: 'aisle', id: 'A 5' },
      truck: 'RT-1',
      find: 'tile & grout',
      order: 'excess',
    },
    { ...PLAIN, time: { kind: 'not-judged' }, where: { of: 'run', id: 'A5-L' } },
  ])('says what is looked at, and is read back: %j', (query) => {
    const raw = Object.fromEntries(new URLSearchParams(writeFindingsQuery(query)));
    expect(readFindingsQuery(raw)).toEqual({ query, refused: [] });
  });

  it('names what it cannot read, and asks nothing in its stead', () => {
    const { query, refused } = readFindingsQuery({ severity: 'grave', kind: 'overload', asOf: 'soon' });
    expect(query).toEqual(PLAIN);
    expect(refused.map(({ path }) => path).sort()).toEqual(['$.asOf', '$.kind', '$.severity']);
  });
});

describe('where a finding is', () => {
  it.each<{ subject: Subject; runs: string[]; place: string | null; why: string }>([
    {
      subject: { of: 'stored-load', location: 'a2-1-2', load: 'crates' },
      runs: ['x'],
      place: 'a2-1-2',
      why: 'the location',
    },
    {
      subject: { of: 'level', run: 'x', bay: 'a2', level: 1 },
      runs: ['x'],
      place: 'a2-1-2',
      why: 'what stands on the level',
    },
    {
      subject: { of: 'level', run: 'x', bay: 'a1', level: 2 },
      runs: ['x'],
      place: 'a1-2-1',
      why: 'its first place where nothing stands',
    },
    {
      subject: { of: 'bay', run: 'x', bay: 'a2' },
      runs: ['x'],
      place: 'a2-1-2',
      why: 'what stands on the beams',
    },
    {
      subject: { of: 'frame', run: 'x', frame: index.site.runs[0]!.frames[1]!.id },
      runs: ['x'],
      place: 'a2-1-2',
      why: 'the bays on both sides',
    },
    {
      subject: { of: 'frame', run: 'x', frame: index.site.runs[0]!.frames[0]!.id },
      runs: ['x'],
      place: 'a1-1-1',
      why: 'the only bay beside the first',
    },
    {
      subject: { of: 'aisle', aisle: 'Y', overhead: 'mast' },
      runs: ['y'],
      place: null,
      why: 'the runs of the aisle',
    },
    {
      subject: { of: 'load', load: 'crates', locations: ['b1-1-1', 'a2-1-2'] },
      runs: ['y', 'x'],
      place: 'b1-1-1',
      why: 'all its places',
    },
    { subject: { of: 'truck', truck: 'R1', lacks: null }, runs: [], place: null, why: 'a truck is nowhere' },
  ])('of $subject.of is $place in $runs: $why', ({ subject, runs, place }) => {
    const where = whereabouts(finding(subject));
    expect(where.runs).toEqual(runs);
    expect(where.place?.id ?? null).toBe(place);
  });

  it('leads to the rack with the place marked, the load, and the truck that it names', () => {
    const stored = { of: 'stored-load', location: 'a2-1-2', load: 'crates' } as const;
    const one = finding(stored, { kind: 'one-truck', truck: 'R1' });
    const links = findingLinks(one, whereabouts(one), {
      time: { kind: 'at', instant: '2026-03-02T06:30:00Z' },
      reference: DEFAULT_REFERENCE,
    });
    expect(links.map(({ label }) => label)).toEqual(['Rack x at a2-1-2', 'Load crates', 'Truck R1']);
    const { searchParams, pathname } = new URL(links[0]!.href, 'http://here');
    expect(pathname).toBe('/racks');
    expect(Object.fromEntries(searchParams)).toEqual({
      location: 'a2-1-2',
      operation: 'retrieve',
      asOf: '2026-03-02T06:30:00Z',
      run: 'x',
    });
  });

  it('out of reach is asked with the reference load, the racks taken as empty', () => {
    const far = finding(
      { of: 'locations', rule: 'lift-height', cause: null, locations: ['a1-2-1'] },
      { kind: 'out-of-reach', severity: 'plan' },
    );
    const [rack] = findingLinks(far, whereabouts(far), {
      time: { kind: 'now' },
      reference: DEFAULT_REFERENCE,
    });
    const asked = new URL(rack!.href, 'http://here').searchParams;
    expect(asked.get('mass')).toBe('1000');
    expect(asked.get('stock')).toBe('empty');
    expect(asked.get('location')).toBe('a1-2-1');
  });
});

describe('what is kept and in which order', () => {
  const level = (bay: string, severity: Finding['severity'], excess: number | null) =>
    thing(
      finding(
        { of: 'level', run: bay.startsWith('a') ? 'x' : 'y', bay, level: 1 },
        {
          kind: 'load-too-tall',
          severity,
          figures: { need: null, have: null, excess, unit: 'mm', needIs: 'exact' },
        },
      ),
    );
  const things = [
    thing(finding({ of: 'truck', truck: 'R1', lacks: null }, { kind: 'truck-held', severity: 'note' })),
    level('a1', 'plan', 900),
    level('a2', 'stop', 5),
    level('b1', 'stop', null),
  ];
  const keep = (part: Partial<FindingsQuery>) =>
    keepFindings(things, { ...PLAIN, ...part }, index).map(({ finding: { subject } }) =>
      'bay' in subject ? subject.bay : 'truck',
    );

  it.each<{ part: Partial<FindingsQuery>; kept: string[] }>([
    { part: {}, kept: ['truck', 'a1', 'a2', 'b1'] },
    { part: { severity: 'stop' }, kept: ['a2', 'b1'] },
    { part: { kind: 'truck-held' }, kept: ['truck'] },
    { part: { where: { of: 'run', id: 'x' } }, kept: ['a1', 'a2'] },
    { part: { where: { of: 'aisle', id: 'Y' } }, kept: ['b1'] },
    { part: { where: { of: 'run', id: 'nowhere' } }, kept: [] },
    { part: { truck: 'R1' }, kept: ['truck'] },
    { part: { find: 'TALL b1' }, kept: ['b1'] },
    { part: { find: 'tall hold' }, kept: [] },
    { part: { severity: 'stop', where: { of: 'run', id: 'x' } }, kept: ['a2'] },
  ])('keeps $kept for $part', ({ part, kept }) => {
    expect(keep(part)).toEqual(kept);
  });

  it.each([
    { order: 'severity' as const, bays: ['a2', 'b1', 'a1'] },
    { order: 'excess' as const, bays: ['a1', 'a2', 'b1'] },
  ])('by $order lists $bays, an excess that is not known last', ({ order, bays }) => {
    const groups = groupFindings(things, order);
    expect(groups.map(({ kind, severity }) => [kind, severity])).toEqual([
      ['load-too-tall', 'stop'],
      ['truck-held', 'note'],
    ]);
    expect(groups[0]!.things.map(({ finding: { subject } }) => 'bay' in subject && subject.bay)).toEqual(
      bays,
    );
  });

  it('counts each severity', () => {
    expect(countSeverities(things)).toEqual({ stop: 2, plan: 1, note: 1 });
  });
});

describe('findings as CSV', () => {
  it('have a line each, with metric figures, and nothing that a spreadsheet would run', () => {
    const bad = thing(
      finding(
        { of: 'truck', truck: '=HYPERLINK("x")', lacks: null },
        { kind: 'truck-held', severity: 'plan' },
      ),
    );
    const csv = findingsCsv([bad, thing(finding({ of: 'bay', run: 'x', bay: 'a2' }))]);
    const lines = csv.split('\r\n');
    expect(lines).toHaveLength(3);
    expect(lines[0]).toMatch(/^severity,kind,title,subject,.*,need,have,excess,unit,/);
    expect(lines[1]).toContain(`"'=HYPERLINK(""x"")"`);
    expect(lines[1]).not.toMatch(/(^|,)"?=/);
    expect(lines[2]).toMatch(
      /^stop,frame-overload,Upright frame overloaded,"?run x, bay a2"?,x,a2-1-2,,,5,4,1,kg,exact,/,
    );
  });
});
