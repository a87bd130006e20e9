import type { Bay, Level, Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';

type RackRecord = Record<string, unknown>;

/**
 * The racks as rows, one a location. A level without locations, a bay without levels and a run without bays have one
 * row each that says so by its blanks.
 */
export function rackRecords(site: Site): RackRecord[] {
  return site.runs.flatMap((run) => {
    const ofRun = recordOfRun(run);
    if (run.bays.length === 0) {
      const [frame] = run.frames;
      const left = {
        leftFrame: frame?.id,
        leftFrameType: frame?.typeId,
        leftFrameCondition: frame?.condition,
      };
      return [{ ...ofRun, ...left }];
    }
    return run.bays.flatMap((bay, at) => {
      const ofBay = { ...ofRun, ...recordOfBay(run, bay, at) };
      if (bay.levels.length === 0) return [ofBay];
      return bay.levels.flatMap((level) => recordsOfLevel(level).map((record) => ({ ...ofBay, ...record })));
    });
  });
}

function recordOfRun(run: Run): RackRecord {
  return {
    run: run.id,
    aisle: run.aisleId,
    frameDepthMm: run.frameDepthMm,
    'at.xMm': run.at?.xMm,
    'at.yMm': run.at?.yMm,
    'at.headingDeg': run.at?.headingDeg,
  };
}

function recordOfBay(run: Run, bay: Bay, at: number): RackRecord {
  const [left, right] = [run.frames[at]!, run.frames[at + 1]!];
  return {
    bay: bay.id,
    bayOrder: at + 1,
    bayClearWidthMm: bay.clearWidthMm,
    maxBayLoadKg: bay.maxBayLoadKg,
    leftFrame: left.id,
    leftFrameType: left.typeId,
    leftFrameCondition: left.condition,
    rightFrame: right.id,
    rightFrameType: right.typeId,
    rightFrameCondition: right.condition,
  };
}

function recordsOfLevel(level: Level): RackRecord[] {
  const ofLevel = {
    level: level.level,
    beamTopMm: level.beamTopMm,
    beamHeightMm: level.beamHeightMm,
    pairCapacityKg: level.pairCapacityKg,
    maxUnitKg: level.maxUnitKg,
    depthPositions: level.depthPositions,
    decked: level.decked,
    levelCondition: level.condition,
  };
  if (level.locations.length === 0) return [ofLevel];
  const perRow = level.locations.length / level.depthPositions;
  return level.locations.map((location, at) => ({
    ...ofLevel,
    location,
    row: at < perRow ? 'front' : 'rear',
    position: (at < perRow ? at : at - perRow) + 1,
  }));
}
