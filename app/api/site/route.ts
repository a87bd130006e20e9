import { requirePermission } from '@/app/_parts/require-permission.ts';
import { siteText } from '@/app/api/site/site-text.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';

/**
 * The site's facts as zipped JSON, for the browser to judge on: `{revision, site}`, unchanged (304) while its tag holds. It may
 * be some changes old: /api/site/changes has what came after, so that one change does not send everything anew.
 */
export async function GET(request: Request): Promise<Response> {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return Response.json({ missing: 'site' }, { status: 404 });
  const { tag, zipped } = await siteText(serverDatabase(), snapshot);
  const headers = { etag: tag, 'cache-control': 'private, no-cache' };
  if (request.headers.get('if-none-match') === tag) return new Response(null, { status: 304, headers });
  // a content-encoding would be dropped on the way: fetchJson unzips by the type
  return new Response(zipped, { headers: { ...headers, 'content-type': 'application/gzip' } });
}
