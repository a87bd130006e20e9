import { describe, expect, it } from 'vitest';
import { killOnce, tallyOf } from './crash.ts';

const KILLS = 5;

/* A few kills of each kind, so that the suite stays short; `npm run bench:crash` makes a hundred. */
describe('a process killed at any moment', () => {
  it.each(['import', 'save'] as const)(
    `(${KILLS} of them) in an endless %s leaves the site before or after a change, whole, and loses none that was kept`,
    async (work) => {
      const deaths = [];
      for (let n = 0; n < KILLS; n += 1) deaths.push(await killOnce(work, n));
      const tally = tallyOf(deaths);
      // most must have died in the midst of a change, else nothing was tried
      expect(tally.duringOld + tally.duringNew, JSON.stringify(tally)).toBeGreaterThan(KILLS / 2);
      expect(tally.duringOld).toBeGreaterThan(0);
    },
  );
});
