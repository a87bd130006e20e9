import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import type { Cause, Context, LiftAnswer, Step } from '../../lib/check/step.ts';
import { DEMO_AS_OF, demoSite } from '../../lib/demo/demo-site.ts';
import { TROUBLE, type Trouble } from '../../lib/demo/trouble.ts';
import { assessedMassKg } from '../../lib/model/load.ts';
import type { RuleId } from '../../lib/model/rule-ids.ts';
import { indexSite, type Place, palletOf } from '../../lib/model/site-index.ts';
import { frameLoad } from '../../lib/rack/frame-load.ts';
import { standingOnBay, standingOnLevel } from '../../lib/rack/stand.ts';

const site = demoSite();
const index = indexSite(site);
const AS_IS = { stock: 'as-is', from: null } as const;
const asked: Context = { operation: 'retrieve', asOf: DEMO_AS_OF, operator: null, ...AS_IS };

/** What every truck of the fleet is told about a load at a location. */
function answers(location: string, load: string, context: Partial<Context> = {}): LiftAnswer[] {
  const lift = { load: index.loads.get(load)!, place: placeAt(location), context: { ...asked, ...context } };
  return site.trucks.map((truck) => checkLift(index, { ...lift, truck }));
}

function answerOf(truck: string, location: string, load: string, context: Partial<Context> = {}): LiftAnswer {
  return answers(location, load, context).find((answer) => answer.truck === truck)!;
}

function allowed(list: readonly LiftAnswer[]): string[] {
  return list.filter(({ verdict }) => verdict === 'clear' || verdict === 'thin').map(({ truck }) => truck);
}

function step(answer: LiftAnswer, rule: RuleId): Step {
  return answer.steps.find((entry) => entry.rule === rule)!;
}

function placeAt(location: string): Place {
  return index.places.get(location)!;
}

function placeIn(bay: string, level: number): Place {
  return [...index.places.values()].find((place) => place.bay.id === bay && place.level.level === level)!;
}

function bayPlaces(bay: string): Place[] {
  return [...index.places.values()].filter((place) => place.bay.id === bay);
}

function loadAt(location: string): string | undefined {
  return index.stockAt.get(location)?.id;
}

function ofKind<K extends Trouble['kind']>(kind: K): Extract<Trouble, { kind: K }>[] {
  return TROUBLE.filter((trouble): trouble is Extract<Trouble, { kind: K }> => trouble.kind === kind);
}

