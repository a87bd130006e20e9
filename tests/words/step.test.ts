import { describe, expect, it } from 'vitest';
import type { Cause, Outcome } from '../../lib/check/step.ts';
import { MASS_RULES, RULE_IDS, type RuleId } from '../../lib/model/rule-ids.ts';
import { THIN_SPACE } from '../../lib/units/format-quantity.ts';
import { answerSentence, mostSentence } from '../../lib/words/answer.ts';
import { originSentence } from '../../lib/words/origin.ts';
import { ruleQuestion, ruleTitle } from '../../lib/words/rule.ts';
import { stepSentence } from '../../lib/words/step.ts';
import { verdictMeaning } from '../../lib/words/verdict.ts';
import { stepOf } from '../check/judge.ts';
import { makeBay, makeLoad, makeRun, makeTruck } from '../site-builder.ts';
import { everyAnswer, everyStep } from './every-step.ts';

const UNITS = ['metric', 'lb-in'] as const;
const BAD = /undefined|NaN|null|\[object|Infinity|Kg\b|Mm\b|: \.|; \.|\.\.| {2}/;

const UNKNOWABLE: RuleId[] = [
  'operator-authorised',
  'slot-free',
  'depth-reach',
  'lift-height',
  'centre-height',
  'opening-height',
  'opening-width',
  'pallet-support',
  'rack-condition',
];
const ALWAYS_ASKED: RuleId[] = [
  'depth-reach',
  'lift-height',
  'aisle-turn',
  'plate-capacity',
  'fork-length',
  'fork-arms',
  'rack-condition',
];

function reachable(rule: RuleId): Outcome[] {
  const outcomes: Outcome[] = ['pass', 'fail'];
  if (MASS_RULES.some((mass) => mass === rule)) outcomes.push('thin');
  if (!UNKNOWABLE.includes(rule)) outcomes.push('unknown');
  if (!ALWAYS_ASKED.includes(rule)) outcomes.push('not-applicable');
  return outcomes.sort();
}

const CAUSES: Record<Cause, true> = {
  'no-time-given': true,
  'no-operator-given': true,
  'racks-taken-as-empty': true,
  'taking-down': true,
  'floor-level': true,
  'top-level': true,
  'not-the-top-level': true,
  decked: true,
  'nothing-overhead': true,
  'notice-states-none': true,
  'no-tilt-ratings': true,
  'mast-kept-vertical': true,
  'plate-states-none': true,
  held: true,
  'check-failed': true,
  'not-authorised': true,
  'authorisation-expired': true,
  occupied: true,
  amber: true,
  red: true,
  'never-checked': true,
  'check-too-old': true,
  'no-rating': true,
  'height-beyond-plate': true,
  'load-centre-beyond-plate': true,
  'mass-unknown': true,
  'stock-mass-unknown': true,
  'no-turning-data': true,
  'load-inside-wheels': true,
  'fork-length-unknown': true,
  'fork-arm-rating-unknown': true,
  'mast-height-unknown': true,
  'overhead-not-surveyed': true,
  'sprinkler-not-surveyed': true,
  'pair-capacity-unknown': true,
  'gap-beyond-frame-ratings': true,
  'red-take-down-only': true,
  'front-occupied': true,
};

describe('the sentences of the steps', () => {
  const steps = everyStep();

  it.each(RULE_IDS.map((rule) => ({ rule, outcomes: reachable(rule) })))(
    '$rule is brought to $outcomes here, no more and no less',
    ({ rule, outcomes }) => {
      const met = new Set(steps.filter((step) => step.rule === rule).map(({ outcome }) => outcome));
      expect([...met].sort()).toEqual(outcomes);
    },
  );

  it('meet every cause', () => {
    const met = new Set(steps.flatMap(({ cause }) => (cause === undefined ? [] : [cause])));
    expect([...met].sort()).toEqual(Object.keys(CAUSES).sort());
  });

  it('are whole sentences in both systems of units, without a hole or a field name', () => {
    for (const step of steps) {
      for (const units of UNITS) {
        const sentence = stepSentence(step, units);
        expect(sentence, `${step.rule} ${step.outcome}`).not.toMatch(BAD);
        expect(sentence, `${step.rule} ${step.outcome}`).toMatch(/^[A-Z0-9].{8,}\.$/u);
      }
    }
  });

  it('say where each number came from, without a hole', () => {
    for (const { needFrom, haveFrom } of steps) {
      for (const origin of [...needFrom, ...haveFrom]) {
        for (const units of UNITS) expect(originSentence(origin, units)).not.toMatch(BAD);
      }
    }
  });

  it('name the origins of every number they compare', () => {
    for (const step of steps) {
      if (typeof step.need === 'number') expect(step.needFrom.length, step.rule).toBeGreaterThan(0);
      if (typeof step.have === 'number') expect(step.haveFrom.length, step.rule).toBeGreaterThan(0);
    }
  });

  it('head every answer with its verdict and the step that decided', () => {
    for (const answer of everyAnswer()) {
      for (const units of UNITS) {
        expect(answerSentence(answer, units)).toMatch(/^(Clear|Thin|Unproven|Refuse)\. /);
        expect(mostSentence(answer.mostKg, units)).not.toMatch(BAD);
      }
    }
  });
});

describe('a sentence', () => {
  const said = (...ask: Parameters<typeof stepOf>) =>
    stepSentence(stepOf(...ask), 'metric').replaceAll(THIN_SPACE, ' ');

  it('about a truck that is not known to be fit says why, once', () => {
    const asked = { context: { asOf: '2026-03-02T06:30:00Z' } };
    expect(said('truck-fit', { ...asked, site: { checks: [] } })).toBe(
      'Not known: no check on record at or before this time.',
    );
  });

  it('holds the height of the centre of gravity against the plate by what each is measured from', () => {
    const truck = makeTruck();
    const plate = { ...truck.plate, verticalLoadCentreMm: 500 };
    const load = makeLoad({ centreHeightMm: 600 });
    expect(said('centre-height', { truck: { ...truck, plate }, load })).toBe(
      'Centre of gravity 600 mm above the underside of the load; the plate allows 500 mm above the forks: 100 mm too much.',
    );
  });

  it('does not call a lift that fails by less than a figure can show "0 kg too much"', () => {
    expect(said('unit-load', { load: makeLoad({ grossKg: 1200 + 1e-8 }) })).toMatch(
      /the notice allows 1 200 kg: too much, by less than can be shown\.$/,
    );
    expect(said('unit-load', { load: makeLoad({ grossKg: 1200.1 }) })).toMatch(/: 0\.1 kg too much\.$/);
  });

  it('shows the line of a plate in inches no higher and no further out than it stands', () => {
    const step = stepOf('plate-capacity', { load: makeLoad({ grossKg: 2400 }) }); // 3000 mm: 118.11 in, 600 mm: 23.62 in
    expect(stepSentence(step, 'lb-in').replaceAll(THIN_SPACE, ' ')).toContain(
      'at 118.1 in, 23.6 in load centre',
    );
    expect(step.haveFrom.some(({ value }) => value === 3000)).toBe(true);
  });

  it('does not call a lift clear because every rule is met: some may be unknown and need not be known', () => {
    for (const verdict of ['clear', 'thin'] as const) {
      expect(verdictMeaning(verdict)).toMatch(/^No rule is broken/);
      expect(verdictMeaning(verdict)).not.toMatch(/every rule|all rules/i);
    }
  });

  it('states mass, plate line and what is missing', () => {
    expect(said('plate-capacity', { load: makeLoad({ grossKg: 2400 }) })).toBe(
      '2 400 kg assessed; plate proves 1 600 kg at 3 000 mm, 600 mm load centre: 800 kg too much.',
    );
  });

  it('counts pallets in the singular, the plural and none', () => {
    const stock = ['a1-1-2', 'a1-2-1', 'a1-2-2'].map((location) => ({ location, load: 'crates' }));
    expect(said('bay-load', { site: { stock: stock.slice(0, 1) } })).toContain('with 1 other pallet;');
    expect(said('bay-load', { site: { stock } })).toContain('with 3 other pallets;');
    expect(said('bay-load')).toContain('with no other pallets;');
  });

  it('stays true where rounded pounds would cross', () => {
    const step = stepOf('unit-load', { load: makeLoad({ grossKg: 1200 }) });
    expect(stepSentence(step, 'lb-in').replaceAll(THIN_SPACE, ' ')).toBe(
      '2 646 lb assessed; the notice allows 2 645 lb: nothing to spare.',
    );
  });

  it('says what is known beside what is not', () => {
    expect(said('unit-load', { load: makeLoad({ grossKg: null }) })).toBe(
      "Not known: the notice allows 1 200 kg; the load's mass is not known.",
    );
  });

  it('shows an opening of less than nothing as it is', () => {
    const levels = [0, 1].map((level) => ({ ...makeBay('a1').levels[level]!, beamHeightMm: level * 1600 }));
    const site = { runs: [makeRun({ bays: [makeBay('a1', { levels }), makeBay('a2')] })] };
    expect(said('opening-height', { site, at: 'a1-0-1' })).toBe(
      'The load with its clearance is 1 150 mm high; the opening is -100 mm high: 1 250 mm too much.',
    );
  });

  it('tells who is held and why', () => {
    const truck = makeTruck({ hold: { since: '2026-03-01T06:30:00Z', reason: 'mast chain' } });
    expect(said('truck-fit', { truck, context: { asOf: '2026-03-02' } })).toBe(
      'On hold since 2026-03-01 06:30 UTC: mast chain.',
    );
  });
});

describe('a rule', () => {
  it('has a title and a question of its own', () => {
    expect(new Set(RULE_IDS.map(ruleTitle)).size).toBe(RULE_IDS.length);
    for (const rule of RULE_IDS) expect(ruleQuestion(rule)).toMatch(/^[A-Z].+\?$/);
  });
});
