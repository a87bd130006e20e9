import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { type Audit, auditSite } from '../../lib/audit/audit-site.ts';
import { FINDING_KINDS, type FindingKind } from '../../lib/audit/finding.ts';
import { DEFAULT_REFERENCE, referenceLoad } from '../../lib/audit/reference-load.ts';
import { checkLift } from '../../lib/check/check-lift.ts';
import type { Context, LiftAnswer, Step } from '../../lib/check/step.ts';
import { assessedMassKg, grossMass, type Load } from '../../lib/model/load.ts';
import type { Level } from '../../lib/model/racking.ts';
import type { RuleId } from '../../lib/model/rule-ids.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { indexSite, type Place, palletOf, type SiteIndex } from '../../lib/model/site-index.ts';
import { frameLoad } from '../../lib/rack/frame-load.ts';
import { standingOnBay, standingOnLevel } from '../../lib/rack/stand.ts';
import { drawContext, drawSite } from './arbitrary-site.ts';

const SEED = 20260303;
const SITES = 120;
const AS_IS = { stock: 'as-is', from: null } as const;
const TAKE_DOWN: Context = { operation: 'retrieve', asOf: null, operator: null, ...AS_IS };

const seen = new Map<FindingKind, number>();

/** Kinds that the generator of sites reaches; the others have tests of their own. */
const REACHED: FindingKind[] = [
  'unit-overload',
  'beam-level-overload',
  'bay-overload',
  'frame-overload',
  'red-steel-loaded',
  'amber-steel-loaded',
  'under-supported',
  'load-too-tall',
  'load-too-wide',
  'near-sprinklers',
  'stranded-for-fleet',
  'stranded',
  'one-truck',
  'mass-unknown',
  'declared-thin',
  'out-of-reach',
  'unplaceable',
];

const isGood = ({ verdict }: LiftAnswer) => verdict === 'clear' || verdict === 'thin';

/** The audit as the readable engine would make it: every lift asked one by one. */
class Oracle {
  readonly stored: { place: Place; load: Load }[];
  readonly index: SiteIndex;
  readonly asOf: string | null;
  readonly #inPlace = new Map<string, readonly Step[]>();

  constructor(index: SiteIndex, asOf: string | null) {
    this.index = index;
    this.asOf = asOf;
    this.stored = [...index.places.values()].flatMap((place) => {
      const load = index.stockAt.get(place.id);
      return load === undefined ? [] : [{ place, load }];
    });
  }

  answers(load: Load, place: Place, context: Context): LiftAnswer[] {
    return this.index.site.trucks.map((truck) => checkLift(this.index, { load, place, truck, context }));
  }

  mass(load: Load): number | null {
    return assessedMassKg(load, palletOf(this.index, load), this.index.policy);
  }

  stepsBackInPlace({ place, load }: { place: Place; load: Load }, rule: RuleId): Step {
    let steps = this.#inPlace.get(place.id);
    if (steps === undefined) {
      const context: Context = { ...TAKE_DOWN, operation: 'place', from: place.id };
      ({ steps } = checkLift(this.index, { load, place, truck: this.index.site.trucks[0]!, context }));
      this.#inPlace.set(place.id, steps);
    }
    return steps.find((step) => step.rule === rule)!;
  }

  whereStepIs(rule: RuleId, outcome: Step['outcome']): string[] {
    return this.stored
      .filter((one) => this.stepsBackInPlace(one, rule).outcome === outcome)
      .map(({ place, load }) => `${place.id} ${load.id}`);
  }

  /** Trucks that can take it down; null: it must be weighed first. */
  takers({ place, load }: { place: Place; load: Load }, asOf: string | null): string[] | null {
    const answers = this.answers(load, place, { ...TAKE_DOWN, asOf });
    const unproven = answers.some(({ verdict, mostKg }) => verdict === 'unproven' && (mostKg ?? 0) > 0);
    if (this.mass(load) === null && unproven) return null;
    return answers.filter(isGood).map(({ truck }) => truck);
  }

