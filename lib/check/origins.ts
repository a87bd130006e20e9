import { grossMass } from '../model/load.ts';
import type { Policy } from '../model/policy.ts';
import type { Standing } from '../rack/stand.ts';
import type { LiftCase } from './lift-case.ts';
import type { Origin } from './step.ts';

/** Builds an origin in one line. */
export function origin(
  of: Origin['of'],
  subject: string,
  field: string,
  value: Origin['value'],
  unit: Origin['unit'],
): Origin {
  return { of, subject, field, value, unit };
}

/** A length or mass of the truck. */
export function truckFact(
  { truck }: LiftCase,
  field: string,
  value: Origin['value'],
  unit: Origin['unit'] = 'mm',
): Origin {
  return origin('truck', truck.id, field, value, unit);
}

/** A dimension of the load. */
export function loadFact(
  { load }: LiftCase,
  field: string,
  value: Origin['value'],
  unit: Origin['unit'] = 'mm',
): Origin {
  return origin('load', load.id, field, value, unit);
}

type PolicyNumber = { [K in keyof Policy]: Policy[K] extends number ? K : never }[keyof Policy];

/** A number the site has set for itself, or its default. */
export function policyFact({ policy }: LiftCase, field: PolicyNumber, unit: Origin['unit'] = 'mm'): Origin {
  return origin('policy', 'policy', field, policy[field], unit);
}

/** A dimension of the level where the load goes. */
export function levelFact({ place }: LiftCase, field: 'beamTopMm' | 'beamHeightMm'): Origin {
  return origin('rack', `${place.bay.id} level ${place.level.level}`, field, place.level[field], 'mm');
}

/** Where the assessed mass comes from: gross or items with the pallet, then the allowance of its basis. */
export function assessedFrom(lift: LiftCase): Origin[] {
  const { load, pallet, policy } = lift;
  const gross = grossMass(load, pallet);
  if (gross === null) return [loadFact(lift, 'grossKg', null, 'kg')];
  const basis = origin(
    'policy',
    'policy',
    `massAllowancePercent.${gross.basis}`,
    policy.massAllowancePercent[gross.basis],
    'percent',
  );
  if (load.grossKg !== null) {
    return [
      loadFact(lift, 'grossKg', load.grossKg, 'kg'),
      loadFact(lift, 'massBasis', load.massBasis, 'state'),
      basis,
    ];
  }
  const items = (load.items ?? []).map((item, at) =>
    loadFact(lift, `items[${at}] ${item.name} x ${item.count}`, item.massKg * item.count, 'kg'),
  );
  const tare = pallet === null ? [] : [origin('load', pallet.id, 'tareKg', pallet.tareKg, 'kg')];
  return [...items, ...tare, basis];
}

/** Where the load centre comes from: stated, or half the depth. */
export function loadCentreFrom(lift: LiftCase): Origin[] {
  const { load } = lift;
  if (load.centreFromHeelMm !== null) return [loadFact(lift, 'centreFromHeelMm', load.centreFromHeelMm)];
  return [
    loadFact(lift, 'depthMm', load.depthMm),
    origin('formula', 'uniform load', 'depthMm / 2', lift.loadCentreMm, 'mm'),
  ];
}

/** Where the entry height comes from: the pallet type, or the value for a load without one. */
export function entryFrom(lift: LiftCase): Origin {
  return lift.pallet === null
    ? origin('standard', 'common practice', 'entryHeightMm', lift.entryMm, 'mm')
    : origin('load', lift.pallet.id, 'entryHeightMm', lift.entryMm, 'mm');
}

/** Where the lift comes from: beam top, entry height and placing clearance. */
export function liftFrom(lift: LiftCase): Origin[] {
  return [levelFact(lift, 'beamTopMm'), entryFrom(lift), policyFact(lift, 'placingClearanceMm')];
}

/** What else stands somewhere: how many pallets and their assessed mass. */
export function standingFrom(subject: string, standing: Standing): Origin[] {
  return [
    origin('stock', subject, 'pallets', standing.count, 'count'),
    origin('stock', subject, 'assessedKg', standing.kg, 'kg'),
  ];
}
