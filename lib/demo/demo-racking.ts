import type { Bay, Dock, Frame, FrameType, Level, Run } from '../model/racking.ts';
import { AISLE_SPECS, type AisleSpec } from './aisle-specs.ts';

export const DEMO_FRAME_TYPES: readonly FrameType[] = [
  { id: 'UF-90', ratings: ratings([1000, 9000], [1500, 7500], [2000, 6000]) },
  { id: 'UF-110', ratings: ratings([1200, 19_000], [1600, 16_500], [2000, 14_000], [2400, 11_500]) },
  { id: 'UF-140', ratings: ratings([1500, 30_000], [1800, 26_000], [2200, 22_000], [2600, 18_000]) },
];

export const DEMO_DOCKS: readonly Dock[] = [
  { id: 'Quay door 1', xMm: 1000, yMm: 9000 },
  { id: 'Quay door 2', xMm: 1000, yMm: 24_000 },
  { id: 'Yard door', xMm: 62_000, yMm: 1000 },
];

const UPRIGHT_WIDTH_MM = 100;
const FIRST_FRAME_X_MM = 9000;
const FIRST_FACE_Y_MM = 6000;
const BACK_TO_BACK_MM = 250;

/**
 * The runs of all aisles, set out on a floor plan that is drawn with y downwards: the racking stands at the left hand
 * of one who walks along its heading, so its locations read left to right as seen from the aisle.
 */
export function demoRuns(): Run[] {
  const runs: Run[] = [];
  let faceYMm = FIRST_FACE_Y_MM;
  for (const spec of AISLE_SPECS) {
    const lengthMm = spec.bayCount * spec.bayClearMm + (spec.bayCount + 1) * UPRIGHT_WIDTH_MM;
    const rackDepthMm = spec.frameDepthMm * spec.depthPositions;
    const rightFaceYMm = faceYMm + spec.aisle.clearWidthMm;
    runs.push(run(spec, 'L', { xMm: FIRST_FRAME_X_MM, yMm: faceYMm, headingDeg: 0 }));
    runs.push(run(spec, 'R', { xMm: FIRST_FRAME_X_MM + lengthMm, yMm: rightFaceYMm, headingDeg: 180 }));
    faceYMm = rightFaceYMm + 2 * rackDepthMm + BACK_TO_BACK_MM;
  }
  return runs;
}

function run(spec: AisleSpec, side: 'L' | 'R', at: Run['at']): Run {
  const id = `${spec.aisle.id}-${side}`;
  return {
    id,
    aisleId: spec.aisle.id,
    frameDepthMm: spec.frameDepthMm,
    frames: Array.from({ length: spec.bayCount + 1 }, (_, i): Frame => {
      return { id: `${id}-F${twoDigits(i)}`, typeId: spec.frameType, condition: 'sound' };
    }),
    bays: Array.from({ length: spec.bayCount }, (_, i): Bay => {
      const bayId = `${id}-${twoDigits(i + 1)}`;
      const beams = spec.beams.map((_beam, at) => level(spec, bayId, at + 1));
      return {
        id: bayId,
        clearWidthMm: spec.bayClearMm,
        maxBayLoadKg: spec.bayKg,
        levels: [level(spec, bayId, 0), ...beams],
      };
    }),
    at,
  };
}

function level(spec: AisleSpec, bayId: string, number: number): Level {
  const beam = number === 0 ? null : spec.beams[number - 1]!;
  return {
    level: number,
    beamTopMm: beam?.topMm ?? 0,
    beamHeightMm: beam?.heightMm ?? 0,
    pairCapacityKg: beam?.pairKg ?? null,
    depthPositions: spec.depthPositions,
    maxUnitKg: beam?.unitKg ?? null,
    decked: spec.decked && beam !== null,
    condition: 'sound',
    locations: Array.from({ length: spec.positions * spec.depthPositions }, (_, i) => {
      return `${bayId}-${number}-${i + 1}`;
    }),
  };
}

function ratings(...rows: [maxGapMm: number, capacityKg: number][]): FrameType['ratings'] {
  return rows.map(([maxGapMm, capacityKg]) => ({ maxGapMm, capacityKg }));
}

function twoDigits(n: number): string {
  return String(n).padStart(2, '0');
}
