import type { Metadata } from 'next';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { askWhichTruck } from '@/app/which-truck/ask-which-truck.ts';
import { WhichTruckAnswer } from '@/app/which-truck/which-truck-answer.tsx';
import { WhichTruckForm } from '@/app/which-truck/which-truck-form.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import styles from './which-truck.module.css';

export const metadata: Metadata = { title: 'Which truck' };

/** A load, a place, and the trucks for it. A form that asks by its address: it works before any script has run. */
export default async function WhichTruckPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const answer = askWhichTruck(index, raw, new Date().toISOString());
  const form = (
    <WhichTruckForm
      key={JSON.stringify([raw, units])}
      index={index}
      raw={raw}
      query={answer.query}
      refused={answer.kind === 'refused' ? answer.refused : []}
      units={units}
    />
  );
  return (
    <div className="stack">
      <h1>Which truck?</h1>
      {answer.kind === 'asked' ? (
        <div className={styles.answered}>
          <WhichTruckAnswer index={index} asked={answer.asked} query={answer.query} units={units} />
          <section className="stack no-print" aria-labelledby="again-heading">
            <h2 id="again-heading">Ask again</h2>
            {form}
          </section>
        </div>
      ) : (
        <div className={styles.asking}>{form}</div>
      )}
    </div>
  );
}
