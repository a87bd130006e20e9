import { createHash } from 'node:crypto';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

let held: { revision: number; body: string; tag: string } | null = null;

/** The site's facts as JSON, for the browser to judge on: `{revision, site}`, unchanged (304) while its tag holds. */
export async function GET(request: Request): Promise<Response> {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return Response.json({ missing: 'site' }, { status: 404 });
  if (held?.revision !== snapshot.revision) {
    const body = JSON.stringify({ revision: snapshot.revision, site: snapshot.site });
    // the revision alone would take two databases for one, when the folder behind the server is exchanged
    const hash = createHash('sha256').update(body).digest('base64url').slice(0, 16);
    held = { revision: snapshot.revision, body, tag: `"${snapshot.revision}-${hash}"` };
  }
  const headers = { etag: held.tag, 'cache-control': 'private, no-cache' };
  if (request.headers.get('if-none-match') === held.tag) return new Response(null, { status: 304, headers });
  return new Response(held.body, { headers: { ...headers, 'content-type': 'application/json' } });
}
