import { cameAs, type Expected, nearestTo, type Refusal } from './refusal.ts';

type Raw = Record<string, unknown>;

/** How many unresolved references get a nearest id beside them: looking for one takes a pass over the whole list. */
const MOST_GUESSES = 50;

/**
 * Do the facts of a site agree with one another? Ids unique in their list (locations in the whole site), references
 * that resolve, n + 1 frames for n bays, levels in order, facts that do not contradict each other.
 *
 * Works on the value as it was read and passes over whatever has the wrong type (the schema names that), so that one
 * reading lists every fault of both kinds.
 */
export function disagreements(raw: unknown): Refusal[] {
  const refusals: Refusal[] = [];
  const refuse = (path: string, came: unknown, expected: Expected) =>
    refusals.push({ path, came: cameAs(came), expected });
  const site = record(raw);

  const unique = (entries: readonly (readonly [string, unknown])[]): Set<string> => {
    const first = new Map<string, string>();
    for (const [path, id] of entries) {
      if (typeof id !== 'string') continue;
      const firstAt = first.get(id);
      if (firstAt === undefined) first.set(id, path);
      else refuse(path, id, { is: 'unique', firstAt });
    }
    return new Set(first.keys());
  };
  const uniqueIds = (list: string) =>
    unique(records(site[list]).map((entry, at) => [`$.${list}[${at}].id`, entry.id]));
  let guesses = 0;
  const resolves = (path: string, id: unknown, ids: Set<string>, list: string) => {
    if (typeof id !== 'string' || ids.has(id)) return;
    const nearest = guesses++ < MOST_GUESSES ? nearestTo(id, ids) : null;
    refuse(path, id, { is: 'id-in', list, nearest });
  };

  const palletTypes = uniqueIds('palletTypes');
  const frameTypes = uniqueIds('frameTypes');
  const aisles = uniqueIds('aisles');
  uniqueIds('runs');
  uniqueIds('docks');
  const trucks = uniqueIds('trucks');
  uniqueIds('operators');
  const loads = uniqueIds('loads');

  const locations: [string, unknown][] = [];
  for (const [r, run] of records(site.runs).entries()) {
    const at = `$.runs[${r}]`;
    resolves(`${at}.aisleId`, run.aisleId, aisles, '$.aisles');
    const frames = records(run.frames);
    const bays = records(run.bays);
    unique(frames.map((frame, f) => [`${at}.frames[${f}].id`, frame.id]));
    unique(bays.map((bay, b) => [`${at}.bays[${b}].id`, bay.id]));
    for (const [f, frame] of frames.entries()) {
      resolves(`${at}.frames[${f}].typeId`, frame.typeId, frameTypes, '$.frameTypes');
    }
    if (Array.isArray(run.frames) && Array.isArray(run.bays) && frames.length !== bays.length + 1) {
      refuse(`${at}.frames`, run.frames, { is: 'frames-for-bays', bays: bays.length });
    }
    for (const [b, bay] of bays.entries()) {
      for (const [l, level] of records(bay.levels).entries()) {
        const levelAt = `${at}.bays[${b}].levels[${l}]`;
        levelOrder(levelAt, level, l === 0 ? null : records(bay.levels)[l - 1]!, refuse);
        const ids = Array.isArray(level.locations) ? level.locations : [];
        if (level.depthPositions === 2 && ids.length % 2 !== 0) {
          refuse(`${levelAt}.locations`, ids, { is: 'even-positions' });
        }
        for (const [i, id] of ids.entries()) locations.push([`${levelAt}.locations[${i}]`, id]);
      }
    }
  }
  const locationIds = unique(locations);

  for (const [t, truck] of records(site.trucks).entries()) truckAgrees(`$.trucks[${t}]`, truck, refuse);
  for (const [l, load] of records(site.loads).entries()) {
    resolves(`$.loads[${l}].palletType`, load.palletType, palletTypes, '$.palletTypes');
  }
  const stock = records(site.stock);
  unique(stock.map((row, s) => [`$.stock[${s}].location`, row.location]));
  for (const [s, row] of stock.entries()) {
    resolves(`$.stock[${s}].location`, row.location, locationIds, '$.runs (locations)');
    resolves(`$.stock[${s}].load`, row.load, loads, '$.loads');
  }
  for (const [c, check] of records(site.checks).entries()) {
    resolves(`$.checks[${c}].truck`, check.truck, trucks, '$.trucks');
  }
  return refusals;
}

type Refuse = (path: string, came: unknown, expected: Expected) => void;

function levelOrder(at: string, level: Raw, below: Raw | null, refuse: Refuse): void {
  if (level.level === 0 && isNumber(level.beamTopMm) && level.beamTopMm !== 0) {
    refuse(`${at}.beamTopMm`, level.beamTopMm, { is: 'floor-at-zero' });
  }
  if (isNumber(level.level) && level.level > 0) {
    if (level.beamTopMm === 0) refuse(`${at}.beamTopMm`, level.beamTopMm, { is: 'beam-above-floor' });
    if (level.beamHeightMm === 0) refuse(`${at}.beamHeightMm`, level.beamHeightMm, { is: 'above', limit: 0 });
  }
  if (below === null) return;
  for (const field of ['level', 'beamTopMm'] as const) {
    const [lower, here] = [below[field], level[field]];
    if (isNumber(lower) && isNumber(here) && here <= lower) {
      refuse(`${at}.${field}`, here, { is: 'higher-than-level-below', field, below: lower });
    }
  }
}

function truckAgrees(at: string, truck: Raw, refuse: Refuse): void {
  const forks = record(truck.forks);
  if (isNumber(forks.armCapacityKg) !== isNumber(forks.armLoadCentreMm)) {
    const [has, lacks] = isNumber(forks.armCapacityKg)
      ? (['armCapacityKg', 'armLoadCentreMm'] as const)
      : (['armLoadCentreMm', 'armCapacityKg'] as const);
    if ((forks[lacks] ?? null) === null)
      refuse(`${at}.forks.${lacks}`, forks[lacks], { is: 'both-or-neither', other: has });
  }
  if (isNumber(truck.loweredMm) && isNumber(truck.extendedMm) && truck.extendedMm < truck.loweredMm) {
    refuse(`${at}.extendedMm`, truck.extendedMm, {
      is: 'at-least-field',
      field: 'loweredMm',
      value: truck.loweredMm,
    });
  }
  if (isNumber(truck.freeLiftMm) && isNumber(truck.maxLiftMm) && truck.freeLiftMm > truck.maxLiftMm) {
    refuse(`${at}.freeLiftMm`, truck.freeLiftMm, {
      is: 'at-most-field',
      field: 'maxLiftMm',
      value: truck.maxLiftMm,
    });
  }
}

function record(value: unknown): Raw {
  return value !== null && typeof value === 'object' && !Array.isArray(value) ? (value as Raw) : {};
}

function records(value: unknown): Raw[] {
  return Array.isArray(value) ? value.map(record) : [];
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
