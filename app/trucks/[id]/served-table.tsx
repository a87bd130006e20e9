import Link from 'next/link';
import { writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { truckHref } from '@/app/_parts/screen-links.ts';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import type { ServedRun } from '@/app/trucks/[id]/served-by-run.ts';
import { VERDICTS, type Verdict } from '@/lib/check/step.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { verdictWord } from '@/lib/words/verdict.ts';
import styles from './truck.module.css';

/** A page with a thousand runs would keep everybody else waiting while it is drawn. */
const RUNS_SHOWN = 100;

/** What a truck can take down, run by run, with the whole site below. */
export function ServedTable({
  runs,
  truck,
  isWhole,
}: {
  runs: readonly ServedRun[];
  truck: string;
  /** All runs, however many. */
  isWhole: boolean;
}) {
  const stocked = runs.filter((run) => run.standing > 0);
  const shown = isWhole ? stocked : stocked.slice(0, RUNS_SHOWN);
  if (stocked.length === 0) return <p>Nothing stands in the racks.</p>;
  const total = (of: (run: ServedRun) => number) => stocked.reduce((sum, run) => sum + of(run), 0);
  return (
    <div className="scroll-x">
      <table className={styles.served}>
        <caption className="unseen">
          Standing pallets that this truck may take down, by run and verdict
        </caption>
        <thead>
          <tr>
            <th scope="col">Run</th>
            <th scope="col" className={`number ${styles.standing}`}>
              Standing
            </th>
            {VERDICTS.map((verdict) => (
              <th key={verdict} scope="col" className="number">
                <span className={styles.wide}>
                  <VerdictBadge verdict={verdict} />
                </span>
                <span className={styles.narrow}>{verdictWord(verdict)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((run) => (
            <tr key={run.run}>
              <th scope="row">
                <Link
                  prefetch={false}
                  href={`/racks?${writeLiftQuery({ truck, operation: 'retrieve' })}&run=${encodeURIComponent(run.run)}`}
                >
                  {run.run}
                </Link>
              </th>
              <Counts standing={run.standing} count={(verdict) => run.counts[verdict]} />
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All</th>
            <Counts
              standing={total((run) => run.standing)}
              count={(verdict) => total((run) => run.counts[verdict])}
            />
          </tr>
        </tfoot>
      </table>
      {shown.length < stocked.length ? (
        <p className="no-print">
          The first {shown.length} of {stocked.length} runs; the last line counts all.{' '}
          <Link href={`${truckHref(truck)}?runs=all`} prefetch={false}>
            Show every run
          </Link>
        </p>
      ) : null}
    </div>
  );
}

function Counts({ standing, count }: { standing: number; count: (verdict: Verdict) => number }) {
  return (
    <>
      <td className={`number ${styles.standing}`}>{groupDigits(standing)}</td>
      {VERDICTS.map((verdict) => (
        <td key={verdict} className={`number ${count(verdict) === 0 ? 'soft' : ''}`}>
          {groupDigits(count(verdict))}
        </td>
      ))}
    </>
  );
}