  /** The sum of the known masses where a level holds one that is not known. */
  knownKg(level: Level): number {
    return level.locations.reduce((sum, id) => {
      const load = this.index.stockAt.get(id);
      return sum + (load === undefined ? 0 : (this.mass(load) ?? 0));
    }, 0);
  }
}

function subjectsOf(audit: Audit, kind: FindingKind): string[] {
  return audit.findings
    .filter((finding) => finding.kind === kind)
    .flatMap(({ subject }) => {
      switch (subject.of) {
        case 'stored-load':
          return `${subject.location} ${subject.load}`;
        case 'level':
          return `${subject.bay} ${subject.level}`;
        case 'bay':
          return subject.bay;
        case 'frame':
          return subject.frame;
        case 'load':
          return subject.load;
        case 'locations':
          return subject.locations;
        default:
          throw new Error(`not asked of ${subject.of}`);
      }
    })
    .sort();
}

it('finds what the lift check and the rack sums say, no more and no less', () => {
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const site = drawSite(g);
      expect(readSite(site).ok).toBe(true);
      const { asOf } = drawContext(g, site);
      const index = indexSite(site);
      const audit = auditSite(index, { asOf });
      for (const { kind } of audit.findings) seen.set(kind, (seen.get(kind) ?? 0) + 1);
      const oracle = new Oracle(index, asOf);
      expectPlaces(audit, oracle);
      expectSums(audit, oracle);
      expectTakers(audit, oracle);
      expectReach(audit, oracle);
      expectThinDeclared(audit, oracle);
      expectWhole(audit);
    }),
    { seed: SEED, numRuns: SITES, endOnFailure: true },
  );
}, 120_000);

afterAll(() => {
  expect(REACHED.filter((kind) => !seen.has(kind))).toEqual([]);
});

function expectPlaces(audit: Audit, oracle: Oracle): void {
  const rules: [FindingKind, RuleId][] = [
    ['unit-overload', 'unit-load'],
    ['load-too-tall', 'opening-height'],
    ['load-too-wide', 'opening-width'],
    ['under-supported', 'pallet-support'],
    ['near-sprinklers', 'sprinkler-clearance'],
  ];
  for (const [kind, rule] of rules) {
    expect(subjectsOf(audit, kind)).toEqual(oracle.whereStepIs(rule, 'fail').sort());
  }
}

function expectSums(audit: Audit, oracle: Oracle): void {
  const { index } = oracle;
  const levels: string[] = [];
  const bays: string[] = [];
  const frames: string[] = [];
  for (const run of index.site.runs) {
    const bayKg = run.bays.map((bay) => {
      const beams = bay.levels.filter(({ level }) => level > 0);
      for (const level of beams) {
        const kg = standingOnLevel(index, level, AS_IS).kg ?? oracle.knownKg(level);
        if (level.pairCapacityKg !== null && kg > level.pairCapacityKg)
          levels.push(`${bay.id} ${level.level}`);
      }
      return (
        standingOnBay(index, bay, AS_IS).kg ?? beams.reduce((sum, level) => sum + oracle.knownKg(level), 0)
      );
    });
    for (const [at, bay] of run.bays.entries()) {
      if (bay.maxBayLoadKg !== null && bayKg[at]! > bay.maxBayLoadKg) bays.push(bay.id);
    }
    for (const [at, frame] of run.frames.entries()) {
      const on = frameLoad(index, run, at, AS_IS);
      const kg = on.standing.kg ?? (bayKg[at - 1] ?? 0) + (bayKg[at] ?? 0);
      if (on.rating !== null && kg / 2 > on.rating.capacityKg) frames.push(frame.id);
    }
  }
  expect(subjectsOf(audit, 'beam-level-overload')).toEqual(levels.sort());
  expect(subjectsOf(audit, 'bay-overload')).toEqual(bays.sort());
  expect(subjectsOf(audit, 'frame-overload')).toEqual(frames.sort());
}

