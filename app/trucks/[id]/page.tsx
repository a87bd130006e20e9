import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { SavedLine } from '@/app/_entry/saved-line.tsx';
import { Allowed } from '@/app/_parts/allowed.tsx';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import { compiledSiteOf } from '@/app/_parts/compiled-site-of.ts';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { LoadChart } from '@/app/_parts/load-chart.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { PlateTable } from '@/app/_parts/plate-table.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { idOfRoute, truckHref } from '@/app/_parts/screen-links.ts';
import { PlatePhotoFigure } from '@/app/trucks/[id]/plate-photo-figure.tsx';
import { servedByRun } from '@/app/trucks/[id]/served-by-run.ts';
import { ServedTable } from '@/app/trucks/[id]/served-table.tsx';
import { TruckFacts } from '@/app/trucks/[id]/truck-facts.tsx';
import { TruckService } from '@/app/trucks/[id]/truck-service.tsx';
import { plateGaps } from '@/lib/audit/plate-gaps.ts';
import { readPlatePhoto } from '@/lib/store/plate-photos.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';
import { findingWithAdvice } from '@/lib/words/finding.ts';
import styles from './truck.module.css';

type Params = { params: Promise<{ id: string }>; searchParams: Promise<RawQuery> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: `Truck ${idOfRoute((await params).id)}` };
}

export default async function TruckPage({ params, searchParams }: Params) {
  await requirePermission('read');
  const [snapshot, { id }, units, raw] = await Promise.all([
    siteSnapshot(),
    params,
    readUnits(),
    searchParams,
  ]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const truck = index.trucks.get(idOfRoute(id));
  if (truck === undefined) notFound();
  const photo = readPlatePhoto(serverDatabase(), truck.id);
  const nowIso = new Date().toISOString();
  return (
    <div className={styles.page}>
      <header>
        <p>
          <Link href="/trucks">Trucks</Link>
        </p>
        <h1>
          {truck.id} <span className="soft">{truck.name}</span>
        </h1>
        <div className={`row no-print ${styles.actions}`}>
          <Allowed what="change-trucks">
            <Link href={`${truckHref(truck.id)}/edit`} className="button">
              Change it
            </Link>
            <Link href={`/trucks/new?copy=${encodeURIComponent(truck.id)}`} className="button">
              A new truck like it
            </Link>
          </Allowed>
          <Link href={`/wear?truck=${encodeURIComponent(truck.id)}`} className="button">
            Wear measured on it
          </Link>
        </div>
      </header>
      <SavedLine raw={raw} />
      <CautionStrip
        title="About this plate"
        cautions={plateGaps({ index })
          .filter((finding) => finding.truck === truck.id)
          .map((finding) => findingWithAdvice(finding, units))}
      />
      <div className={styles.pair}>
        <section className="sheet stack" aria-labelledby="plate-heading">
          <h2 id="plate-heading">Capacity plate</h2>
          <LoadChart truck={truck} units={units} />
          <PlateTable truck={truck} units={units} />
          {photo === null ? null : <PlatePhotoFigure photo={photo} />}
          <p className="soft dense">
            A line proves its mass for every lower lift and shorter load centre, and nothing beyond. The plate
            on the truck governs.
          </p>
        </section>
        <div className="stack">
          <section className="sheet stack" aria-labelledby="service-heading">
            <h2 id="service-heading">Fit for service</h2>
            <TruckService index={index} truck={truck} nowIso={nowIso} />
          </section>
          <section className="sheet stack" aria-labelledby="facts-heading">
            <h2 id="facts-heading">Dimensions</h2>
            <TruckFacts truck={truck} units={units} />
          </section>
        </div>
      </div>
      <section className="sheet stack" aria-labelledby="served-heading">
        <h2 id="served-heading">What it can take down</h2>
        <p className="soft">
          Every pallet that stands in the racks now, asked with this truck as if its check had passed.
        </p>
        <ServedTable
          runs={servedByRun(compiledSiteOf(index), truck.id)}
          truck={truck.id}
          isWhole={raw.runs === 'all'}
        />
      </section>
    </div>
  );
}
