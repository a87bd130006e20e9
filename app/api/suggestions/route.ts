import type { NextRequest } from 'next/server';
import { findLoads } from '@/app/_parts/find-loads.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

const MOST = 12;

/** An id to choose from, with what it is called. */
export type Suggestion = { id: string; name: string };

/** Ids of the site that hold what is typed: `of` = location or load, `find` = the text. At most 12, beginnings first. */
export async function GET(request: NextRequest): Promise<Response> {
  await requirePermission('read');
  const of = request.nextUrl.searchParams.get('of');
  const find = (request.nextUrl.searchParams.get('find') ?? '').slice(0, 200);
  if (of !== 'location' && of !== 'load') {
    return Response.json(
      {
        refused: [
          {
            path: '$.of',
            came: JSON.stringify(of),
            expected: { is: 'one-of', values: ['location', 'load'] },
          },
        ],
      },
      { status: 400 },
    );
  }
  const snapshot = await siteSnapshot();
  if (snapshot === null) return Response.json([]);
  const { index } = snapshot;
  return Response.json(of === 'load' ? loadsLike(index, find) : locationsLike(index, find));
}

function loadsLike(index: SiteIndex, find: string): Suggestion[] {
  return findLoads(index.site.loads, find, MOST).map(({ id, name }) => ({ id, name }));
}

function locationsLike(index: SiteIndex, find: string): Suggestion[] {
  const text = find.trim().toLowerCase();
  const begins: string[] = [];
  const holds: string[] = [];
  for (const id of index.places.keys()) {
    const at = id.toLowerCase().indexOf(text);
    if (at === 0) begins.push(id);
    else if (at > 0 && holds.length < MOST) holds.push(id);
    if (begins.length === MOST) break;
  }
  return [...begins, ...holds].slice(0, MOST).map((id) => {
    const load = index.stockAt.get(id);
    return { id, name: load === undefined ? 'empty' : `${load.id} ${load.name}` };
  });
}