describe('the trouble of the demo depot is really there', () => {
  it.each(ofKind('overloaded-beam'))(
    'the pair at $bay level $level carries more than its notice says',
    (row) => {
      const place = placeIn(row.bay, row.level);
      expect(standingOnLevel(index, place.level, AS_IS).kg).toBeGreaterThan(place.level.pairCapacityKg!);
      for (const answer of answers(place.id, row.load, { operation: 'place', from: place.id })) {
        expect(step(answer, 'beam-level').outcome).toBe('fail');
        expect(answer.verdict).toBe('refuse');
      }
    },
  );

  it.each(ofKind('overloaded-bay'))('the bay $bay carries more than its notice says', (row) => {
    const { bay } = placeIn(row.bay, 1);
    expect(standingOnBay(index, bay, AS_IS).kg).toBeGreaterThan(bay.maxBayLoadKg!);
    const answer = answerOf('RT-1', placeIn(row.bay, 1).id, row.load, {
      operation: 'place',
      from: placeIn(row.bay, 1).id,
    });
    expect(step(answer, 'bay-load').outcome).toBe('fail');
    expect(step(answer, 'beam-level').outcome).toBe('pass');
  });

  it.each(ofKind('overloaded-frame'))('the frame $frame carries more than its type is rated for', (row) => {
    const { run } = placeIn(row.bays[0], 1);
    const on = frameLoad(
      index,
      run,
      run.frames.findIndex((frame) => frame.id === row.frame),
      AS_IS,
    );
    expect(on.standing.kg! / 2).toBeGreaterThan(on.rating!.capacityKg);
    for (const bay of row.bays) {
      const at = placeIn(bay, 1).id;
      const answer = answerOf('RT-1', at, row.load, { operation: 'place', from: at });
      expect(answer.governing).toBe('frame-load');
      expect(step(answer, 'bay-load').outcome).toBe('pass');
    }
  });

  it.each(ofKind('stranded'))('no truck fit for service can take down what stands at $location', (row) => {
    expect(loadAt(row.location)).toBe(row.load);
    expect(allowed(answers(row.location, row.load))).toEqual([]);
    const ifAllWereFit = allowed(answers(row.location, row.load, { asOf: null }));
    expect(ifAllWereFit.length === 0).toBe(row.evenIfAllWereFit);
  });

  it.each(ofKind('one-truck'))('only $truck can take down what stands at $location', (row) => {
    expect(loadAt(row.location)).toBe(row.load);
    expect(allowed(answers(row.location, row.load))).toEqual([row.truck]);
  });

  it.each(ofKind('too-tall'))('what stands at $location is too tall to be put back there', (row) => {
    expect(loadAt(row.location)).toBe(row.load);
    const answer = answerOf('NA-1', row.location, row.load, { operation: 'place', from: row.location });
    expect(answer.steps.filter((entry) => entry.outcome === 'fail').map((entry) => entry.rule)).toEqual([
      'opening-height',
    ]);
  });

  it.each(ofKind('unknown-mass'))('the mass of what stands at $location is not known', (row) => {
    const load = index.stockAt.get(row.location)!;
    expect(load.id).toBe(row.load);
    expect(assessedMassKg(load, palletOf(index, load), index.policy)).toBeNull();
    const answer = answerOf('RT-1', row.location, row.load);
    expect([answer.verdict, step(answer, 'plate-capacity').cause]).toEqual(['unproven', 'mass-unknown']);
  });

  it.each(ofKind('unplaceable'))(
    'no truck can place $load in any location, empty as the racks may be',
    (row) => {
      expect(site.stock.some((entry) => entry.load === row.load)).toBe(false);
      const context = { operation: 'place', stock: 'empty', asOf: null } as const;
      const able = [...index.places.keys()].filter((location) => {
        return answers(location, row.load, context).some((answer) => answer.verdict !== 'refuse');
      });
      expect(able).toEqual([]);
    },
  );

  it.each(ofKind('damaged-frame'))(
    'the frame $frame is $condition and what it carries is still there',
    (row) => {
      const beside = [...index.places.values()].filter((place) => {
        return place.leftFrame.id === row.frame || place.rightFrame.id === row.frame;
      });
      expect(
        beside.filter((place) => place.level.level > 0 && loadAt(place.id) !== undefined).length,
      ).toBeGreaterThan(0);
      for (const place of beside) expectDamage(place, row.condition);
    },
  );

  it.each(ofKind('damaged-level'))('$bay level $level is $condition and still loaded', (row) => {
    const { level } = placeIn(row.bay, row.level);
    expect(level.locations.filter((location) => loadAt(location) !== undefined).length).toBeGreaterThan(0);
    for (const location of level.locations) expectDamage(placeAt(location), row.condition);
  });

  it.each(ofKind('pair-capacity-missing'))(
    'the notice at $bay level $level gives no pair capacity',
    (row) => {
      const answer = answerOf('RT-1', placeIn(row.bay, row.level).id, 'ODD-01', { operation: 'place' });
      expect(causeOf(answer, 'beam-level')).toBe('pair-capacity-unknown');
      expect(answer.verdict).not.toBe('clear');
    },
  );

  it.each(ofKind('gap-beyond-ratings'))('the frames of $bay have no rating for its first gap', (row) => {
    for (const place of bayPlaces(row.bay).filter((entry) => entry.level.level > 0)) {
      const answer = answerOf('RT-1', place.id, 'ODD-01', { operation: 'place', stock: 'empty' });
      expect(causeOf(answer, 'frame-load')).toBe('gap-beyond-frame-ratings');
    }
  });

  it.each(ofKind('aisle-not-surveyed'))('nobody has surveyed what hangs over aisle $aisle', (row) => {
    const place = [...index.places.values()].find((entry) => entry.run.aisleId === row.aisle)!;
    const answer = answerOf('RT-1', place.id, 'ODD-01');
    expect(causeOf(answer, 'mast-overhead')).toBe('overhead-not-surveyed');
  });

  it.each(ofKind('no-turning-data'))(
    '$truck has no turning data, so no aisle is proven wide enough',
    (row) => {
      expect(causeOf(answerOf(row.truck, 'A1-L-01-1-1', 'STONE-001'), 'aisle-turn')).toBe('no-turning-data');
    },
  );

  it.each(ofKind('plate-short'))('the plate of $truck ends below the height its mast reaches', (row) => {
    const truck = index.trucks.get(row.truck)!;
    expect(Math.max(...truck.plate.ratings.map((rating) => rating.liftHeightMm))).toBeLessThan(
      truck.maxLiftMm,
    );
    const answer = answerOf(row.truck, 'A4-L-08-4-1', 'TILE-001');
    expect(step(answer, 'lift-height').outcome).toBe('pass');
    expect(causeOf(answer, 'plate-capacity')).toBe('height-beyond-plate');
  });

  it.each(ofKind('truck-unfit'))('$truck is not proven fit for service: $why', (row) => {
    const answer = answerOf(row.truck, 'A7-L-01-1-1', 'SMALL-001');
    expect(causeOf(answer, 'truck-fit')).toBe(row.why);
  });
});

function causeOf(answer: LiftAnswer, rule: RuleId): Cause | undefined {
  return step(answer, rule).cause;
}

function expectDamage(place: Place, condition: string): void {
  const placed = answerOf('CB-2', place.id, 'ODD-01', { operation: 'place', stock: 'empty' });
  expect([placed.verdict, causeOf(placed, 'rack-condition')]).toEqual(['refuse', condition]);
}
