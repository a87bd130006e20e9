import { shownNumber } from '@/lib/entry/measure.ts';
import type { ClearanceClass, Policy } from '@/lib/model/policy.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { speedUnit } from '@/lib/units/speed.ts';
import { ruleTitle } from '@/lib/words/rule.ts';

export type PolicyFact<Key extends keyof Policy> = {
  label: string;
  /** Where the default comes from. */
  source: string;
  show: (value: Policy[Key], units: DisplayUnits) => string;
};

const length = (mm: number, units: DisplayUnits) => formatLength(mm, units, 'up');
const percent = (value: number) => `${value} %`;
const speed = (mps: number, units: DisplayUnits) => `${shownNumber(mps, 'speed', units)} ${speedUnit(units)}`;
const COMMON = 'common practice';

export const CLEARANCE_WORDS: Record<ClearanceClass, string> = {
  '400': '400',
  '300A': '300A',
  '300B': '300B',
  AS4084: 'AS 4084',
};

export const TILT_WORDS: Record<Policy['tilt'], string> = {
  'as-rated': 'as the plate rates it',
  'mast-kept-vertical': 'mast kept vertical',
};

/** Units of the plain numbers, as their fields name them. */
export const POLICY_UNITS: { readonly [Key in keyof Policy]?: string } = {
  thinPercent: '%',
  massAllowancePercent: '%',
  checkValidHours: 'hours',
  forkSupportFraction: "of the load's depth",
  handlingS: 's',
  weightHeight: 's per kg and m',
  fitTrucks: 'trucks',
};

/** Each policy value's name for a reader and the source of its default. */
export const POLICY_FACTS: { readonly [Key in keyof Policy]: PolicyFact<Key> } = {
  placingClearanceMm: {
    label: 'Lift above the beam to place',
    source: 'planning value, common practice',
    show: length,
  },
  clearanceClass: {
    label: 'Clearance class',
    source: 'EN 15620:2008',
    show: (value) => CLEARANCE_WORDS[value],
  },
  aisleClearanceMm: { label: 'Aisle clearance', source: 'VDI 2198', show: length },
  tilt: {
    label: 'Forward tilt',
    source: COMMON,
    show: (value) => TILT_WORDS[value],
  },
  thinPercent: { label: 'Thin: within this of a mass limit', source: COMMON, show: percent },
  massAllowancePercent: {
    label: 'Allowance on the mass',
    source: COMMON,
    show: ({ weighed, calculated, declared }) =>
      `weighed ${weighed} %, calculated ${calculated} %, declared ${declared} %`,
  },
  checkValidHours: { label: 'A walk-round counts for', source: COMMON, show: (value) => `${value} h` },
  sprinklerClearanceMm: {
    label: 'Clearance under sprinklers',
    source: 'NFPA 13: 36 in for ESFR and large-drop sprinklers',
    show: length,
  },
  overheadMarginMm: { label: 'Margin under the roof', source: COMMON, show: length },
  forkSupportFraction: {
    label: 'Forks support at least',
    source: 'AS 2359.2:2013 cl. 3.7(e)',
    show: (value) => `${value} of the load's depth`,
  },
  mustKnow: {
    label: 'Unproven when not known',
    source: COMMON,
    show: (rules) => rules.map(ruleTitle).join(', '),
  },
  travelMps: { label: 'Travel, for plans', source: COMMON, show: speed },
  liftMps: { label: 'Lifting, for plans', source: COMMON, show: speed },
  handlingS: { label: 'Handling, for plans', source: COMMON, show: (value) => `${value} s` },
  weightHeight: {
    label: 'Weight of heavy-low, for plans',
    source: COMMON,
    show: (value) => `${value} s per kg and m`,
  },
  fitTrucks: { label: 'Fit trucks wanted for a place', source: COMMON, show: (value) => String(value) },
};

/** One value in words. */
export function policyValueWords<Key extends keyof Policy>(
  key: Key,
  policy: Policy,
  units: DisplayUnits,
): string {
  const fact: PolicyFact<Key> = POLICY_FACTS[key];
  return fact.show(policy[key], units);
}

/** "Thin: within this of a mass limit: 10 % becomes 15 %"; of a list of rules what comes and what goes. */
export function showPolicyValue(
  key: keyof Policy,
  before: Policy,
  after: Policy,
  units: DisplayUnits,
): string {
  const { label } = POLICY_FACTS[key];
  if (key !== 'mustKnow')
    return `${label}: ${policyValueWords(key, before, units)} becomes ${policyValueWords(key, after, units)}`;
  const comes = after.mustKnow.filter((rule) => !before.mustKnow.includes(rule)).map(ruleTitle);
  const goes = before.mustKnow.filter((rule) => !after.mustKnow.includes(rule)).map(ruleTitle);
  return `${label}: ${[...comes.map((rule) => `also ${rule}`), ...goes.map((rule) => `no longer ${rule}`)].join(', ')}`;
}
