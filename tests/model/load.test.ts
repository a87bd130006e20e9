import { describe, expect, it } from 'vitest';
import {
  assessedMassKg,
  centreHeightMm,
  grossMass,
  type Load,
  loadCentreMm,
  loadSchema,
} from '../../lib/model/load.ts';
import { policyInForce } from '../../lib/model/policy.ts';

const pallet = { id: 'P', depthMm: 1200, widthMm: 1000, tareKg: 60, entryHeightMm: 95 };

function load(facts: Partial<Load>): Load {
  return loadSchema.parse({
    id: 'L',
    name: 'Load',
    massBasis: 'weighed',
    depthMm: 1200,
    widthMm: 1000,
    heightMm: 1000,
    ...facts,
  });
}

describe('the mass of a load', () => {
  it('is what was stated, with its own basis, whatever its items add up to', () => {
    const items = [{ name: 'drum', massKg: 250, count: 4 }];
    expect(grossMass(load({ grossKg: 900, massBasis: 'declared', items }), pallet)).toEqual({
      kg: 900,
      basis: 'declared',
    });
  });

  it('is items and pallet together where it was not stated, and then counts as calculated', () => {
    // Common practice: four 250 kg drums on a 60 kg hardwood pallet make 1060 kg.
    const drums = load({ massBasis: 'declared', items: [{ name: 'drum', massKg: 250, count: 4 }] });
    expect(grossMass(drums, pallet)).toEqual({ kg: 1060, basis: 'calculated' });
    expect(grossMass(drums, null)).toEqual({ kg: 1000, basis: 'calculated' });
  });

  it('is unknown, never guessed, without either', () => {
    expect(grossMass(load({}), pallet)).toBeNull();
    expect(assessedMassKg(load({}), pallet, policyInForce({}))).toBeNull();
  });

  it.each([
    { massBasis: 'weighed', kg: 1000, policy: {}, assessed: 1000, why: 'a weighed mass carries nothing' },
    {
      massBasis: 'declared',
      kg: 1000,
      policy: {},
      assessed: 1100,
      why: 'a declared one 10 %, and exactly that',
    },
    {
      massBasis: 'declared',
      kg: 700, // 700 x 1.1 in binary is 770.0000000000001
      policy: {},
      assessed: 770,
      why: 'to the last bit',
    },
    {
      massBasis: 'declared',
      kg: 1000,
      policy: { massAllowancePercent: { declared: 7 } },
      assessed: 1070,
      why: 'or what the site says',
    },
    {
      massBasis: 'weighed',
      kg: 1000,
      policy: { massAllowancePercent: { declared: 7 } },
      assessed: 1000,
      why: 'for that basis alone',
    },
  ] as const)('is assessed: $why', ({ massBasis, kg, policy, assessed }) => {
    expect(assessedMassKg(load({ grossKg: kg, massBasis }), pallet, policyInForce(policy))).toBe(assessed);
  });

  it('is not raised by one bit where there is no allowance: every whole pound, kept in kg to eight decimals', () => {
    const policy = policyInForce({});
    for (let pounds = 1; pounds <= 10_000; pounds++) {
      const kg = Number((pounds * 0.45359237).toFixed(8));
      expect(assessedMassKg(load({ grossKg: kg }), pallet, policy)).toBe(kg);
    }
  });
});

describe('the centre of a load', () => {
  it('is at half its depth and half its height where nothing else is stated', () => {
    expect(loadCentreMm(load({ depthMm: 1200 }))).toBe(600); // uniform load, common practice
    expect(centreHeightMm(load({ heightMm: 1000 }))).toBe(500);
  });

  it('is where it is stated to be', () => {
    expect(loadCentreMm(load({ centreFromHeelMm: 700 }))).toBe(700);
    expect(centreHeightMm(load({ centreHeightMm: 300 }))).toBe(300);
  });
});
