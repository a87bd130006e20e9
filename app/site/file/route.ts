import { requirePermission } from '@/app/_parts/require-permission.ts';
import { writeSiteText } from '@/lib/model/site-file.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

/** The site file, to keep, to compare or to read in elsewhere. */
export async function GET(): Promise<Response> {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return new Response('There is no site yet.', { status: 404 });
  const name = snapshot.site.site.name.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'site';
  return new Response(writeSiteText(snapshot.site), {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': `attachment; filename="${name}-revision-${snapshot.revision}.json"`,
      'cache-control': 'no-store',
    },
  });
}
