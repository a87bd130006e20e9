import { KIND_WORDS, POWER_WORDS } from '@/app/trucks/truck-words.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import styles from './truck.module.css';

/** The truck's dimensions. What is not known says so: a rule that needs it will too. */
export function TruckFacts({ truck, units }: { truck: Truck; units: DisplayUnits }) {
  const length = (mm: number | null) => (mm === null ? null : formatLength(mm, units, 'down'));
  const { turning, forks } = truck;
  const facts: [string, string | null][] = [
    ['Kind', KIND_WORDS[truck.kind]],
    ['Power', POWER_WORDS[truck.power]],
    ['Fitted', truck.fittedAttachment ?? 'forks'],
    ['Lifts to', length(truck.maxLiftMm)],
    ['Mast lowered', length(truck.loweredMm)],
    ['Mast extended', length(truck.extendedMm)],
    ['Free lift', length(truck.freeLiftMm ?? 0)],
    ['Reaches', truck.reachDepth === 2 ? 'two pallets deep' : 'the front row'],
    ['Outside turning radius', length(turning?.outsideRadiusMm ?? null)],
    ['Load distance, front axle to fork face', length(turning?.loadDistanceMm ?? null)],
    ['Inside offset', length(turning?.insideOffsetMm ?? null)],
    ['Aisle stated by the maker', truck.statedAisleMm === null ? 'none stated' : length(truck.statedAisleMm)],
    ['Fork length', length(forks.lengthMm)],
    [
      'One fork arm carries',
      forks.armCapacityKg === null || forks.armLoadCentreMm === null
        ? null
        : `${formatMass(forks.armCapacityKg, units, 'down')} at ${formatLength(forks.armLoadCentreMm, units, 'down')}`,
    ],
    ['Load centre above the forks, at most', length(truck.plate.verticalLoadCentreMm) ?? 'none stated'],
  ];
  return (
    <dl className={styles.facts}>
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value ?? <span className={styles.missing}>not known</span>}</dd>
        </div>
      ))}
    </dl>
  );
}
