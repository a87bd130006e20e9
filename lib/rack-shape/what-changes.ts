import { CONDITIONS, type Run } from '../model/racking.ts';
import type { Links } from './site-of-run.ts';

/**
 * Does a change alter the racking itself, or what an inspection found on it? They are for different people to say.
 *
 * `conditions`: steel that stood before and still stands is marked better than it was, or nothing but marks changes.
 * A worse mark that comes with other steel (two frames that become one) grants nothing and counts as that change.
 */
export function whatChanges(
  saved: Run | null,
  run: Run,
  links: Pick<Links, 'bays' | 'frames'>,
): { steel: boolean; conditions: boolean } {
  if (saved === null) return { steel: true, conditions: marks(run).some((mark) => mark !== 'sound') };
  const steel = JSON.stringify(unmarked(saved)) !== JSON.stringify(unmarked(run));
  const turns: number[] = [];
  for (const [at, frame] of run.frames.entries()) {
    const before = saved.frames[links.frames[at] ?? -1]?.condition ?? 'sound';
    turns.push(CONDITIONS.indexOf(frame.condition) - CONDITIONS.indexOf(before));
  }
  for (const [at, bay] of run.bays.entries()) {
    const before = saved.bays[links.bays[at] ?? -1];
    for (const level of bay.levels) {
      const old = before?.levels.find((entry) => entry.level === level.level)?.condition ?? 'sound';
      turns.push(CONDITIONS.indexOf(level.condition) - CONDITIONS.indexOf(old));
    }
  }
  const better = turns.some((turn) => turn < 0);
  return { steel, conditions: better || (!steel && turns.some((turn) => turn > 0)) };
}

function unmarked(run: Run): Run {
  return {
    ...run,
    frames: run.frames.map((frame) => ({ ...frame, condition: 'sound' })),
    bays: run.bays.map((bay) => ({
      ...bay,
      levels: bay.levels.map((level) => ({ ...level, condition: 'sound' })),
    })),
  };
}

function marks(run: Run): string[] {
  return [
    ...run.frames.map((frame) => frame.condition),
    ...run.bays.flatMap((bay) => bay.levels.map((level) => level.condition)),
  ];
}
