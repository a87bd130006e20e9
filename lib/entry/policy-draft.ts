import {
  DEFAULT_POLICY,
  MASS_BASES,
  type Policy,
  policyInForce,
  type SitePolicy,
  sitePolicySchema,
} from '../model/policy.ts';
import { RULE_IDS } from '../model/rule-ids.ts';
import { schemaRefusals } from '../model/schema-refusals.ts';
import type { FieldFault, FieldFaults } from './field-fault.ts';
import { keptMeasure, type Measure, type MeasureKind } from './measure.ts';

type MeasuredKey = { [K in keyof Policy]: Policy[K] extends number ? K : never }[keyof Policy];
export type PolicyField = MeasuredKey | `massAllowancePercent.${(typeof MASS_BASES)[number]}`;

/** How each measured value is typed; a plain number has the unit that its label says. */
export const POLICY_MEASURES: Record<PolicyField, MeasureKind> = {
  placingClearanceMm: 'length',
  aisleClearanceMm: 'length',
  thinPercent: 'number',
  'massAllowancePercent.weighed': 'number',
  'massAllowancePercent.calculated': 'number',
  'massAllowancePercent.declared': 'number',
  checkValidHours: 'number',
  sprinklerClearanceMm: 'length',
  overheadMarginMm: 'length',
  forkSupportFraction: 'number',
  travelMps: 'speed',
  liftMps: 'speed',
  handlingS: 'number',
  weightHeight: 'number',
  fitTrucks: 'number',
};
export const POLICY_FIELDS = Object.keys(POLICY_MEASURES) as PolicyField[];

/** The policy as it stands in a form. */
export type PolicyDraft = { measures: Record<PolicyField, Measure> } & Pick<
  Policy,
  'clearanceClass' | 'tilt' | 'mustKnow'
>;

/** Values by key that are to be set; null: back to the default. */
export type PolicyChange = { [Key in keyof Policy]?: SitePolicy[Key] | null };

export function openPolicy(own: SitePolicy): PolicyDraft {
  const { clearanceClass, tilt, mustKnow, ...rest } = policyInForce(own);
  const values = POLICY_FIELDS.map((field) => [field, keptMeasure(fieldValue(rest, field))] as const);
  return { measures: Object.fromEntries(values) as PolicyDraft['measures'], clearanceClass, tilt, mustKnow };
}

/** The value of a field in a policy. */
export function fieldValue(
  policy: Pick<Policy, MeasuredKey | 'massAllowancePercent'>,
  field: PolicyField,
): number {
  const basis = MASS_BASES.find((known) => field === `massAllowancePercent.${known}`);
  return basis === undefined ? policy[field as MeasuredKey] : policy.massAllowancePercent[basis];
}

/**
 * What does a form change of a site's own policy, or what is wrong with it?
 *
 * A blank field means the default. A value that is in force already changes nothing, so that nobody is written down for
 * a value that somebody else set; one that equals the default goes back to it.
 */
export function judgePolicy(
  own: SitePolicy,
  draft: PolicyDraft,
): { change: PolicyChange; policy: SitePolicy | null; faults: FieldFaults } {
  const faults = new Map<string, FieldFault>();
  const typed = (field: PolicyField): number => {
    const { value, typed: text } = draft.measures[field];
    if (value === 'unread')
      faults.set(field, { is: 'unread', of: POLICY_MEASURES[field], text: text?.text ?? '' });
    return typeof value === 'number' ? value : fieldValue(DEFAULT_POLICY, field);
  };
  const measured = Object.fromEntries(
    POLICY_FIELDS.filter((field) => !field.includes('.')).map((field) => [field, typed(field)]),
  ) as Pick<Policy, MeasuredKey>;
  const allowance = Object.fromEntries(
    MASS_BASES.map((basis) => [basis, typed(`massAllowancePercent.${basis}`)]),
  ) as Policy['massAllowancePercent'];
  const wanted: Policy = {
    ...measured,
    massAllowancePercent: allowance,
    clearanceClass: draft.clearanceClass,
    tilt: draft.tilt,
    mustKnow: RULE_IDS.filter((rule) => draft.mustKnow.includes(rule)),
  };
  const change = changeOf(policyInForce(own), wanted);
  const policy = changedPolicy(own, change);
  const read = sitePolicySchema.safeParse(policy);
  if (!read.success)
    for (const refusal of schemaRefusals(policy, read.error.issues, () => [])) {
      const field = refusal.path.replace(/^\$\./, '').replace(/\[.*$/, '');
      if (!faults.has(field)) faults.set(field, { is: 'refused', refusal });
    }
  return { change, policy: faults.size === 0 ? policy : null, faults };
}

function changeOf(inForce: Policy, wanted: Policy): PolicyChange {
  const changed = (Object.keys(wanted) as (keyof Policy)[]).filter(
    (key) => !isSame(key, inForce[key], wanted[key]),
  );
  return Object.fromEntries(
    changed.map((key) => [key, isSame(key, wanted[key], DEFAULT_POLICY[key]) ? null : wanted[key]]),
  );
}

/** A list of rules says the same in any order. */
function isSame(key: keyof Policy, one: unknown, other: unknown): boolean {
  const plain = (value: unknown) =>
    JSON.stringify(key === 'mustKnow' ? (value as string[]).toSorted() : value);
  return plain(one) === plain(other);
}

/** A site's own policy with a change put in. */
export function changedPolicy(own: SitePolicy, change: PolicyChange): SitePolicy {
  const merged = Object.entries({ ...own, ...change }).filter(
    ([, value]) => value !== null && value !== undefined,
  );
  return Object.fromEntries(merged);
}
