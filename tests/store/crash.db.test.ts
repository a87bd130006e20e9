import { describe, expect, it } from 'vitest';
import { type Death, killOnce, tallyOf } from './crash.ts';

const HITS = 3;
const MOST_KILLS = 40;

/*
 * A few kills of each kind, so that the suite stays short; `npm run bench:crash` makes a hundred. A kill that falls
 * between two changes tries nothing, and on a busy machine several in a row do: go on until enough have hit.
 */
describe('a process killed at any moment', () => {
  it.each(['import', 'save'] as const)(
    `(till ${HITS} hit it in the midst) in an endless %s leaves the site before or after a change, whole, and loses none that was kept`,
    async (work) => {
      const deaths: Death[] = [];
      const hasHit = ({ duringOld, duringNew }: ReturnType<typeof tallyOf>) =>
        duringOld > 0 && duringOld + duringNew >= HITS;
      while (deaths.length < MOST_KILLS && !hasHit(tallyOf(deaths))) {
        deaths.push(await killOnce(work, deaths.length));
      }
      const tally = tallyOf(deaths);
      expect(hasHit(tally), JSON.stringify(tally)).toBe(true);
    },
  );
});
