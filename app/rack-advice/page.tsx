import type { Metadata } from 'next';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { BeamAdvice } from '@/app/rack-advice/beam-advice.tsx';
import { DamageAdvice } from '@/app/rack-advice/damage-advice.tsx';
import { FrameAdvice } from '@/app/rack-advice/frame-advice.tsx';
import { RackForm } from '@/app/rack-advice/rack-form.tsx';
import { readRackQuery } from '@/app/rack-advice/rack-query.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { ADVICE_CAUTIONS } from '@/lib/words/rack-advice.ts';
import styles from './rack-advice.module.css';

export const metadata: Metadata = { title: 'Steel of a bay' };

/** Handbook figures for one bay's beams and frames, and the class of a measured bend. Advice only. */
export default async function RackAdvicePage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  await requirePermission('read');
  const [snapshot, raw, units] = await Promise.all([siteSnapshot(), searchParams, readUnits()]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const query = readRackQuery(index, raw);
  return (
    <div className={styles.page}>
      <h1>Steel of {query.bay === null ? 'a bay' : `bay ${query.bay.bay.id}`}</h1>
      <CautionStrip title="Advice, never clearance" cautions={ADVICE_CAUTIONS} />
      <AskedRefusals title="Not all of this could be read" refused={query.refused} />
      {query.damage === null ? null : <DamageAdvice bend={query.damage} units={units} />}
      {query.bay === null ? null : (
        <>
          <BeamAdvice at={query.bay} inertiaMm4={query.inertiaMm4} offset={query.offset} units={units} />
          <FrameAdvice at={query.bay} plate={query.plate} index={index} units={units} />
        </>
      )}
      <RackForm raw={raw} units={units} />
    </div>
  );
}
