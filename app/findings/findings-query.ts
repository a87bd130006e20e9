import { type AskedTime, type RawQuery, readLiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { FINDING_KINDS, type FindingKind, SEVERITIES, type Severity } from '@/lib/audit/finding.ts';
import type { Refusal } from '@/lib/model/refusal.ts';

export const ORDERS = ['severity', 'excess'] as const;

/** Which findings are looked at, in which order, and as of when the site is judged. null: not narrowed by this. */
export type FindingsQuery = {
  time: AskedTime;
  severity: Severity | null;
  kind: FindingKind | null;
  /** A run, or all runs of an aisle. */
  where: { of: 'aisle' | 'run'; id: string } | null;
  truck: string | null;
  find: string;
  order: (typeof ORDERS)[number];
};

/** The address of the findings: asOf, severity, kind, aisle or run, truck, find, order. */
export function readFindingsQuery(raw: RawQuery): { query: FindingsQuery; refused: readonly Refusal[] } {
  const { query, refused: unread } = readLiftQuery({ asOf: raw.asOf, truck: raw.truck });
  const refused = [...unread];
  const choice = <T extends string>(key: string, values: readonly T[]): T | null => {
    const came = one(raw[key]);
    const known = values.find((value) => value === came);
    if (came !== undefined && known === undefined)
      refused.push({ path: `$.${key}`, came: JSON.stringify(came), expected: { is: 'one-of', values } });
    return known ?? null;
  };
  const [aisle, run] = [one(raw.aisle), one(raw.run)];
  return {
    query: {
      time: query.time,
      severity: choice('severity', SEVERITIES),
      kind: choice('kind', FINDING_KINDS),
      where:
        run !== undefined ? { of: 'run', id: run } : aisle !== undefined ? { of: 'aisle', id: aisle } : null,
      truck: query.truck,
      find: one(raw.find) ?? '',
      order: choice('order', ORDERS) ?? 'severity',
    },
    refused,
  };
}

/** The address parameters, without a leading "?"; readFindingsQuery reads them back. */
export function writeFindingsQuery({
  time,
  severity,
  kind,
  where,
  truck,
  find,
  order,
}: FindingsQuery): string {
  const out = new URLSearchParams(writeLiftQuery({ time, truck }));
  if (severity !== null) out.set('severity', severity);
  if (kind !== null) out.set('kind', kind);
  if (where !== null) out.set(where.of, where.id);
  if (find !== '') out.set('find', find);
  if (order !== 'severity') out.set('order', order);
  return out.toString();
}

function one(value: string | string[] | undefined): string | undefined {
  const first = Array.isArray(value) ? value[0] : value;
  return first === '' ? undefined : first;
}
