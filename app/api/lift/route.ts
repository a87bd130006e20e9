import type { NextRequest } from 'next/server';
import { resolveLift } from '@/app/_parts/asked-lift.ts';
import { readLiftQuery } from '@/app/_parts/lift-query.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { checkLift } from '@/lib/check/check-lift.ts';
import type { LiftAnswer } from '@/lib/check/step.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

/** What this address answers when it does not answer the lift. */
export type LiftRefused = { refused: readonly Refusal[] };

/**
 * One lift, with its whole working: the parameters of readLiftQuery, location and truck among them. 400 names every
 * parameter that cannot be read or resolved; 404 when there is no site yet.
 */
export async function GET(request: NextRequest): Promise<Response> {
  await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return refuse([{ path: '$', came: 'no site', expected: { is: 'present' } }], 404);
  const { index } = snapshot;
  const raw = Object.fromEntries(request.nextUrl.searchParams);
  const resolved = resolveLift(index, readLiftQuery(raw), new Date().toISOString());
  const truckMissing: Refusal[] =
    resolved.query.truck === null && raw.truck === undefined
      ? [{ path: '$.truck', came: 'nothing', expected: { is: 'present' } }]
      : [];
  if (resolved.kind === 'refused') return refuse([...resolved.refused, ...truckMissing], 400);
  const { truck, ...lift } = resolved.asked;
  if (truck === null) return refuse(truckMissing, 400);
  const answer: LiftAnswer = checkLift(index, { ...lift, truck });
  return Response.json(answer, { headers: { 'cache-control': 'no-store' } });
}

function refuse(refused: readonly Refusal[], status: 400 | 404): Response {
  return Response.json({ refused } satisfies LiftRefused, { status });
}
