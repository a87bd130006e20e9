import type { PairLoading } from '../rack/beam-deflection.ts';
import type { DamageClass, DamageKind } from '../rack/damage-class.ts';
import type { PlumbRule, StabilityClass } from '../rack/frame-stability.ts';

/** Said over every figure of these screens. */
export const ADVICE_CAUTIONS: readonly string[] = [
  "Advice for a talk with a competent person or the supplier. No lift is cleared by it: the load notice, the capacity plate and the inspection's findings govern.",
  'Formulas are for plain beams and columns. Connectors, perforated uprights and the base plates are set by tests that only the maker has.',
];

export function damageKindWords(kind: DamageKind): string {
  switch (kind) {
    case 'upright-down-aisle':
      return 'Upright, bent along the rack';
    case 'upright-cross-aisle':
      return 'Upright, bent in depth';
    case 'bracing':
      return 'Bracing';
  }
}

/** What the class asks for (EN 15635). */
export function damageAction(damage: DamageClass): string {
  switch (damage) {
    case 'green':
      return 'Green: record it and look again at the next inspection.';
    case 'amber':
      return 'Amber: repair within four weeks; once emptied it is not loaded again before.';
    case 'red':
      return 'Red: empty it at once and keep it out of use until it is repaired.';
  }
}

export function stabilityWords(stability: StabilityClass): string {
  switch (stability) {
    case 'normal-anchors':
      return 'normal anchors';
    case 'stronger-anchors':
      return 'anchors that hold 350 lbf (1557 N) at the top beam of an empty frame';
    case 'ties-or-certified-anchors':
      return 'ties across the aisle, or anchors certified by an engineer';
  }
}

export function plumbWords(rule: PlumbRule): string {
  switch (rule) {
    case 'class 400, unloaded':
      return 'wide and narrow aisles (class 400), empty: height / 350';
    case 'class 300, unloaded':
      return 'very narrow aisles (class 300), empty: height / 500';
    case 'loaded, US':
      return 'loaded, US practice: height / 240';
  }
}

export function loadingWords(loading: PairLoading): string {
  switch (loading) {
    case 'uniform':
      return 'spread evenly';
    case 'central-point':
      return 'all at the middle';
    case 'third-points':
      return 'half at each third';
  }
}
