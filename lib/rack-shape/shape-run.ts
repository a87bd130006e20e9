import { LARGEST_NUMBER } from '../model/quantities.ts';
import type { Bay, Level, Run } from '../model/racking.ts';
import { type LevelShape, MOST, type RunDescription, type Typed } from './description.ts';
import { frameId, labelBays } from './label-run.ts';
import { idRefusals, type Neighbours } from './neighbours.ts';
import type { Shaped, ShapeFault, ShapeRefusal } from './shape-fault.ts';

/**
 * Which run does this description make, or what is wrong or still missing in it?
 *
 * n bays give n + 1 frames, all steel is sound, levels are numbered 1 from the lowest beam (0 the floor, where it is
 * used). A beam's underside must stand above the beam below. Every location is named after the pattern and must be
 * new to the whole site. What comes out is accepted by lib/model beside the same neighbours.
 */
export function shapeRun(description: RunDescription, neighbours: Neighbours): Shaped<Run> {
  const refusals: ShapeRefusal[] = [];
  const refuse = (field: string, fault: ShapeFault) => refusals.push({ field, fault });
  const length = (field: string, typed: Typed) => measure(field, typed, 'length', true, refuse);
  const mass = (field: string, typed: Typed) => measure(field, typed, 'mass', false, refuse);
  const count = (field: string, typed: Typed, most: number) => counted(field, typed, most, refuse);

  const { aisleId, frameTypeId, endFrameTypeId, labels } = description;
  if (!neighbours.aisleIds.has(aisleId)) refuse('aisleId', { is: 'no-such', what: 'aisle' });
  for (const [field, type] of [
    ['frameTypeId', frameTypeId],
    ['endFrameTypeId', endFrameTypeId ?? frameTypeId],
  ] as const)
    if (!neighbours.frameTypeIds.has(type)) refuse(field, { is: 'no-such', what: 'frame-type' });
  const frameDepthMm = length('frameDepthMm', description.frameDepthMm);
  const maxBayLoadKg = mass('maxBayLoadKg', description.maxBayLoadKg);
  const bayCount = count('bayCount', description.bayCount, MOST.bays);
  const widths = bayWidths(description.clearWidthsMm, bayCount, refuse);
  const levels = shapeLevels(description, length, mass, count, refuse);
  if (description.levels.length === 0 && description.floor === null) refuse('levels', { is: 'no-levels' });
  if (description.levels.length > MOST.levels)
    refuse('levels', { is: 'out-of-range', from: 1, to: MOST.levels, of: 'count' });
  for (const key of ['bayStart', 'levelStart', 'positionStart'] as const) {
    if (!Number.isInteger(labels[key]) || labels[key] < 0 || labels[key] > 9999)
      refuse(`labels.${key}`, { is: 'out-of-range', from: 0, to: 9999, of: 'count' });
  }
  const perBay = levels.reduce((sum, level) => sum + level.locations.length, 0);
  if (perBay * (bayCount ?? 1) > MOST.locations)
    refuse('bayCount', { is: 'too-many-locations', most: MOST.locations });
  if (refusals.length > 0 || bayCount === null || frameDepthMm === null) return { ok: false, refusals };

  const bays = widths.map(
    (clearWidthMm): Bay => ({
      id: '',
      clearWidthMm,
      maxBayLoadKg,
      levels: levels.map((level) => ({ ...level })),
    }),
  );
  const named = labelBays(description.id, bays, labels);
  if (!named.ok) return named;
  const run: Run = {
    id: description.id,
    aisleId,
    frameDepthMm,
    frames: Array.from({ length: bayCount + 1 }, (_, at) => ({
      id: frameId(description.id, at),
      typeId: at === 0 || at === bayCount ? (endFrameTypeId ?? frameTypeId) : frameTypeId,
      condition: 'sound',
    })),
    bays: named.value,
    at: null,
  };
  const ids = idRefusals(run, neighbours);
  return ids.length > 0 ? { ok: false, refusals: ids } : { ok: true, value: run };
}

