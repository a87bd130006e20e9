import { VERDICTS, type Verdict } from '../check/step.ts';
import { NO_ANSWER } from './question.ts';

export type VerdictShift = { from: Verdict; to: Verdict; count: number };

/** How many places were asked, how many of them have another best verdict than before, and which became which. */
export type VerdictShifts = { asked: number; changed: number; shifts: VerdictShift[] };

/**
 * What becomes of the best verdicts of the same places? Both as summariseLocations gives them; a place where nothing is
 * asked counts in neither. Listed from the best verdict before, and the worst after, down.
 */
export function verdictShifts(before: Uint8Array, after: Uint8Array): VerdictShifts {
  if (before.length !== after.length) throw new Error(`${before.length} and ${after.length} places compared`);
  const counts = new Uint32Array(VERDICTS.length * VERDICTS.length);
  let asked = 0;
  for (let at = 0; at < before.length; at += 1) {
    const [from, to] = [before[at]!, after[at]!];
    if (from === NO_ANSWER || to === NO_ANSWER) continue;
    asked += 1;
    counts[from * VERDICTS.length + to]! += 1;
  }
  const shifts = VERDICTS.flatMap((from, row) =>
    VERDICTS.map((to, column) => ({ from, to, count: counts[row * VERDICTS.length + column]! }))
      .filter(({ to: became, count }) => became !== from && count > 0)
      .reverse(),
  );
  return { asked, changed: shifts.reduce((sum, { count }) => sum + count, 0), shifts };
}
