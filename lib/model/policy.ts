import { z } from 'zod';
import { amount, size } from './quantities.ts';
import { ALWAYS_MUST_KNOW, RULE_IDS, type RuleId } from './rule-ids.ts';

export const CLEARANCE_CLASSES = ['400', '300A', '300B', 'AS4084'] as const;
export const MASS_BASES = ['weighed', 'calculated', 'declared'] as const;

const percent = z.number().min(0).max(100);
const mustKnow = z
  .array(z.enum(RULE_IDS))
  .refine((rules) => ALWAYS_MUST_KNOW.every((rule) => rules.includes(rule)), {
    error: `a list that keeps ${ALWAYS_MUST_KNOW.join(', ')} (no policy may wave through an unknown plate or notice)`,
  });

/** What a site may decide for itself. Nothing here can raise a plate or a notice. */
export const policySchema = z.strictObject({
  placingClearanceMm: amount,
  clearanceClass: z.enum(CLEARANCE_CLASSES),
  aisleClearanceMm: amount,
  tilt: z.enum(['as-rated', 'mast-kept-vertical']),
  thinPercent: percent,
  massAllowancePercent: z.strictObject({ weighed: percent, calculated: percent, declared: percent }),
  checkValidHours: size,
  sprinklerClearanceMm: amount,
  overheadMarginMm: amount,
  forkSupportFraction: z.number().positive().max(1),
  mustKnow,
  travelMps: size,
  liftMps: size,
  handlingS: amount,
  weightHeight: amount,
  fitTrucks: z.int().min(1).max(1000),
});

export type Policy = z.infer<typeof policySchema>;
export type MassBasis = (typeof MASS_BASES)[number];
export type ClearanceClass = (typeof CLEARANCE_CLASSES)[number];

/** The part of the policy that a site sets itself; what is left out is the default. */
export const sitePolicySchema = policySchema
  .extend({ massAllowancePercent: policySchema.shape.massAllowancePercent.partial() })
  .partial();

export type SitePolicy = z.infer<typeof sitePolicySchema>;

const DEFAULT_MUST_KNOW: RuleId[] = [
  'truck-fit',
  'depth-reach',
  'lift-height',
  'aisle-turn',
  'plate-capacity',
  'tilt-capacity',
  'opening-height',
  'opening-width',
  'unit-load',
  'beam-level',
  'bay-load',
  'frame-load',
  'rack-condition',
];

/** Defaults, with their sources beside them. */
export const DEFAULT_POLICY: Policy = {
  placingClearanceMm: 150, // with a 100 mm pallet entry 250 mm above the beam: planning value, common practice
  clearanceClass: '400', // EN 15620:2008 (from memory)
  aisleClearanceMm: 200, // VDI 2198: 100 mm at each side
  tilt: 'as-rated',
  thinPercent: 10,
  massAllowancePercent: { weighed: 0, calculated: 0, declared: 10 },
  checkValidHours: 12,
  sprinklerClearanceMm: 914, // 36 in, NFPA 13 for ESFR and large-drop; 457 only where known to be standard spray
  overheadMarginMm: 100,
  forkSupportFraction: 0.75, // AS 2359.2:2013 cl. 3.7(e)
  mustKnow: DEFAULT_MUST_KNOW,
  travelMps: 2, // this and the rest: common practice
  liftMps: 0.3,
  handlingS: 30,
  weightHeight: 0.02,
  fitTrucks: 2,
};

/** The policy in force: the defaults with the site's own values over them. */
export function policyInForce(own: SitePolicy): Policy {
  return {
    ...DEFAULT_POLICY,
    ...stated(own),
    massAllowancePercent: {
      ...DEFAULT_POLICY.massAllowancePercent,
      ...stated(own.massAllowancePercent ?? {}),
    },
  };
}

function stated<T extends object>(part: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as never;
}
