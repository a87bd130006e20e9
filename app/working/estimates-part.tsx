import type { BeyondPlate } from '@/app/working/lift-estimates.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { ESTIMATE_CAUTION } from '@/lib/words/cautions.ts';
import styles from './working.module.css';

/** What may be guessed beyond the plate, kept apart from every verdict. */
export function EstimatesPart({
  truck,
  beyond,
  lacksAttachment,
  units,
}: {
  truck: Truck;
  beyond: BeyondPlate | null;
  lacksAttachment: boolean;
  units: DisplayUnits;
}) {
  if (beyond === null && !lacksAttachment) return null;
  return (
    <section className={styles.estimates} aria-labelledby="estimates-heading">
      <h2 id="estimates-heading">Estimates: advice, never clearance</h2>
      <p>{ESTIMATE_CAUTION}</p>
      {beyond === null ? null : (
        <table>
          <caption>
            Load centre {formatLength(beyond.loadCentreMm, units, 'up')}, beyond the plate; reckoned from line{' '}
            {beyond.from.at + 1}: {formatMass(beyond.from.capacityKg, units, 'down')} at{' '}
            {formatLength(beyond.from.loadCentreMm, units, 'down')}
          </caption>
          <tbody>
            <tr>
              <th scope="row">Field rule, capacity × plate load centre ÷ load centre</th>
              <td>about {formatMass(Math.floor(beyond.fieldRuleKg), units, 'down')}</td>
            </tr>
            {beyond.momentKg === null ? null : (
              <tr>
                <th scope="row">By moments about the front axle, the bolder of the two</th>
                <td>about {formatMass(Math.floor(beyond.momentKg), units, 'down')}</td>
              </tr>
            )}
          </tbody>
        </table>
      )}
      {lacksAttachment ? (
        <p>
          The plate rates nothing for {truck.fittedAttachment ?? 'the forks alone'}. An attachment takes off
          its own mass and pushes the load out: by how much, only the maker’s plate for it can say.
        </p>
      ) : null}
    </section>
  );
}
