import type { Advice } from '../audit/finding.ts';

/** What to do about a finding, in one or two sentences. */
export function adviceSentence(advice: Advice): string {
  switch (advice) {
    case 'take-load-off':
      return 'Take load off until the limit is met; place nothing there before.';
    case 'weigh-then-take-off':
      return 'Take load off until the limit is met, and weigh the pallets whose mass is not known.';
    case 'empty-and-cordon':
      return 'Empty it at once, keep people away, and have a competent person look at it.';
    case 'do-not-reload':
      return 'Do not reload what is taken out; have it repaired, then inspected.';
    case 'deck-or-move':
      return 'Move the pallet to a run it is deep enough for, or have the level decked.';
    case 'move-to-taller-opening':
      return 'Take it down with somebody watching the beam above, and keep it in a taller opening.';
    case 'move-to-wider-bay':
      return 'Keep it in a wider bay or with fewer loads in the row.';
    case 'lower-the-top':
      return 'Make the load lower or move it down; ask who answers for fire protection.';
    case 'bring-in-a-truck':
      return 'Do not try it with these trucks. Bring in one whose plate proves the lift, or unload it where it stands.';
    case 'enter-missing-facts':
      return 'Read the missing facts from the truck, its papers or its maker and enter them.';
    case 'return-a-truck-to-service':
      return 'Leave it standing until a truck that can take it down is checked and in service.';
    case 'keep-that-truck-running':
      return 'Move it to where a second truck can serve it, or plan for the day that truck is missing.';
    case 'weigh':
      return 'Weigh it and enter the mass as weighed.';
    case 'read-the-plate-again':
      return 'Read the plate again before the next lift: one of the two lines cannot be right.';
    case 'have-the-plate-re-rated':
      return 'Enter the lines the plate has; if it has none, ask the maker to rate the truck for this.';
    case 'take-out-of-service':
      return 'Take it out of service and put it on hold until it is mended.';
    case 'mend-and-release':
      return 'Mend it, check it, then end the hold.';
    case 'check-before-use':
      return 'Check it before it is used.';
    case 'renew-authorisation':
      return 'Renew it in time.';
    case 'do-not-let-drive':
      return 'This person may not drive this kind of truck until it is renewed.';
    case 'ask-for-the-notice':
      return "Read the rack's load notice, or ask the maker of the rack for it, and enter the figure.";
    case 'ask-the-maker-about-the-gap':
      return 'Ask the maker of the rack for a rating at this gap, or set the beams as the table has them.';
    case 'survey-the-aisle':
      return 'Measure it and enter the height, or enter that nothing hangs there.';
    case 'leave-empty-or-change-fleet':
      return 'Use these locations for smaller or lighter loads, mend what stands against them, or change the fleet.';
    case 'find-another-way-to-store':
      return 'Split it into lighter or smaller loads, or store it outside these racks.';
    case 'lighten-the-pick':
      return 'Put it on a level nearer to hip height, make the case lighter, or lift it with a device.';
    case 'bring-down-before-picking':
      return 'Bring the pallet down before anybody picks from it.';
  }
}
