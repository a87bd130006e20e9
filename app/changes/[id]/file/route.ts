import { requirePermission } from '@/app/_parts/require-permission.ts';
import { writeSiteText } from '@/lib/model/site-file.ts';
import { readKeptSite } from '@/lib/store/kept-sites.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

/** The site file as it stood before a change of the whole site, while it is kept. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ id: string }> },
): Promise<Response> {
  await requirePermission('read');
  const { id } = await params;
  const site = /^\d{1,15}$/.test(id) ? readKeptSite(serverDatabase(), Number(id)) : null;
  if (site === null) return new Response('The site before this change is not kept.', { status: 404 });
  return new Response(writeSiteText(site), {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': `attachment; filename="site-before-change-${id}.json"`,
      'cache-control': 'no-store',
    },
  });
}
