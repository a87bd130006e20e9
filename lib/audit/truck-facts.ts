import { stackingAisle } from '../check/stacking-aisle.ts';
import type { Cause } from '../check/step.ts';
import type { RuleId } from '../model/rule-ids.ts';
import type { Truck } from '../model/truck.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';

/**
 * Which facts does a truck's record lack that a rule reads? `plan` where site policy must know the rule, so that every
 * lift of the truck stays unproven; else `note`. A plate's gaps are found by plate-gaps.ts.
 */
export function missingTruckFacts({ index }: AuditCase): Finding[] {
  const { mustKnow } = index.policy;
  const overhead = index.site.aisles.some(({ overheadClearMm }) => typeof overheadClearMm === 'number');
  return index.site.trucks.flatMap((truck) =>
    lackingRules(truck, overhead).map(([rule, cause]) =>
      makeFinding({
        kind: 'truck-facts-missing',
        severity: mustKnow.includes(rule) ? 'plan' : 'note',
        subject: { of: 'truck', truck: truck.id, lacks: cause },
        figures: figuresOf(null, null, rule === 'fork-arms' ? 'kg' : 'mm'),
        source: ruleSource(rule, cause),
        advice: 'enter-missing-facts',
        truck: truck.id,
      }),
    ),
  );
}

/** Any load shows whether turning data are there; that a load is too shallow for the formula is no fault of the record. */
const ANY_LOAD = { loadDepthMm: 1200, loadWidthMm: 800, aisleClearanceMm: 0 };

function lackingRules(truck: Truck, overhead: boolean): [RuleId, Cause][] {
  const lacking: [RuleId, Cause][] = [];
  const aisle = stackingAisle(truck, ANY_LOAD);
  if (aisle.kind === 'unknown' && aisle.cause === 'no-turning-data')
    lacking.push(['aisle-turn', aisle.cause]);
  if (truck.forks.lengthMm === null) lacking.push(['fork-length', 'fork-length-unknown']);
  if (truck.forks.armCapacityKg === null) lacking.push(['fork-arms', 'fork-arm-rating-unknown']);
  if (overhead && (truck.loweredMm === null || truck.extendedMm === null)) {
    lacking.push(['mast-overhead', 'mast-height-unknown']);
  }
  return lacking;
}
