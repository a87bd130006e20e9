import type { Metadata } from 'next';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { HandPickForm } from '@/app/hand-pick/hand-pick-form.tsx';
import { readHandPick } from '@/app/hand-pick/hand-pick-query.ts';
import { HandPickView } from '@/app/hand-pick/hand-pick-view.tsx';
import { HeaviestPicks } from '@/app/hand-pick/heaviest-picks.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import styles from './hand-pick.module.css';

export const metadata: Metadata = { title: 'Pick by hand' };

/** One case lifted by hand from a pick face, with the working. The address is the question: see readHandPick. */
export default async function HandPickPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const read = readHandPick(index, raw);
  return (
    <div className={styles.page}>
      {read.kind === 'asked' ? (
        <HandPickView face={read.face} job={read.job} index={index} units={units} />
      ) : (
        <h1>Pick by hand</h1>
      )}
      {read.kind === 'refused' ? (
        <AskedRefusals title="This pick cannot be judged as it was asked" refused={read.refused} />
      ) : null}
      {read.kind === 'nothing' ? <HeaviestPicks index={index} units={units} /> : null}
      <HandPickForm raw={raw} face={read.kind === 'asked' ? read.face : null} units={units} />
      {read.kind === 'nothing' ? null : <HeaviestPicks index={index} units={units} />}
    </div>
  );
}
