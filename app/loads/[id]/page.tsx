import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { SavedLine } from '@/app/_entry/saved-line.tsx';
import { Allowed } from '@/app/_parts/allowed.tsx';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import { type RawQuery, readLiftQuery } from '@/app/_parts/lift-query.ts';
import { LoadSideView } from '@/app/_parts/load-side-view.tsx';
import { MassArithmetic } from '@/app/_parts/mass-arithmetic.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { idOfRoute, loadHref } from '@/app/_parts/screen-links.ts';
import { standingPlacesOf } from '@/app/_parts/standing-places.ts';
import { handPickHref } from '@/app/hand-pick/hand-pick-query.ts';
import { LoadFacts } from '@/app/loads/[id]/load-facts.tsx';
import { LoadPlaces } from '@/app/loads/[id]/load-places.tsx';
import { palletOf } from '@/lib/model/site-index.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import styles from './load.module.css';

type Params = { params: Promise<{ id: string }>; searchParams: Promise<RawQuery> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: `Load ${idOfRoute((await params).id)}` };
}

export default async function LoadPage({ params, searchParams }: Params) {
  await requirePermission('read');
  const [snapshot, { id }, raw, units] = await Promise.all([
    siteSnapshot(),
    params,
    searchParams,
    readUnits(),
  ]);
  if (snapshot === null) return <NoSite />;
  const { index } = snapshot;
  const load = index.loads.get(idOfRoute(id));
  if (load === undefined) notFound();
  const pallet = palletOf(index, load);
  const { query, refused } = readLiftQuery({ asOf: raw.asOf });
  const places = standingPlacesOf(index, [load.id]).get(load.id) ?? [];
  return (
    <div className={styles.page}>
      <header>
        <p>
          <Link href="/loads">Loads</Link>
        </p>
        <div className={styles.top}>
          <h1>
            {load.id} <span className="soft">{load.name}</span>
          </h1>
          <Link href={`/which-truck?load=${encodeURIComponent(load.id)}`} className="button">
            Which truck can place it?
          </Link>
        </div>
        <div className={`row no-print ${styles.actions}`}>
          <Allowed what="change-loads">
            <Link href={`${loadHref(load.id)}/edit`} className="button">
              Change it
            </Link>
            <Link href={`/loads/new?copy=${encodeURIComponent(load.id)}`} className="button">
              A new load like it
            </Link>
          </Allowed>
          {load.handPick === null || places[0] === undefined ? null : (
            <Link href={handPickHref({ location: places[0], load: load.id })} className="button">
              Picks by hand from it
            </Link>
          )}
        </div>
      </header>
      <SavedLine raw={raw} />
      <div className={styles.pair}>
        <div className="stack">
          <section className="sheet stack" aria-labelledby="mass-heading">
            <h2 id="mass-heading">What it weighs</h2>
            <MassArithmetic load={load} pallet={pallet} policy={index.policy} units={units} />
          </section>
          <section className="sheet stack" aria-labelledby="facts-heading">
            <h2 id="facts-heading">Size and pallet</h2>
            <LoadFacts load={load} pallet={pallet} units={units} />
          </section>
        </div>
        <section className="sheet stack" aria-labelledby="side-heading">
          <h2 id="side-heading">From the side, to scale</h2>
          <LoadSideView load={load} pallet={pallet} units={units} />
        </section>
      </div>
      <section className="stack" aria-labelledby="places-heading">
        <h2 id="places-heading">Where it stands, and which trucks can take it down</h2>
        <AskedRefusals title="Judged as of now: the time could not be read" refused={refused} />
        <LoadPlaces
          index={index}
          load={load}
          places={places}
          time={query.time}
          nowIso={new Date().toISOString()}
          units={units}
        />
      </section>
    </div>
  );
}
