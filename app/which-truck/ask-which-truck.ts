import { type AskedLift, resolveLift } from '@/app/_parts/asked-lift.ts';
import { type LiftQuery, type RawQuery, readLiftQuery } from '@/app/_parts/lift-query.ts';
import { readFormAddress } from '@/app/which-truck/form-address.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

/** `blank`: nothing has been asked yet, or a link has filled in part of the form. */
export type WhichTruck = { query: LiftQuery } & (
  | { kind: 'blank' }
  | { kind: 'asked'; asked: AskedLift }
  | { kind: 'refused'; refused: readonly Refusal[] }
);

/**
 * What does the address of the form ask, or what stands at which field instead? A form that is sent to put something
 * away must say what; opened by a link, missing parts are not yet faults.
 */
export function askWhichTruck(index: SiteIndex, raw: RawQuery, nowIso: string): WhichTruck {
  const form = readFormAddress(raw, index);
  const read = readLiftQuery(form.raw);
  const resolved = resolveLift(index, { ...read, refused: read.refused }, nowIso);
  const query = { ...resolved.query, truck: null };
  const unread = new Set(form.refused.map(({ path }) => path));
  const found = resolved.kind === 'refused' ? resolved.refused : [];
  const refused = [...form.refused, ...found.filter(({ path }) => !unread.has(path))];
  const noLoad = query.load.kind === 'stored' && query.operation === 'place' && form.sent;
  if (noLoad && !refused.some(({ path }) => LOAD_FIELDS.has(path)))
    refused.push({ path: '$.load', came: 'nothing', expected: { is: 'present' } });
  if (refused.length === 0 && resolved.kind === 'asked')
    return { kind: 'asked', query, asked: resolved.asked };
  const shown = form.sent ? refused : refused.filter(({ came }) => came !== 'nothing');
  return shown.length === 0 ? { kind: 'blank', query } : { kind: 'refused', query, refused: shown };
}

const LOAD_FIELDS = new Set(['$.load', '$.mass', '$.depth', '$.width', '$.height']);
