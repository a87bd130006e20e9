import type { FindingKind, Severity } from '../audit/finding.ts';

/** The severity as a label. */
export function severityWord(severity: Severity): string {
  switch (severity) {
    case 'stop':
      return 'Stop';
    case 'plan':
      return 'Plan';
    case 'note':
      return 'Note';
  }
}

/** What the severity asks for, in one sentence. */
export function severityMeaning(severity: Severity): string {
  switch (severity) {
    case 'stop':
      return 'Act before the next lift there.';
    case 'plan':
      return 'Mend it in the ordinary run of work.';
    case 'note':
      return 'Know it.';
  }
}

const TITLES: Record<FindingKind, string> = {
  'unit-overload': 'Pallet heavier than the notice allows',
  'beam-level-overload': 'Beam pair overloaded',
  'bay-overload': 'Bay overloaded',
  'frame-overload': 'Upright frame overloaded',
  'red-steel-loaded': 'Red steel still loaded',
  'amber-steel-loaded': 'Amber steel still loaded',
  'under-supported': 'Pallet does not reach both beams',
  'load-too-tall': 'Load too tall for its opening',
  'load-too-wide': 'Load too wide for its bay',
  'near-sprinklers': 'Load too near the sprinklers',
  'stranded-for-fleet': 'No truck of the fleet can take it down',
  stranded: 'No truck fit for service can take it down',
  'one-truck': 'Only one truck can take it down',
  'mass-unknown': 'Mass not known',
  'declared-thin': 'Declared mass close to a limit',
  'plate-contradicts': 'Plate lines contradict each other',
  'plate-rises': 'Plate rises with height or load centre',
  'plate-lacks-attachment': 'Plate lacks what is fitted',
  'plate-stops-below-mast': 'Plate stops below the mast',
  'truck-check-failed': 'Truck failed its check',
  'truck-held': 'Truck on hold',
  'truck-unchecked': 'Truck without a valid check',
  'truck-facts-missing': 'Truck facts missing',
  'authorisation-ended': 'Authorisation has ended',
  'authorisation-ending': 'Authorisation ends soon',
  'pair-capacity-missing': 'Notice gives no pair capacity',
  'unit-limit-missing': 'Notice gives no unit limit here',
  'bay-limit-missing': 'Notice gives no bay limit here',
  'frame-gap-beyond-ratings': "Gap beyond the frame's table",
  'aisle-not-surveyed': 'Aisle not surveyed overhead',
  'out-of-reach': 'Locations out of reach',
  unplaceable: 'Load that fits nowhere',
  'hand-pick': 'Heavy pick by hand',
  'hand-pick-too-high': 'Hand-picked load out of hand reach',
};

/** The kind of a finding as a heading. */
export function findingTitle(kind: FindingKind): string {
  return TITLES[kind];
}
