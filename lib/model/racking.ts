import { z } from 'zod';
import { amount, id, orNull, size, surveyedHeight } from './quantities.ts';

export const CONDITIONS = ['sound', 'amber', 'red'] as const;
const condition = z.enum(CONDITIONS);
/** What an inspection found (EN 15635): amber is not reloaded once emptied, red is emptied at once. */
export type Condition = z.infer<typeof condition>;

/** Upright frame capacity by the largest unsupported gap, as the maker's table states it. */
export const frameTypeSchema = z.strictObject({
  id,
  ratings: z.array(z.strictObject({ maxGapMm: size, capacityKg: size })),
});
export type FrameType = z.infer<typeof frameTypeSchema>;

export const aisleSchema = z.strictObject({
  id,
  clearWidthMm: size,
  overheadClearMm: surveyedHeight,
  sprinklerMm: surveyedHeight,
});
export type Aisle = z.infer<typeof aisleSchema>;

export const frameSchema = z.strictObject({ id, typeId: id, condition });
export type Frame = z.infer<typeof frameSchema>;

/** One beam level of a bay, or its floor (level 0, beam top 0). Locations left to right, front row then rear row. */
export const levelSchema = z.strictObject({
  level: z.int().min(0).max(100),
  beamTopMm: amount,
  beamHeightMm: amount,
  pairCapacityKg: orNull(size),
  depthPositions: z.union([z.literal(1), z.literal(2)]),
  maxUnitKg: orNull(size),
  decked: z.boolean(),
  condition,
  locations: z.array(id),
});
export type Level = z.infer<typeof levelSchema>;

export const baySchema = z.strictObject({
  id,
  clearWidthMm: size,
  maxBayLoadKg: orNull(size),
  levels: z.array(levelSchema),
});
export type Bay = z.infer<typeof baySchema>;

/** A row of bays on one side of an aisle: bay i stands between frames[i] and frames[i + 1]. */
export const runSchema = z.strictObject({
  id,
  aisleId: id,
  frameDepthMm: size,
  frames: z.array(frameSchema),
  bays: z.array(baySchema),
  at: orNull(
    z.strictObject({
      xMm: amount,
      yMm: amount,
      headingDeg: z.number().min(0).max(360),
    }),
  ),
});
export type Run = z.infer<typeof runSchema>;

export const dockSchema = z.strictObject({ id, xMm: amount, yMm: amount });
export type Dock = z.infer<typeof dockSchema>;
