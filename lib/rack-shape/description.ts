import type { LabelPattern } from './label-pattern.ts';

/** A typed figure: the number in mm, kg or pieces; null where nothing was typed; `unread` where it cannot be read. */
export type Typed = number | null | 'unread';

/** One beam level, the same in every bay. A notice that states no pair capacity or no unit limit: null. */
export type LevelShape = {
  beamTopMm: Typed;
  beamHeightMm: Typed;
  pairCapacityKg: Typed;
  maxUnitKg: Typed;
  decked: boolean;
  depthPositions: 1 | 2;
  /** Positions side by side in one row. */
  positions: Typed;
};

/** A whole run in a few figures, as a person types them: any of them may still be missing. */
export type RunDescription = {
  id: string;
  aisleId: string;
  frameDepthMm: Typed;
  bayCount: Typed;
  /** One clear width for all bays, or one for each from left to right. */
  clearWidthsMm: readonly number[] | 'unread';
  frameTypeId: string;
  /** The type of the first and the last frame where it differs; null: the same. */
  endFrameTypeId: string | null;
  /** null: the notice states none. */
  maxBayLoadKg: Typed;
  /** null: nothing stands on the floor below the first beam. */
  floor: { positions: Typed; depthPositions: 1 | 2 } | null;
  /** From the lowest up. */
  levels: readonly LevelShape[];
  labels: LabelPattern;
};

/** No run of a warehouse is longer or higher; more is a slip of the keyboard. */
export const MOST = { bays: 400, levels: 40, positions: 20, locations: 40_000 } as const;
