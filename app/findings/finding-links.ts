import { type AskedTime, type LiftQuery, PLAIN_LIFT_QUERY } from '@/app/_parts/lift-query.ts';
import { loadHref, truckHref } from '@/app/_parts/screen-links.ts';
import type { Whereabouts } from '@/app/findings/where-found.ts';
import { writeRacksQuery } from '@/app/racks/racks-query.ts';
import type { Reference } from '@/lib/audit/audit-case.ts';
import type { Finding } from '@/lib/audit/finding.ts';

export type FindingLink = { href: string; label: string };

/**
 * Where a finding leads: its rack with the place marked, asked what the finding was found by (taking down, placing
 * back, or placing the reference load), then its load and its trucks.
 */
export function findingLinks(
  finding: Finding,
  { runs, place, trucks, load }: Whereabouts,
  on: { time: AskedTime; reference: Reference },
): FindingLink[] {
  const links: FindingLink[] = [];
  const run = place?.run.id ?? runs[0];
  if (run !== undefined)
    links.push({
      label: place === null ? `Rack ${run}` : `Rack ${run} at ${place.id}`,
      href: `/racks?${writeRacksQuery({
        lift: { ...PLAIN_LIFT_QUERY, ...askedBy(finding, on), location: place?.id ?? null },
        run,
        row: place?.row ?? 1,
        trucks: [],
        view: 'drawing',
        figure: 'most',
      })}`,
    });
  if (load !== null) links.push({ label: `Load ${load}`, href: loadHref(load) });
  for (const truck of trucks) links.push({ label: `Truck ${truck}`, href: truckHref(truck) });
  if (finding.subject.of === 'authorisation') links.push({ label: 'Trucks and drivers', href: '/trucks' });
  return links;
}

function askedBy(
  { kind, subject }: Finding,
  { time, reference }: { time: AskedTime; reference: Reference },
): Partial<LiftQuery> {
  if (kind === 'out-of-reach')
    return {
      load: { kind: 'typed', basis: 'weighed', palletType: null, ...reference },
      operation: 'place',
      time: { kind: 'not-judged' },
      stock: 'empty',
    };
  if (kind === 'unplaceable' && subject.of === 'load')
    return { load: { kind: 'known', id: subject.load }, operation: 'place', time, stock: 'empty' };
  const isTakeDown = kind === 'stranded' || kind === 'stranded-for-fleet' || kind === 'one-truck';
  return { operation: isTakeDown ? 'retrieve' : 'place', time };
}
