import { describe, expect, it } from 'vitest';
import type { Outcome, Step } from '../../lib/check/step.ts';
import { decideVerdict } from '../../lib/check/verdict.ts';
import { DEFAULT_POLICY } from '../../lib/model/policy.ts';
import { RULE_IDS, type RuleId } from '../../lib/model/rule-ids.ts';
import { makeCounterbalance, makeLoad, makeTruck } from '../site-builder.ts';
import { answerTo } from './judge.ts';

function step(rule: RuleId, outcome: Outcome, need: Step['need'] = null, have: Step['have'] = null): Step {
  return { rule, outcome, need, have, unit: 'kg', needFrom: [], haveFrom: [] };
}
const mustKnow = DEFAULT_POLICY.mustKnow;
const decide = (...steps: Step[]) => decideVerdict(steps, mustKnow);

describe('the verdict', () => {
  it('refuses on any fail, whatever else is unknown or thin', () => {
    expect(
      decide(
        step('plate-capacity', 'unknown'),
        step('fork-arms', 'thin', 95, 100),
        step('opening-height', 'fail', 11, 10),
      ),
    ).toEqual({ verdict: 'refuse', governing: 'opening-height' });
  });

  it('is unproven when a rule that must be known is not', () => {
    expect(decide(step('plate-capacity', 'unknown'), step('fork-arms', 'thin', 95, 100))).toEqual({
      verdict: 'unproven',
      governing: 'plate-capacity',
    });
  });

  it('does not let an unknown outside mustKnow decide', () => {
    expect(decide(step('fork-length', 'unknown'), step('fork-arms', 'thin', 95, 100))).toEqual({
      verdict: 'thin',
      governing: 'fork-arms',
    });
    expect(decide(step('lift-height', 'pass', 1, 2), step('fork-length', 'unknown')).verdict).toBe('clear');
  });

  it.each([
    { why: 'the highest use', uses: [1.5, 3, 2], governing: 'aisle-turn' },
    { why: 'on a tie the first in the order of the rules', uses: [2, 2, 1.5], governing: 'lift-height' },
  ])('takes among the fails $why', ({ uses, governing }) => {
    const rules = ['lift-height', 'aisle-turn', 'opening-height'] as const;
    const fails = rules.map((rule, at) => step(rule, 'fail', (uses[at] ?? 0) * 10, 10));
    expect(decide(...fails).governing).toBe(governing);
  });

  it('counts a failed yes/no rule and a have of nothing or less as infinite', () => {
    const over = step('lift-height', 'fail', 9000, 1);
    expect(decide(over, step('rack-condition', 'fail', 'sound', 'red')).governing).toBe('rack-condition');
    expect(decide(over, step('opening-height', 'fail', 1000, -120)).governing).toBe('opening-height');
    expect(decide(over, step('opening-height', 'fail', 1000, 0)).governing).toBe('opening-height');
    expect(
      decide(step('opening-height', 'fail', 1000, 0), step('rack-condition', 'fail', 'sound', 'red'))
        .governing,
    ).toBe('opening-height');
  });

  it('counts a passed yes/no rule as nothing and takes the fullest pass of a clear lift', () => {
    expect(
      decide(
        step('truck-fit', 'pass', 'in service', 'in service'),
        step('lift-height', 'pass', 3, 6),
        step('aisle-turn', 'pass', 3, 4),
      ).governing,
    ).toBe('aisle-turn');
  });

  it('takes the first of several unknowns in the order of the rules', () => {
    expect(decide(step('aisle-turn', 'unknown'), step('beam-level', 'unknown')).governing).toBe('aisle-turn');
  });
});

describe('a lift', () => {
  it('runs every rule once, in order, and finds sound facts clear', () => {
    for (const truck of [makeTruck(), makeCounterbalance()]) {
      const answer = answerTo({ truck });
      expect(answer.steps.map(({ rule }) => rule)).toEqual(RULE_IDS);
      expect(answer.verdict).toBe('clear');
    }
  });

  it.each([
    { grossKg: 1080, verdict: 'clear', governing: 'depth-reach' },
    { grossKg: 1081, verdict: 'thin', governing: 'unit-load' },
    { grossKg: 1200, verdict: 'thin', governing: 'unit-load' },
    { grossKg: 1201, verdict: 'refuse', governing: 'unit-load' },
    { grossKg: null, verdict: 'unproven', governing: 'plate-capacity' },
  ])(
    'of $grossKg kg on a level for unit loads of 1200 kg: $verdict by $governing',
    ({ grossKg, ...decided }) => {
      expect(answerTo({ load: makeLoad({ grossKg }) })).toMatchObject(decided);
    },
  );

  it('carries no thin step that is not a mass', () => {
    const answer = answerTo({ truck: makeTruck({ maxLiftMm: 1750 }) }); // lift 1750 of 1750
    expect(answer.steps.find(({ rule }) => rule === 'lift-height')?.outcome).toBe('pass');
    expect(answer.verdict).toBe('clear');
  });

  it('shows no inner figures beside its steps', () => {
    for (const { allowsKg } of answerTo().steps as (Step & { allowsKg?: unknown })[])
      expect(allowsKg).toBeUndefined();
  });

  it.each([
    { context: { operator: 'nobody' }, told: 'no operator nobody in this site' },
    { context: { from: 'nowhere' }, told: 'no location nowhere in this site' },
    { context: { from: '' }, told: 'no location  in this site' },
    { context: { asOf: 'noon' }, told: 'asOf is not an ISO 8601 time: noon' },
  ])('is not judged around what the site does not have: $told', ({ context, told }) => {
    expect(() => answerTo({ context })).toThrow(told);
    expect(() => answerTo({ context: { stock: 'empty', operation: 'retrieve', ...context } })).toThrow(told);
  });
});
