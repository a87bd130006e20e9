import type { HandPick } from '../model/load.ts';
import { KNUCKLE_HEIGHT_MM } from './frequency-multiplier.ts';

/** Hands no further out than this lose nothing (94-110). */
export const NEAREST_HANDS_MM = 250;
/** Hands further out than this: no weight is recommended. */
export const FURTHEST_HANDS_MM = 630;
/** Hands higher than this: no weight is recommended. */
export const HIGHEST_HANDS_MM = 1750;
/** A vertical travel up to this loses nothing. */
export const SHORTEST_TRAVEL_MM = 250;
/** A vertical travel beyond this: no weight is recommended (from memory). */
export const LONGEST_TRAVEL_MM = 1750;
/** A twist beyond this: no weight is recommended. */
export const WIDEST_TWIST_DEG = 135;

/**
 * HM: what is left with the hands this far ahead of the ankles' midpoint? 25/H, H in cm.
 * 1 up to 25 cm, 0 beyond 63 cm; exactly 63 cm still counts.
 */
export function horizontalMultiplier(horizontalMm: number): number {
  if (horizontalMm > FURTHEST_HANDS_MM) return 0;
  return horizontalMm <= NEAREST_HANDS_MM ? 1 : NEAREST_HANDS_MM / horizontalMm;
}

/**
 * VM: what is left with the hands this high above the floor? 1 - 0.003 |V - 75|, V in cm: best at knuckle height.
 * 0 beyond 175 cm; exactly 175 cm still counts.
 */
export function verticalMultiplier(handHeightMm: number): number {
  if (handHeightMm > HIGHEST_HANDS_MM) return 0;
  return 1 - 0.0003 * Math.abs(handHeightMm - KNUCKLE_HEIGHT_MM);
}

/**
 * DM: what is left when the hands travel this far up or down? 0.82 + 4.5/D, D in cm.
 * 1 up to 25 cm, 0 beyond 175 cm; exactly 175 cm still counts.
 */
export function distanceMultiplier(travelMm: number): number {
  if (travelMm > LONGEST_TRAVEL_MM) return 0;
  return travelMm <= SHORTEST_TRAVEL_MM ? 1 : 0.82 + 45 / travelMm;
}

/** AM: what is left with the trunk twisted this far? 1 - 0.0032 A. 0 beyond 135 degrees; exactly 135 still counts. */
export function asymmetryMultiplier(asymmetryDeg: number): number {
  return asymmetryDeg > WIDEST_TWIST_DEG ? 0 : 1 - 0.0032 * asymmetryDeg;
}

/** 94-110, table 7: hands below 75 cm, then at 75 cm or above. */
export const COUPLING_TABLE = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
} as const satisfies Record<HandPick['coupling'], readonly [number, number]>;

/** CM: what is left with this hold on the case? Hands at exactly 75 cm are in the upper column. */
export function couplingMultiplier(coupling: HandPick['coupling'], handHeightMm: number): number {
  return COUPLING_TABLE[coupling][handHeightMm >= KNUCKLE_HEIGHT_MM ? 1 : 0];
}
