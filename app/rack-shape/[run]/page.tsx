import type { Metadata } from 'next';
import Link from 'next/link';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { idOfRoute } from '@/app/_parts/screen-links.ts';
import { RackShapeView } from '@/app/rack-shape/rack-shape-view.tsx';
import { RunLinks } from '@/app/rack-shape/run-links.tsx';
import { SavedStrip } from '@/app/rack-shape/saved-strip.tsx';
import { readShapeQuery } from '@/app/rack-shape/shape-query.ts';
import { may } from '@/lib/model/permissions.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

type Props = { params: Promise<{ run: string }>; searchParams: Promise<RawQuery> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `Run ${idOfRoute((await params).run)}` };
}

/** One run, to be changed bay by bay. */
export default async function RunShapePage({ params, searchParams }: Props) {
  const { role } = await requirePermission('read');
  const [snapshot, { run }, raw] = await Promise.all([siteSnapshot(), params, searchParams]);
  if (snapshot === null) return <NoSite />;
  const runId = idOfRoute(run);
  const { savedRevision, isUndone } = readShapeQuery(raw);
  return (
    <div className="stack">
      <div className="row">
        <h1>Run {runId}</h1>
        <Link href={`/racks?run=${encodeURIComponent(runId)}`}>Its verdicts</Link>
        <Link href="/rack-shape">A new run</Link>
      </div>
      {savedRevision === null ? null : <SavedStrip revision={savedRevision} isUndone={isUndone} />}
      <RunLinks site={snapshot.site} here={runId} />
      <RackShapeView
        siteName={snapshot.site.site.name}
        revision={snapshot.revision}
        mode={{ kind: 'edit', runId }}
        mayChange={{ racks: may(role, 'change-racks'), inspection: may(role, 'record-inspection') }}
      />
    </div>
  );
}
