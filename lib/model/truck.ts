import { z } from 'zod';
import { amount, id, instant, orNull, size, words } from './quantities.ts';

export const TRUCK_KINDS = ['counterbalance', 'reach', 'stacker', 'order-picker', 'narrow-aisle'] as const;
export const truckKind = z.enum(TRUCK_KINDS);
export type TruckKind = z.infer<typeof truckKind>;

export const POWERS = ['electric', 'lpg', 'diesel', 'petrol', 'manual'] as const;

export const MASTS = ['vertical', 'forward-tilt'] as const;

/** One line of a capacity plate: with this mast position and attachment, this mass at this height and load centre. */
export const plateRatingSchema = z.strictObject({
  mast: z.enum(MASTS),
  attachment: orNull(words),
  liftHeightMm: size,
  loadCentreMm: size,
  capacityKg: size,
});
export type PlateRating = z.infer<typeof plateRatingSchema>;

export const plateSchema = z.strictObject({
  verticalLoadCentreMm: orNull(size),
  ratings: z.array(plateRatingSchema),
});
export type Plate = z.infer<typeof plateSchema>;

export const truckSchema = z.strictObject({
  id,
  name: words,
  kind: truckKind,
  power: z.enum(POWERS),
  maxLiftMm: size,
  loweredMm: orNull(size),
  extendedMm: orNull(size),
  freeLiftMm: orNull(amount),
  reachDepth: z.union([z.literal(1), z.literal(2)]),
  turning: orNull(z.strictObject({ outsideRadiusMm: size, loadDistanceMm: amount, insideOffsetMm: amount })),
  statedAisleMm: orNull(size),
  forks: z.strictObject({
    lengthMm: orNull(size),
    armCapacityKg: orNull(size),
    armLoadCentreMm: orNull(size),
  }),
  fittedAttachment: orNull(words),
  hold: orNull(z.strictObject({ since: instant, reason: words })),
  speeds: orNull(z.strictObject({ travelMps: size, liftMps: size })),
  plate: plateSchema,
});
export type Truck = z.infer<typeof truckSchema>;

/** A walk-round before the shift. */
export const checkSchema = z.strictObject({
  truck: id,
  at: instant,
  by: words,
  result: z.enum(['pass', 'fail']),
  defects: z.array(words).default([]),
});
export type Check = z.infer<typeof checkSchema>;

export const operatorSchema = z.strictObject({
  id,
  name: words,
  authorisations: z.array(z.strictObject({ kind: truckKind, expires: orNull(instant) })).default([]),
});
export type Operator = z.infer<typeof operatorSchema>;
