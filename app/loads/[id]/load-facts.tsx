import Link from 'next/link';
import { centreHeightMm, entryHeightMm, type Load, loadCentreMm, type PalletType } from '@/lib/model/load.ts';
import { type DisplayUnits, formatLength, formatMass, groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './load.module.css';

/** The load's sizes, its centre and its pallet; what is reckoned rather than stated says so. */
export function LoadFacts({
  load,
  pallet,
  units,
}: {
  load: Load;
  pallet: PalletType | null;
  units: DisplayUnits;
}) {
  const length = (mm: number) => formatLength(mm, units, 'up');
  const facts: [string, string][] = [
    ['Depth along the forks', length(load.depthMm)],
    ['Width', length(load.widthMm)],
    ['Height, pallet included', length(load.heightMm)],
    [
      'Load centre, from the fork heel',
      `${length(loadCentreMm(load))}, ${load.centreFromHeelMm === null ? 'half the depth' : 'stated'}`,
    ],
    [
      'Centre above the underside',
      `${length(centreHeightMm(load))}, ${load.centreHeightMm === null ? 'half the height' : 'stated'}`,
    ],
    ['Pallet', pallet === null ? 'none' : `${pallet.id}, ${formatMass(pallet.tareKg, units, 'up')}`],
    [
      'Fork top above the underside',
      `${length(entryHeightMm(pallet))}${pallet === null ? ', common practice' : ''}`,
    ],
    ['Group', load.group ?? 'none'],
    ['Picks a week', load.picksPerWeek === null ? 'not known' : groupDigits(load.picksPerWeek)],
  ];
  return (
    <>
      <dl className={styles.facts}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {load.handPick === null ? null : (
        <p>
          <Link href={`/hand-pick?load=${encodeURIComponent(load.id)}`} className="button">
            Picked by hand: see the lift of one case
          </Link>
        </p>
      )}
    </>
  );
}
