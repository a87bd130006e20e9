import type { Metadata } from 'next';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { ListLinks } from '@/app/_parts/list-links.tsx';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { RackShapeView } from '@/app/rack-shape/rack-shape-view.tsx';
import { RunLinks } from '@/app/rack-shape/run-links.tsx';
import { SavedStrip } from '@/app/rack-shape/saved-strip.tsx';
import { readShapeQuery } from '@/app/rack-shape/shape-query.ts';
import { may } from '@/lib/model/permissions.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';

export const metadata: Metadata = { title: 'Racks by shape' };

/** A new run from a few figures; `copy` names a run to begin from. */
export default async function RackShapePage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  const { role } = await requirePermission('read');
  const [snapshot, raw] = await Promise.all([siteSnapshot(), searchParams]);
  if (snapshot === null) return <NoSite />;
  const { copyOf, savedRevision, isUndone } = readShapeQuery(raw);
  const { site } = snapshot;
  return (
    <div className="stack">
      <h1>Racks by shape</h1>
      {savedRevision === null ? null : <SavedStrip revision={savedRevision} isUndone={isUndone} />}
      <RunLinks site={site} here={null} />
      <div className="row no-print">
        <ListLinks list="locations" />
      </div>
      {!may(role, 'change-racks') ? (
        <p className="soft">{notAllowedSentence('change-racks', role)}</p>
      ) : site.aisles.length === 0 || site.frameTypes.length === 0 ? (
        <p>A run stands in an aisle and has frames of a type: the site must have one of each first.</p>
      ) : (
        <RackShapeView
          siteName={site.site.name}
          revision={snapshot.revision}
          mode={{ kind: 'new', copyOf }}
          mayChange={{ racks: true, inspection: may(role, 'record-inspection') }}
        />
      )}
    </div>
  );
}
