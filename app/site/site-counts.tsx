import Link from 'next/link';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './site.module.css';

/** How much of each thing the site holds. */
export function SiteCounts({ index, revision }: { index: SiteIndex; revision: number }) {
  const { site } = index;
  const bays = site.runs.reduce((sum, run) => sum + run.bays.length, 0);
  const counts: [label: string, count: number, href?: string][] = [
    ['Aisles', site.aisles.length],
    ['Runs', site.runs.length, '/racks'],
    ['Bays', bays],
    ['Locations', index.places.size],
    ['Pallets standing', site.stock.length],
    ['Loads', site.loads.length, '/loads'],
    ['Trucks', site.trucks.length, '/trucks'],
    ['Operators', site.operators.length],
    ['Walk-rounds', site.checks.length],
    ['Revision', revision],
  ];
  return (
    <dl className={styles.counts}>
      {counts.map(([label, count, href]) => (
        <div key={label} className="sheet">
          <dt className="soft dense">{href === undefined ? label : <Link href={href}>{label}</Link>}</dt>
          <dd>{groupDigits(count)}</dd>
        </div>
      ))}
    </dl>
  );
}
