/**
 * One bay of two positions over a floor, one truck, two loads: small enough to be checked by hand. As the text of a
 * site file leaves out what it may leave out.
 */
export const SMALL_SITE = {
  format: 'tinewise-site',
  version: 1,
  site: { name: 'One bay' },
  palletTypes: [{ id: 'P', depthMm: 1200, widthMm: 800, tareKg: 25, entryHeightMm: 100 }],
  frameTypes: [{ id: 'F', ratings: [{ maxGapMm: 3000, capacityKg: 4000 }] }],
  aisles: [{ id: 'A', clearWidthMm: 4000, overheadClearMm: 6000, sprinklerMm: 'none' }],
  runs: [
    {
      id: 'R',
      aisleId: 'A',
      frameDepthMm: 1000,
      frames: [
        { id: 'R-0', typeId: 'F', condition: 'sound' },
        { id: 'R-1', typeId: 'F', condition: 'sound' },
      ],
      bays: [
        {
          id: 'B',
          clearWidthMm: 2700,
          maxBayLoadKg: 5000,
          levels: [
            level(0, 0, 0, null, null, ['floor-1', 'floor-2']),
            level(1, 3000, 120, 2400, 1000, ['beam-1', 'beam-2']),
          ],
        },
      ],
    },
  ],
  trucks: [
    {
      id: 'T',
      name: 'The truck',
      kind: 'counterbalance',
      power: 'electric',
      maxLiftMm: 5000,
      loweredMm: 2200,
      extendedMm: 5700,
      reachDepth: 1,
      turning: { outsideRadiusMm: 2000, loadDistanceMm: 450, insideOffsetMm: 700 },
      forks: { lengthMm: 1100, armCapacityKg: 1500, armLoadCentreMm: 500 },
      plate: {
        ratings: [
          { mast: 'vertical', liftHeightMm: 4000, loadCentreMm: 600, capacityKg: 3000 },
          { mast: 'vertical', liftHeightMm: 5000, loadCentreMm: 600, capacityKg: 2000 },
        ],
      },
    },
  ],
  operators: [{ id: 'O', name: 'The operator', authorisations: [{ kind: 'reach', expires: null }] }],
  loads: [load('asked', 900, 'declared'), load('standing', 1000, 'weighed')],
  stock: [{ location: 'beam-2', load: 'standing' }],
};

function level(
  level: number,
  beamTopMm: number,
  beamHeightMm: number,
  pairCapacityKg: number | null,
  maxUnitKg: number | null,
  locations: string[],
) {
  const how = { depthPositions: 1, decked: false, condition: 'sound' };
  return { level, beamTopMm, beamHeightMm, pairCapacityKg, maxUnitKg, ...how, locations };
}

function load(id: string, grossKg: number, massBasis: string) {
  const size = { depthMm: 1200, widthMm: 800, heightMm: 1000 };
  return { id, name: `The ${id} load`, palletType: 'P', grossKg, massBasis, ...size };
}
