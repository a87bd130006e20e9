import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { DeletePart } from '@/app/_entry/delete-part.tsx';
import { NoScript } from '@/app/_entry/no-script.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { idOfRoute, loadHref } from '@/app/_parts/screen-links.ts';
import { standingPlaces } from '@/app/_parts/standing-places.ts';
import { deleteLoadEntry } from '@/app/loads/_entry/actions.ts';
import { groupsOf } from '@/app/loads/_entry/groups-of.ts';
import { LoadEntry } from '@/app/loads/_entry/load-entry.tsx';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { standsSentence } from '@/lib/words/entry.ts';

type Params = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: `Change load ${idOfRoute((await params).id)}` };
}

/** A load to be changed, or deleted. */
export default async function EditLoadPage({ params }: Params) {
  await requirePermission('change-loads');
  const [snapshot, { id }] = await Promise.all([siteSnapshot(), params]);
  if (snapshot === null) return <NoSite />;
  const { index, revision } = snapshot;
  const load = index.loads.get(idOfRoute(id));
  if (load === undefined) notFound();
  const places = standingPlaces(index).get(load.id) ?? [];
  return (
    <div className="stack">
      <p>
        <Link href="/loads">Loads</Link>, <Link href={loadHref(load.id)}>{load.id}</Link>
      </p>
      <h1>Change load {load.id}</h1>
      <p className="soft">{standsSentence(places)}</p>
      <NoScript />
      <LoadEntry
        saved={load}
        copyOf={null}
        revision={revision}
        palletTypes={index.site.palletTypes}
        groups={groupsOf(index.site)}
        policy={index.policy}
        isStanding={places.length > 0}
      />
      <DeletePart what="load" id={load.id} basedOn={revision} action={deleteLoadEntry} list="/loads">
        <p>{standsSentence(places)}</p>
      </DeletePart>
    </div>
  );
}
