import type { Aisle } from '../model/racking.ts';

/** A beam level as built: what its notice states, and the heaviest unit a careful shift sets down there. */
export type BeamSpec = { topMm: number; heightMm: number; pairKg: number; unitKg: number; fillKg: number };

export type Family = 'TILE' | 'STONE' | 'SANI' | 'BATH' | 'SMALL';

/** Both sides of one aisle are built alike. */
export type AisleSpec = {
  aisle: Aisle;
  frameType: string;
  frameDepthMm: number;
  bayCount: number;
  bayClearMm: number;
  bayKg: number;
  positions: number;
  depthPositions: 1 | 2;
  decked: boolean;
  floorFillKg: number;
  beams: readonly BeamSpec[];
  families: readonly Family[];
};

function beam(topMm: number, heightMm: number, pairKg: number, unitKg: number, fillKg: number): BeamSpec {
  return { topMm, heightMm, pairKg, unitKg, fillKg };
}

const TALL_TILE_BEAMS = [
  beam(1600, 120, 3900, 1250, 1200),
  beam(3200, 120, 3900, 1250, 1150),
  beam(4800, 120, 3600, 1150, 1050),
  beam(6400, 110, 3300, 1000, 950),
  beam(8000, 110, 2800, 850, 800),
];

export const AISLE_SPECS: readonly AisleSpec[] = [
  {
    aisle: { id: 'A1', clearWidthMm: 4600, overheadClearMm: 6500, sprinklerMm: 6200 },
    frameType: 'UF-110',
    frameDepthMm: 900,
    bayCount: 12,
    bayClearMm: 2700,
    bayKg: 9000,
    positions: 2,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1950,
    beams: [beam(1700, 150, 4600, 2050, 1950), beam(3200, 150, 4600, 2050, 1900)],
    families: ['STONE'],
  },
  {
    aisle: { id: 'A2', clearWidthMm: 4800, overheadClearMm: 'none', sprinklerMm: 'none' },
    frameType: 'UF-110',
    frameDepthMm: 900,
    bayCount: 14,
    bayClearMm: 2700,
    bayKg: 8600,
    positions: 2,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1800,
    beams: [
      beam(1900, 130, 3600, 1600, 1500),
      beam(3700, 130, 3200, 1400, 1250),
      beam(5500, 130, 2700, 1100, 1000),
    ],
    families: ['STONE', 'SANI', 'BATH'],
  },
  {
    aisle: { id: 'A3', clearWidthMm: 2950, overheadClearMm: 11000, sprinklerMm: 10600 },
    frameType: 'UF-110',
    frameDepthMm: 1100,
    bayCount: 16,
    bayClearMm: 2700,
    bayKg: 15600,
    positions: 3,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1250,
    beams: TALL_TILE_BEAMS,
    families: ['TILE'],
  },
  {
    aisle: { id: 'A4', clearWidthMm: 2980, overheadClearMm: 11000, sprinklerMm: 'none' },
    frameType: 'UF-110',
    frameDepthMm: 1100,
    bayCount: 16,
    bayClearMm: 2700,
    bayKg: 15600,
    positions: 3,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1250,
    beams: TALL_TILE_BEAMS,
    families: ['TILE', 'TILE', 'SANI'],
  },
  {
    aisle: { id: 'A5', clearWidthMm: 3150, overheadClearMm: 11000, sprinklerMm: 10600 },
    frameType: 'UF-140',
    frameDepthMm: 1100,
    bayCount: 12,
    bayClearMm: 2700,
    bayKg: 23000,
    positions: 3,
    depthPositions: 2,
    decked: false,
    floorFillKg: 1200,
    beams: [
      beam(1800, 140, 6600, 1200, 950),
      beam(3600, 140, 6600, 1200, 950),
      beam(5400, 130, 6000, 1100, 900),
      beam(7200, 130, 5400, 900, 800),
    ],
    families: ['TILE', 'SANI'],
  },
  {
    aisle: { id: 'A6', clearWidthMm: 1900, overheadClearMm: 11600, sprinklerMm: 11200 },
    frameType: 'UF-110',
    frameDepthMm: 1100,
    bayCount: 16,
    bayClearMm: 2700,
    bayKg: 16000,
    positions: 3,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1200,
    beams: [
      beam(1500, 120, 3600, 1100, 1000),
      beam(3000, 120, 3600, 1100, 1000),
      beam(4500, 110, 3300, 1000, 950),
      beam(6000, 110, 3000, 950, 900),
      beam(7500, 110, 3000, 900, 850),
      beam(9000, 110, 2700, 850, 800),
    ],
    families: ['TILE'],
  },
  {
    aisle: { id: 'A7', clearWidthMm: 2600, overheadClearMm: 7200, sprinklerMm: 6900 },
    frameType: 'UF-90',
    frameDepthMm: 800,
    bayCount: 12,
    bayClearMm: 2800,
    bayKg: 6000,
    positions: 4,
    depthPositions: 1,
    decked: true,
    floorFillKg: 350,
    beams: [
      beam(1200, 80, 1800, 400, 350),
      beam(2400, 80, 1800, 400, 350),
      beam(3600, 80, 1800, 400, 350),
      beam(4800, 80, 1600, 350, 300),
    ],
    families: ['SMALL'],
  },
  {
    aisle: { id: 'A8', clearWidthMm: 3200, overheadClearMm: 9000, sprinklerMm: 'none' },
    frameType: 'UF-90',
    frameDepthMm: 1000,
    bayCount: 6,
    bayClearMm: 2700,
    bayKg: 5400,
    positions: 3,
    depthPositions: 1,
    decked: false,
    floorFillKg: 1000,
    beams: [beam(1900, 110, 2700, 1000, 800), beam(3800, 110, 2700, 900, 800)],
    families: ['SANI', 'TILE'],
  },
];