function expectTakers(audit: Audit, oracle: Oracle): void {
  const lists: Record<'stranded-for-fleet' | 'stranded' | 'one-truck', string[]> = {
    'stranded-for-fleet': [],
    stranded: [],
    'one-truck': [],
  };
  const counts = { none: 0, one: 0, more: 0, unweighed: 0 };
  for (const one of oracle.stored) {
    const name = `${one.place.id} ${one.load.id}`;
    const byFleet = oracle.takers(one, null);
    const byFit = oracle.takers(one, oracle.asOf);
    if (byFleet?.length === 0) lists['stranded-for-fleet'].push(name);
    else if (byFit?.length === 0) lists.stranded.push(name);
    if (byFit?.length === 1) lists['one-truck'].push(name);
    if (byFit === null) counts.unweighed += 1;
    else counts[byFit.length === 0 ? 'none' : byFit.length === 1 ? 'one' : 'more'] += 1;
  }
  for (const [kind, list] of Object.entries(lists)) {
    expect(subjectsOf(audit, kind as FindingKind)).toEqual(list.sort());
  }
  expect(audit.counts.takeDown).toEqual(counts);
  for (const { kind, truck, subject } of audit.findings) {
    if (kind !== 'one-truck' || subject.of !== 'stored-load') continue;
    const one = oracle.stored.find(({ place }) => place.id === subject.location)!;
    expect(oracle.takers(one, oracle.asOf)).toEqual([truck]);
  }
}

function expectReach(audit: Audit, oracle: Oracle): void {
  const empty: Context = { ...TAKE_DOWN, operation: 'place', stock: 'empty' };
  const places = [...oracle.index.places.values()];
  const fits = (load: Load, place: Place) =>
    oracle.index.site.trucks.some((truck) =>
      isGood(checkLift(oracle.index, { load, place, truck, context: empty })),
    );
  const reference = referenceLoad(DEFAULT_REFERENCE);
  const beyond = places.filter((place) => !fits(reference, place)).map(({ id }) => id);
  expect(subjectsOf(audit, 'out-of-reach')).toEqual(beyond.sort());
  const unplaceable = oracle.index.site.loads.filter(
    (load) => places.length > 0 && oracle.mass(load) !== null && !places.some((place) => fits(load, place)),
  );
  expect(subjectsOf(audit, 'unplaceable')).toEqual(unplaceable.map(({ id }) => id).sort());
}

function expectThinDeclared(audit: Audit, oracle: Oracle): void {
  const thin = new Set<string>();
  for (const one of oracle.stored) {
    const { load, place } = one;
    if (grossMass(load, palletOf(oracle.index, load))?.basis !== 'declared') continue;
    const inPlace = (['unit-load', 'beam-level', 'bay-load', 'frame-load'] as const).some(
      (rule) => oracle.stepsBackInPlace(one, rule).outcome === 'thin',
    );
    const verdicts = oracle.answers(load, place, TAKE_DOWN).map(({ verdict }) => verdict);
    if (inPlace || (verdicts.includes('thin') && !verdicts.includes('clear'))) thin.add(load.id);
  }
  expect(subjectsOf(audit, 'declared-thin')).toEqual([...thin].sort());
}

/** What holds of every audit: ids told apart, counts that add up, numbers that are numbers, what could be sorted sorted. */
function expectWhole({ counts, findings }: Audit): void {
  expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length);
  expect(Object.values(counts.kinds).reduce((sum, count) => sum + count, 0)).toBe(findings.length);
  for (const { figures, kind } of findings) {
    for (const value of [figures.need, figures.have, figures.excess]) {
      expect(value === null || Number.isFinite(value)).toBe(true);
    }
    expect(FINDING_KINDS).toContain(kind);
  }
}
