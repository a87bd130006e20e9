import { describe, expect, it } from 'vitest';
import { typedMeasure } from '../../lib/entry/measure.ts';
import {
  changedPolicy,
  judgePolicy,
  openPolicy,
  POLICY_FIELDS,
  POLICY_MEASURES,
  type PolicyField,
} from '../../lib/entry/policy-draft.ts';
import { DEFAULT_POLICY, policyInForce, type SitePolicy } from '../../lib/model/policy.ts';
import { ALWAYS_MUST_KNOW } from '../../lib/model/rule-ids.ts';
import type { DisplayUnits } from '../../lib/units/format-quantity.ts';
import { fieldFaultSentence } from '../../lib/words/entry.ts';

const OWN: SitePolicy = { thinPercent: 15, massAllowancePercent: { declared: 20 } };

/** What a form comes to after this was typed into one of its fields. */
function typed(field: PolicyField, text: string, own: SitePolicy = OWN, units: DisplayUnits = 'metric') {
  const draft = openPolicy(own);
  const measure = typedMeasure(draft.measures[field], text, POLICY_MEASURES[field], units);
  return judgePolicy(own, { ...draft, measures: { ...draft.measures, [field]: measure } });
}

describe('a policy in a form', () => {
  it('changes nothing while nothing is typed, in either units', () => {
    expect(judgePolicy(OWN, openPolicy(OWN))).toEqual({ change: {}, policy: OWN, faults: new Map() });
  });

  it('has a field for every measured value of the policy', () => {
    const {
      clearanceClass: _,
      tilt: __,
      mustKnow: ___,
      massAllowancePercent: ____,
      ...measured
    } = DEFAULT_POLICY;
    const plain = POLICY_FIELDS.filter((field) => !field.includes('.'));
    expect(plain.toSorted()).toEqual(Object.keys(measured).toSorted());
  });

  it.each([
    { text: '12', change: { thinPercent: 12 }, why: 'another value' },
    { text: '15', change: {}, why: 'the value in force' },
    { text: '10', change: { thinPercent: null }, why: 'the default, which is then no longer the own value' },
    { text: '', change: { thinPercent: null }, why: 'blank means the default' },
    { text: '0', change: { thinPercent: 0 }, why: 'the least there may be' },
    { text: '100', change: { thinPercent: 100 }, why: 'the most there may be' },
  ])('thin of "$text" changes $change: $why', ({ text, change }) => {
    const judged = typed('thinPercent', text);
    expect(judged.change).toEqual(change);
    expect(judged.faults.size).toBe(0);
    expect(policyInForce(judged.policy!).thinPercent).toBe(text === '' ? 10 : Number(text));
  });

  it.each([
    { field: 'thinPercent' as const, text: '101', says: '101 came, a number of at most 100 was expected.' },
    {
      field: 'thinPercent' as const,
      text: 'ten',
      says: 'Not read: "ten". Write a number such as 12 or 12.5.',
    },
    { field: 'checkValidHours' as const, text: '0', says: '0 came, a number above 0 was expected.' },
    {
      field: 'forkSupportFraction' as const,
      text: '1.01',
      says: '1.01 came, a number of at most 1 was expected.',
    },
    { field: 'fitTrucks' as const, text: '1.5', says: '1.5 came, a whole number was expected.' },
    {
      field: 'massAllowancePercent.declared' as const,
      text: '100.5',
      says: '100.5 came, a number of at most 100 was expected.',
    },
    { field: 'placingClearanceMm' as const, text: '1,5', says: /^Not read: the comma/ },
  ])('$field of "$text" is refused at its field', ({ field, text, says }) => {
    const { faults, policy } = typed(field, text);
    expect(policy).toBeNull();
    expect([...faults.keys()]).toEqual([field]);
    expect(fieldFaultSentence(faults.get(field)!)).toEqual(
      says instanceof RegExp ? expect.stringMatching(says) : says,
    );
  });

  it('reads lengths in the shown units and in their own', () => {
    // 36 in x 25.4 = 914.4 mm, exact by the definition of the inch
    expect(typed('sprinklerClearanceMm', '36', {}, 'lb-in').change).toEqual({ sprinklerClearanceMm: 914.4 });
    expect(typed('sprinklerClearanceMm', '36 in').change).toEqual({ sprinklerClearanceMm: 914.4 });
    expect(typed('sprinklerClearanceMm', '0.457 m').change).toEqual({ sprinklerClearanceMm: 457 });
  });

  it('keeps the other allowances when one is changed', () => {
    expect(typed('massAllowancePercent.weighed', '2').change).toEqual({
      massAllowancePercent: { weighed: 2, calculated: 0, declared: 20 },
    });
  });

  it('may add rules that must be known and drop others, in whatever order', () => {
    const draft = openPolicy({});
    const some = [...ALWAYS_MUST_KNOW, 'fork-arms' as const].reverse();
    const { change, faults } = judgePolicy({}, { ...draft, mustKnow: some });
    expect(faults.size).toBe(0);
    expect(change.mustKnow?.toSorted()).toEqual(some.toSorted());
    expect(judgePolicy({}, { ...draft, mustKnow: draft.mustKnow.toReversed() }).change).toEqual({});
  });

  it.each(ALWAYS_MUST_KNOW)('may not drop %s', (rule) => {
    const draft = openPolicy({});
    const { policy, faults } = judgePolicy(
      {},
      { ...draft, mustKnow: draft.mustKnow.filter((one) => one !== rule) },
    );
    expect(policy).toBeNull();
    expect(fieldFaultSentence(faults.get('mustKnow')!)).toContain('no policy may wave through');
  });

  it('is put together with what the site has set, null going back to the default', () => {
    expect(changedPolicy(OWN, { thinPercent: null, tilt: 'mast-kept-vertical' })).toEqual({
      massAllowancePercent: { declared: 20 },
      tilt: 'mast-kept-vertical',
    });
  });
});
