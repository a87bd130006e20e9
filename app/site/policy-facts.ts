import type { Policy } from '@/lib/model/policy.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';

export type PolicyFact<Key extends keyof Policy> = {
  label: string;
  /** Where the default comes from. */
  source: string;
  show: (value: Policy[Key], units: DisplayUnits) => string;
};

const length = (mm: number, units: DisplayUnits) => formatLength(mm, units, 'up');
const percent = (value: number) => `${value} %`;
const COMMON = 'common practice';

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
    show: (value) => (value === 'AS4084' ? 'AS 4084' : value),
  },
  aisleClearanceMm: { label: 'Aisle clearance', source: 'VDI 2198', show: length },
  tilt: {
    label: 'Forward tilt',
    source: COMMON,
    show: (value) => (value === 'as-rated' ? 'as the plate rates it' : 'mast kept vertical'),
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
  mustKnow: { label: 'Unproven when not known', source: COMMON, show: (rules) => rules.join(', ') },
  travelMps: { label: 'Travel, for plans', source: COMMON, show: (value) => `${value} m/s` },
  liftMps: { label: 'Lifting, for plans', source: COMMON, show: (value) => `${value} m/s` },
  handlingS: { label: 'Handling, for plans', source: COMMON, show: (value) => `${value} s` },
  weightHeight: {
    label: 'Weight of heavy-low, for plans',
    source: COMMON,
    show: (value) => `${value} s per kg and m`,
  },
  fitTrucks: { label: 'Fit trucks wanted for a place', source: COMMON, show: (value) => String(value) },
};
