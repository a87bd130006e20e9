import type { Metadata } from 'next';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { WearForm } from '@/app/wear/wear-form.tsx';
import { readWearQuery } from '@/app/wear/wear-query.ts';
import { WearResults } from '@/app/wear/wear-results.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { WEAR_CAUTIONS } from '@/lib/words/wear.ts';
import styles from './wear.module.css';

export const metadata: Metadata = { title: 'Wear of a truck' };

/** What the walk round measured on a truck, held against published limits. */
export default async function WearPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const query = readWearQuery(snapshot.index, raw);
  const month = new Date().toISOString().slice(0, 7);
  return (
    <div className={styles.page}>
      <h1>Wear of {query.truck === null ? 'a truck' : query.truck.id}</h1>
      <CautionStrip title="A measurement is not an examination" cautions={WEAR_CAUTIONS} />
      <AskedRefusals title="Not all of this could be read" refused={query.refused} />
      <WearResults query={query} month={month} units={units} />
      <WearForm raw={raw} bladeMm={query.truck?.forks.lengthMm ?? null} units={units} />
    </div>
  );
}
