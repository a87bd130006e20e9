import { z } from 'zod';
import { MASS_BASES, type MassBasis, type Policy } from './policy.ts';
import { amount, id, orNull, size, words } from './quantities.ts';

/** Entry height of a load with no pallet type: the EPAL and common practice value of 100 mm. */
export const ENTRY_WITHOUT_PALLET_MM = 100;

export const palletTypeSchema = z.strictObject({
  id,
  depthMm: size,
  widthMm: size,
  tareKg: amount,
  entryHeightMm: amount,
});
export type PalletType = z.infer<typeof palletTypeSchema>;

export const COUPLINGS = ['good', 'fair', 'poor'] as const;

/** One case lifted by hand from this load: the inputs of the revised NIOSH lifting equation (publication 94-110). */
export const handPickSchema = z.strictObject({
  massKg: size,
  horizontalMm: size, // hands ahead of the ankles' midpoint, H
  gripHeightMm: amount, // hands above what the pallet stands on; with the beam top it makes V
  destinationHeightMm: amount, // hands above the floor where the case is put down; with V it makes D
  asymmetryDeg: z.number().min(0).max(180),
  liftsPerMinute: amount,
  durationHours: z.number().positive().max(8),
  coupling: z.enum(COUPLINGS),
});
export type HandPick = z.infer<typeof handPickSchema>;

export const itemSchema = z.strictObject({ name: words, massKg: size, count: z.int().min(1).max(1e6) });

/** A unit load. Depth runs along the forks; height is overall, pallet included. */
export const loadSchema = z.strictObject({
  id,
  name: words,
  palletType: orNull(id),
  items: orNull(z.array(itemSchema).min(1)),
  grossKg: orNull(size),
  massBasis: z.enum(MASS_BASES),
  depthMm: size,
  widthMm: size,
  heightMm: size,
  centreFromHeelMm: orNull(size),
  centreHeightMm: orNull(size),
  picksPerWeek: orNull(amount),
  group: orNull(words),
  handPick: orNull(handPickSchema),
});
export type Load = z.infer<typeof loadSchema>;

export type GrossMass = { kg: number; basis: MassBasis };

/**
 * What does the load weigh, pallet included?
 *
 * The stated gross mass; else sum(massKg x count) + pallet tare, and then the basis is `calculated`; else null.
 * Four 250 kg drums on a 60 kg pallet make 1060 kg.
 */
export function grossMass(load: Load, pallet: PalletType | null): GrossMass | null {
  if (load.grossKg !== null) return { kg: load.grossKg, basis: load.massBasis };
  if (load.items === null) return null;
  const goods = load.items.reduce((sum, item) => sum + item.massKg * item.count, 0);
  return { kg: goods + (pallet?.tareKg ?? 0), basis: 'calculated' };
}

/**
 * What mass is the lift judged by? kg, or null when the gross mass is not known.
 *
 * gross x (100 + massAllowancePercent[basis]) / 100: multiplied before it is divided, so that a whole number of
 * kilograms and of percent gives an exact product (700 x 1.1 in binary is 770.0000000000001). Without an allowance the
 * gross mass itself: x 100 / 100 would raise some masses by one bit and refuse a load that is exactly at its limit.
 */
export function assessedMassKg(load: Load, pallet: PalletType | null, policy: Policy): number | null {
  const gross = grossMass(load, pallet);
  if (gross === null) return null;
  const allowancePercent = policy.massAllowancePercent[gross.basis];
  return allowancePercent === 0 ? gross.kg : (gross.kg * (100 + allowancePercent)) / 100;
}

/** How far is the load's centre of gravity from the fork heel, mm? Half the depth where it is not stated (uniform load). */
export function loadCentreMm(load: Load): number {
  return load.centreFromHeelMm ?? load.depthMm / 2;
}

/** How high is the load's centre of gravity above the pallet's underside, mm? Half the height where it is not stated. */
export function centreHeightMm(load: Load): number {
  return load.centreHeightMm ?? load.heightMm / 2;
}

/** Fork top face above the pallet's underside, mm. */
export function entryHeightMm(pallet: PalletType | null): number {
  return pallet?.entryHeightMm ?? ENTRY_WITHOUT_PALLET_MM;
}
