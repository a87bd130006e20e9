import type { Bay, Level, Run } from '../model/racking.ts';
import { labelBay, readLabels } from './label-run.ts';
import { type BayRange, type ChangeOf, isRange } from './run-change.ts';
import { refuse, type Shaped } from './shape-fault.ts';

/**
 * The run with one beam level at another height in some bays. Nothing else moves: openings, gaps and frame ratings
 * follow. Refused where the beam would meet the one below or the one above.
 */
export function moveBeam(run: Run, { range, level, beamTopMm }: ChangeOf<'move-beam'>): Shaped<Run> {
  return changeLevel(run, range, level, (found, below, above) => {
    if (level === 0) return refuse('level', { is: 'no-such', what: 'level' });
    const moved = { ...found, beamTopMm };
    return openingFault(moved, below, above) ?? { ok: true, value: moved };
  });
}

/** The run with other beams, capacities or decking on one level of some bays. The floor has none of them. */
export function changeLevelFacts(run: Run, { range, level, facts }: ChangeOf<'level-facts'>): Shaped<Run> {
  return changeLevel(run, range, level, (found, below, above) => {
    if (level === 0) return refuse('level', { is: 'no-such', what: 'level' });
    const changed = { ...found, ...facts };
    return openingFault(changed, below, above) ?? { ok: true, value: changed };
  });
}

/** The run with a level marked as an inspection found it. */
export function markLevel(run: Run, { range, level, condition }: ChangeOf<'level-condition'>): Shaped<Run> {
  return changeLevel(run, range, level, (found) => ({ ok: true, value: { ...found, condition } }));
}

/** The run with one more beam level on top of some bays, with the positions of the level below it. */
export function addLevel(run: Run, change: ChangeOf<'add-level'>): Shaped<Run> {
  const { range, beamTopMm, facts, labels } = change;
  return changeBays(run, range, (bay, at) => {
    const top = bay.levels.at(-1);
    if (top === undefined) return refuse('level', { is: 'no-such', what: 'level' });
    const level: Level = {
      ...facts,
      level: top.level + 1,
      beamTopMm,
      depthPositions: top.depthPositions,
      condition: 'sound',
      locations: top.locations,
    };
    const fault = openingFault(level, top, null);
    if (fault !== null) return fault;
    const pieces = readLabels(labels, level.level);
    if (!pieces.ok) return pieces;
    const name = bayNameIn(run, bay, at);
    const named = labelBay(run.id, { ...bay, levels: [level] }, labels, pieces.value, name);
    return { ok: true, value: { ...bay, levels: [...bay.levels, ...named.levels] } };
  });
}

/** The run without one beam level in some bays; the locations there are gone. */
export function removeLevel(run: Run, { range, level }: ChangeOf<'remove-level'>): Shaped<Run> {
  let met = false;
  const changed = changeBays(run, range, (bay) => {
    const levels = bay.levels.filter((entry) => entry.level !== level);
    if (levels.length === bay.levels.length) return { ok: true, value: bay };
    met = true;
    if (levels.length === 0) return refuse('level', { is: 'no-levels' });
    return { ok: true, value: { ...bay, levels } };
  });
  return changed.ok && !met ? refuse('level', { is: 'no-such', what: 'level' }) : changed;
}

/** What a bay is called within its run: its id without the run's, else its place. */
export function bayNameIn(run: Run, bay: Bay, at: number): string {
  const prefix = `${run.id}-`;
  return bay.id.startsWith(prefix) && bay.id.length > prefix.length
    ? bay.id.slice(prefix.length)
    : String(at + 1);
}

/** Changes some bays one by one; the first refusal stands for all. */
export function changeBays(
  run: Run,
  range: BayRange,
  change: (bay: Bay, at: number) => Shaped<Bay>,
): Shaped<Run> {
  if (!isRange(run, range)) return refuse('range', { is: 'no-such', what: 'bay' });
  const bays = [...run.bays];
  for (let at = range.first; at <= range.last; at += 1) {
    const changed = change(bays[at]!, at);
    if (!changed.ok) return changed;
    bays[at] = changed.value;
  }
  return { ok: true, value: { ...run, bays } };
}

/** Bays of a range that lack the level are passed over, unless all of them do. */
function changeLevel(
  run: Run,
  range: BayRange,
  level: number,
  change: (found: Level, below: Level | null, above: Level | null) => Shaped<Level>,
): Shaped<Run> {
  let met = false;
  const changed = changeBays(run, range, (bay) => {
    const at = bay.levels.findIndex((entry) => entry.level === level);
    const found = bay.levels[at];
    if (found === undefined) return { ok: true, value: bay };
    met = true;
    const after = change(found, bay.levels[at - 1] ?? null, bay.levels[at + 1] ?? null);
    return after.ok ? { ok: true, value: { ...bay, levels: bay.levels.with(at, after.value) } } : after;
  });
  return changed.ok && !met ? refuse('level', { is: 'no-such', what: 'level' }) : changed;
}

/** A beam's underside stands above the level below, and the underside of the next beam above this one. */
function openingFault(level: Level, below: Level | null, above: Level | null): Shaped<never> | null {
  const belowMm = below?.beamTopMm ?? 0;
  if (
    level.beamTopMm - level.beamHeightMm <= belowMm &&
    (belowMm > 0 || level.beamTopMm < level.beamHeightMm)
  )
    return refuse('beamTopMm', { is: 'no-opening', belowMm });
  if (above !== null && above.beamTopMm - above.beamHeightMm <= level.beamTopMm)
    return refuse('beamTopMm', { is: 'no-opening-above', aboveMm: above.beamTopMm - above.beamHeightMm });
  return null;
}
