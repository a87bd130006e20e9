import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { DeletePart } from '@/app/_entry/delete-part.tsx';
import { NoScript } from '@/app/_entry/no-script.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { idOfRoute, truckHref } from '@/app/_parts/screen-links.ts';
import { deleteTruckEntry } from '@/app/trucks/_entry/actions.ts';
import { attachmentsOf } from '@/app/trucks/_entry/attachments-of.ts';
import { TruckEntry } from '@/app/trucks/_entry/truck-entry.tsx';
import { readPlatePhoto } from '@/lib/store/plate-photos.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';
import { counted } from '@/lib/words/plain-words.ts';

type Params = { params: Promise<{ id: string }> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: `Change truck ${idOfRoute((await params).id)}` };
}

/** A truck to be changed, or deleted. */
export default async function EditTruckPage({ params }: Params) {
  await requirePermission('change-trucks');
  const [snapshot, { id }] = await Promise.all([siteSnapshot(), params]);
  if (snapshot === null) return <NoSite />;
  const { index, revision } = snapshot;
  const truck = index.trucks.get(idOfRoute(id));
  if (truck === undefined) notFound();
  const checks = index.checksOf.get(truck.id)?.length ?? 0;
  return (
    <div className="stack">
      <p>
        <Link href="/trucks">Trucks</Link>, <Link href={truckHref(truck.id)}>{truck.id}</Link>
      </p>
      <h1>Change truck {truck.id}</h1>
      {truck.hold === null ? null : <p>It is on hold, and stays so whatever is changed here.</p>}
      <NoScript />
      <TruckEntry
        saved={truck}
        copyOf={null}
        revision={revision}
        photo={readPlatePhoto(serverDatabase(), truck.id)}
        attachments={attachmentsOf(index.site)}
      />
      <DeletePart what="truck" id={truck.id} basedOn={revision} action={deleteTruckEntry} list="/trucks">
        <p>
          {counted(checks, 'check')} on record {checks === 1 ? 'goes' : 'go'} with it; undoing brings them
          back. A truck that only stands still is put on hold, not deleted.
        </p>
      </DeletePart>
    </div>
  );
}
