import type { Cause } from '../check/step.ts';

/** Why a step is as it is: a clause without capital or full stop. */
export function causeWords(cause: Cause): string {
  switch (cause) {
    case 'no-time-given':
      return 'no time was given, so fitness for service was not judged';
    case 'no-operator-given':
      return 'no operator was named';
    case 'racks-taken-as-empty':
      return 'the racks were taken as empty';
    case 'taking-down':
      return 'only placing asks this';
    case 'floor-level':
      return 'the load stands on the floor';
    case 'top-level':
      return "the bay's top level has no beam above";
    case 'not-the-top-level':
      return 'this is not the top level of the bay';
    case 'decked':
      return 'the level is decked';
    case 'nothing-overhead':
      return 'the survey found nothing overhead';
    case 'notice-states-none':
      return 'the load notice states no such limit';
    case 'no-tilt-ratings':
      return 'the plate has no rating with the mast tilted forward for what is fitted';
    case 'mast-kept-vertical':
      return 'by site policy the mast is kept vertical';
    case 'plate-states-none':
      return 'the plate states no height for the centre of gravity';
    case 'held':
      return 'the truck is on hold';
    case 'check-failed':
      return 'its newest check failed';
    case 'not-authorised':
      return 'no authorisation for this kind of truck';
    case 'authorisation-expired':
      return 'the authorisation has ended';
    case 'occupied':
      return 'a pallet stands there';
    case 'amber':
      return 'amber steel is not reloaded before it is repaired';
    case 'red':
      return 'red steel is emptied at once and not loaded';
    case 'never-checked':
      return 'no check on record at or before this time';
    case 'check-too-old':
      return 'its newest check is too old';
    case 'no-rating':
      return 'the plate has no rating for this mast position and attachment';
    case 'height-beyond-plate':
      return 'no rating on the plate reaches this height';
    case 'load-centre-beyond-plate':
      return 'no rating on the plate that reaches this height covers this load centre';
    case 'mass-unknown':
      return "the load's mass is not known";
    case 'stock-mass-unknown':
      return 'a pallet that stands there has no known mass';
    case 'no-turning-data':
      return 'neither turning data nor a stated aisle is recorded for the truck';
    case 'load-inside-wheels':
      return 'the load is no deeper than the load distance, so the legs, of unrecorded size, set the sweep';
    case 'fork-length-unknown':
      return 'the fork length is not recorded';
    case 'fork-arm-rating-unknown':
      return 'the marking of the fork arms is not recorded';
    case 'mast-height-unknown':
      return 'the lowered or the extended height of the mast is not recorded';
    case 'overhead-not-surveyed':
      return 'the height clear over the aisle has not been surveyed';
    case 'sprinkler-not-surveyed':
      return 'the height of the sprinklers has not been surveyed';
    case 'pair-capacity-unknown':
      return 'the load notice gives no capacity for this pair of beams';
    case 'gap-beyond-frame-ratings':
      return "the frame's table has no rating for so large a gap between beams";
    case 'red-take-down-only':
      return 'red steel: take down only, and keep it empty';
    case 'front-occupied':
      return 'a pallet stands in front: move it first';
  }
}
