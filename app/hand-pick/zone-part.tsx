import type { HandLift } from '@/lib/hand-pick/hand-lift.ts';
import { zoneFilter } from '@/lib/hand-pick/zone-filter.ts';
import { type DisplayUnits, formatMass } from '@/lib/units/format-quantity.ts';
import { zoneWords } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** The simple filter of the British regulator beside the equation: a second, coarser look at the same lift. */
export function ZonePart({
  lift,
  destinationMm,
  units,
}: {
  lift: HandLift;
  destinationMm: number;
  units: DisplayUnits;
}) {
  const { handHeightMm, liftsPerMinute, asymmetryDeg, massKg } = lift.task;
  const filter = zoneFilter({ originMm: handHeightMm, destinationMm, liftsPerMinute, asymmetryDeg });
  const cell = (kg: number) => (
    <td className={massKg > kg ? styles.over : undefined}>
      {formatMass(kg, units, 'down')}
      {massKg > kg ? <span className="dense"> exceeded</span> : null}
    </td>
  );
  return (
    <section className="sheet stack" aria-labelledby="zone-heading">
      <h2 id="zone-heading">A second look: the simple filter</h2>
      <table className={styles.levels}>
        <caption className="unseen">Filter values for this lift</caption>
        <thead>
          <tr>
            <th scope="col">Zone: {zoneWords(filter.zone)}</th>
            <th scope="col">Case close to the body</th>
            <th scope="col">Arms stretched out</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Men</th>
            {cell(filter.men.closeKg)}
            {cell(filter.men.armsExtendedKg)}
          </tr>
          <tr>
            <th scope="row">Women</th>
            {cell(filter.women.closeKg)}
            {cell(filter.women.armsExtendedKg)}
          </tr>
        </tbody>
      </table>
      <p className="soft">
        HSE INDG143, from memory: the least value of the zones the hands pass through, less{' '}
        {filter.frequencyPercentOff} % for the rate and {filter.twistPercentOff} % for the twist. Above it a
        closer look is called for; it is no safe limit.
      </p>
    </section>
  );
}
