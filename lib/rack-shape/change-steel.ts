import type { Run } from '../model/racking.ts';
import { changeBays } from './change-levels.ts';
import type { ChangeOf } from './run-change.ts';
import { refuse, type Shaped } from './shape-fault.ts';

/** The run with another clear width or bay load in some bays. */
export function changeBayFacts(run: Run, { range, facts }: ChangeOf<'bay-facts'>): Shaped<Run> {
  return changeBays(run, range, (bay) => ({ ok: true, value: { ...bay, ...facts } }));
}

/** The run with some frames marked as an inspection found them. */
export function markFrames(run: Run, { range, condition }: ChangeOf<'frame-condition'>): Shaped<Run> {
  return changeFrames(run, range, (frame) => ({ ...frame, condition }));
}

/** The run with some frames of another type. */
export function changeFrameType(run: Run, { range, typeId }: ChangeOf<'frame-type'>): Shaped<Run> {
  return changeFrames(run, range, (frame) => ({ ...frame, typeId }));
}

/** Here a range counts frames: frame i stands left of bay i, the last one closes the run. */
function changeFrames(
  run: Run,
  range: ChangeOf<'frame-type'>['range'],
  change: (frame: Run['frames'][number]) => Run['frames'][number],
): Shaped<Run> {
  const { first, last } = range;
  const whole = Number.isInteger(first) && Number.isInteger(last);
  if (!whole || first < 0 || last < first || last > run.bays.length)
    return refuse('range', { is: 'no-such', what: 'bay' });
  const frames = run.frames.map((frame, at) => (at >= first && at <= last ? change(frame) : frame));
  return { ok: true, value: { ...run, frames } };
}
