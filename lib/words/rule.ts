import type { RuleId } from '../model/rule-ids.ts';

const RULE_WORDS: Record<RuleId, { title: string; question: string }> = {
  'truck-fit': { title: 'Truck fit for service', question: 'Is the truck fit for service at this time?' },
  'operator-authorised': {
    title: 'Operator authorised',
    question: 'May this operator drive this kind of truck?',
  },
  'slot-free': { title: 'Location free', question: 'Is the location free to place in?' },
  'depth-reach': { title: 'Reach in depth', question: 'Can the truck reach this row of the rack?' },
  'lift-height': { title: 'Lift height', question: 'Do the forks go high enough for this level?' },
  'aisle-turn': {
    title: 'Turning in the aisle',
    question: 'Is the aisle wide enough to turn square into the rack with this load?',
  },
  'plate-capacity': {
    title: 'Capacity plate',
    question: 'Does the plate prove this mass at this height and load centre?',
  },
  'tilt-capacity': {
    title: 'Capacity, mast tilted forward',
    question: 'Does the plate prove this mass with the mast tilted forward?',
  },
  'centre-height': {
    title: 'Height of the centre of gravity',
    question: 'Is the centre of gravity no higher than the plate assumes?',
  },
  'fork-length': { title: 'Fork length', question: 'Do the forks support enough of the load?' },
  'fork-arms': { title: 'Fork arms', question: 'Is each fork arm strong enough for its half?' },
  'mast-overhead': { title: 'Mast overhead', question: 'Does the mast clear what hangs over the aisle?' },
  'load-overhead': {
    title: 'Load overhead',
    question: 'Does the raised load clear what hangs over the aisle?',
  },
  'opening-height': { title: 'Opening height', question: 'Does the load fit under the beam above?' },
  'sprinkler-clearance': {
    title: 'Sprinkler clearance',
    question: 'Does the load stay far enough below the sprinklers?',
  },
  'opening-width': { title: 'Opening width', question: 'Is the bay wide enough for a row of these loads?' },
  'pallet-support': { title: 'Pallet support', question: 'Do both beams carry the pallet?' },
  'unit-load': { title: 'Unit load', question: 'Is the load within the notice for one unit load?' },
  'beam-level': { title: 'Beam pair', question: 'Do the beams carry it with what else stands on them?' },
  'bay-load': { title: 'Bay load', question: 'Does the bay carry it with all that stands on its beams?' },
  'frame-load': {
    title: 'Upright frames',
    question: 'Do both upright frames carry their half of what stands beside them?',
  },
  'rack-condition': { title: 'Rack condition', question: 'Is the steel sound where the load goes?' },
};

/** A rule's heading. */
export function ruleTitle(rule: RuleId): string {
  return RULE_WORDS[rule].title;
}

/** The question a rule answers. */
export function ruleQuestion(rule: RuleId): string {
  return RULE_WORDS[rule].question;
}
