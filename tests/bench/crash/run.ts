import { killOnce, tallyOf } from '../../store/crash.ts';

/*
 * A hundred processes killed at moments of a seed, half of them importing, half saving: run by `npm run bench:crash`.
 * Ends with an error at the first that leaves anything but the site before or after a change.
 */
const KILLS = Number(process.env.KILLS ?? 100);

const start = performance.now();
for (const work of ['import', 'save'] as const) {
  const deaths = [];
  for (let n = 0; n < KILLS / 2; n += 1) deaths.push(await killOnce(work, 1000 + n));
  const { duringOld, duringNew, between } = tallyOf(deaths);
  console.log(
    `${work}: ${deaths.length} killed; ${duringOld + duringNew} in the midst of a change (${duringOld} left the site before it, ${duringNew} the one after), ${between} between two; every site whole`,
  );
}
console.log(`${((performance.now() - start) / 1000).toFixed(0)} s`);
