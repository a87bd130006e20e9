import { type TruckFitState, truckFitState } from '../check/truck-fit-state.ts';
import { instantMs } from '../model/quantities.ts';
import type { Truck } from '../model/truck.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';

const MS_PER_HOUR = 3_600_000;

/**
 * Which trucks may not be used at the time asked about? The states of `truck-fit`.
 *
 * A failed check without a hold: `stop`, it is to be taken out of service (OSHA 1910.178(p)(1)). Never checked, or too
 * long ago: `plan`, check before use. On hold: `note`, somebody has acted. Without a time only holds are found.
 */
export function trucksOutOfService({ index, asOfMs }: AuditCase): Finding[] {
  return index.site.trucks.flatMap((truck) => {
    if (asOfMs === null) return truck.hold === null ? [] : outOfService(truck, 'held', null);
    const fit = truckFitState(index, truck, asOfMs);
    if (fit.state === 'in service') return [];
    const ageHours = fit.check === null ? null : (asOfMs - instantMs(fit.check.at)) / MS_PER_HOUR;
    return outOfService(
      truck,
      fit.state,
      fit.state === 'check too old' ? { ageHours, validHours: index.policy.checkValidHours } : null,
    );
  });
}

function outOfService(
  truck: Truck,
  state: Exclude<TruckFitState['state'], 'in service'>,
  age: { ageHours: number | null; validHours: number } | null,
): Finding {
  return makeFinding({
    ...WHAT_TO_DO[state],
    subject: { of: 'truck', truck: truck.id, lacks: null },
    figures: figuresOf(age?.ageHours ?? null, age?.validHours ?? null, 'hours'),
    truck: truck.id,
  });
}

const WHAT_TO_DO = {
  held: {
    kind: 'truck-held',
    severity: 'note',
    source: ruleSource('truck-fit', 'held'),
    advice: 'mend-and-release',
  },
  'check failed': {
    kind: 'truck-check-failed',
    severity: 'stop',
    source: ruleSource('truck-fit', 'check-failed'),
    advice: 'take-out-of-service',
  },
  'never checked': {
    kind: 'truck-unchecked',
    severity: 'plan',
    source: ruleSource('truck-fit', 'never-checked'),
    advice: 'check-before-use',
  },
  'check too old': {
    kind: 'truck-unchecked',
    severity: 'plan',
    source: ruleSource('truck-fit', 'check-too-old'),
    advice: 'check-before-use',
  },
} as const satisfies Record<string, Pick<Finding, 'kind' | 'severity' | 'source' | 'advice'>>;