type Refuse = (field: string, fault: ShapeFault) => void;

function measure(field: string, typed: Typed, of: 'length' | 'mass', needed: boolean, refuse: Refuse) {
  if (typed === 'unread') refuse(field, { is: 'not-read' });
  else if (typed === null) {
    if (needed) refuse(field, { is: 'missing' });
  } else if (typed > 0 && typed <= LARGEST_NUMBER) return typed;
  else refuse(field, { is: 'out-of-range', from: 0, to: LARGEST_NUMBER, of });
  return null;
}

function counted(field: string, typed: Typed, most: number, refuse: Refuse): number | null {
  if (typed === 'unread') refuse(field, { is: 'not-read' });
  else if (typed === null) refuse(field, { is: 'missing' });
  else if (Number.isInteger(typed) && typed >= 1 && typed <= most) return typed;
  else refuse(field, { is: 'out-of-range', from: 1, to: most, of: 'count' });
  return null;
}

function bayWidths(
  typed: RunDescription['clearWidthsMm'],
  bayCount: number | null,
  refuse: Refuse,
): readonly number[] {
  if (typed === 'unread') refuse('clearWidthsMm', { is: 'not-read' });
  else if (typed.length === 0) refuse('clearWidthsMm', { is: 'missing' });
  else if (!typed.every((mm) => mm > 0 && mm <= LARGEST_NUMBER))
    refuse('clearWidthsMm', { is: 'out-of-range', from: 0, to: LARGEST_NUMBER, of: 'length' });
  else if (bayCount !== null) {
    if (typed.length === 1) return Array.from({ length: bayCount }, () => typed[0]!);
    if (typed.length === bayCount) return typed;
    refuse('clearWidthsMm', { is: 'wrong-count', expected: bayCount, came: typed.length });
  }
  return [];
}

type ReadMeasure = (field: string, typed: Typed) => number | null;

function shapeLevels(
  { floor, levels }: RunDescription,
  length: ReadMeasure,
  mass: ReadMeasure,
  count: (field: string, typed: Typed, most: number) => number | null,
  refuse: Refuse,
): Level[] {
  const shaped: Level[] = [];
  if (floor !== null) {
    const positions = count('floor.positions', floor.positions, MOST.positions) ?? 0;
    shaped.push({
      level: 0,
      beamTopMm: 0,
      beamHeightMm: 0,
      pairCapacityKg: null,
      depthPositions: floor.depthPositions,
      maxUnitKg: null,
      decked: false,
      condition: 'sound',
      locations: unnamed(positions * floor.depthPositions),
    });
  }
  let belowMm = 0;
  for (const [at, level] of levels.entries()) {
    const field = (key: keyof LevelShape) => `levels[${at}].${key}`;
    const beamTopMm = length(field('beamTopMm'), level.beamTopMm);
    const beamHeightMm = length(field('beamHeightMm'), level.beamHeightMm);
    const positions = count(field('positions'), level.positions, MOST.positions) ?? 0;
    if (beamTopMm !== null && beamHeightMm !== null) {
      if (beamTopMm - beamHeightMm <= belowMm && at > 0)
        refuse(field('beamTopMm'), { is: 'no-opening', belowMm });
      else if (beamTopMm < beamHeightMm) refuse(field('beamTopMm'), { is: 'no-opening', belowMm });
      belowMm = beamTopMm;
    }
    shaped.push({
      level: at + 1,
      beamTopMm: beamTopMm ?? 0,
      beamHeightMm: beamHeightMm ?? 0,
      pairCapacityKg: mass(field('pairCapacityKg'), level.pairCapacityKg),
      depthPositions: level.depthPositions,
      maxUnitKg: mass(field('maxUnitKg'), level.maxUnitKg),
      decked: level.decked,
      condition: 'sound',
      locations: unnamed(positions * level.depthPositions),
    });
  }
  return shaped;
}

function unnamed(count: number): string[] {
  return Array.from({ length: count }, () => '');
}
