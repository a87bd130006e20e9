import type { NextRequest } from 'next/server';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { type LoadConsequences, weighLoadChange } from '@/lib/entry/load-consequences.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { blankSite } from '@/lib/model/site.ts';
import { readSite } from '@/lib/model/site-file.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

/** What this address answers when it does not weigh the change. */
export type LoadChangeRefused = { refused: readonly Refusal[] };

/**
 * What a change of a load would come to where it stands now: `load`, as JSON, takes the place of the load of its id.
 * Nothing is changed. 400 says what is wrong with it; 404 when there is no site or no such load.
 */
export async function GET(request: NextRequest): Promise<Response> {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return refuse([{ path: '$', came: 'no site', expected: { is: 'present' } }], 404);
  const { index } = snapshot;
  const raw = parsed(request.nextUrl.searchParams.get('load'));
  const reading = readSite({ ...blankSite('one fact'), palletTypes: index.site.palletTypes, loads: [raw] });
  if (!reading.ok) return refuse(reading.refusals.slice(0, 20), 400);
  const load = reading.site.loads[0]!;
  if (!index.loads.has(load.id))
    return refuse(
      [{ path: '$.load.id', came: load.id, expected: { is: 'id-in', list: '$.loads', nearest: null } }],
      404,
    );
  const consequences: LoadConsequences = weighLoadChange(index, load);
  return Response.json(consequences, { headers: { 'cache-control': 'no-store' } });
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return undefined;
  }
}

function refuse(refused: readonly Refusal[], status: 400 | 404): Response {
  return Response.json({ refused } satisfies LoadChangeRefused, { status });
}
