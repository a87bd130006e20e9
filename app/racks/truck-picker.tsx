'use client';

import type { Truck } from '@/lib/model/truck.ts';
import styles from './question-form.module.css';

/** All trucks, or those ticked. */
export function TruckPicker({
  trucks,
  chosen,
  onChoose,
}: {
  trucks: readonly Truck[];
  chosen: readonly string[];
  onChoose: (ids: readonly string[]) => void;
}) {
  const named = trucks.filter(({ id }) => chosen.includes(id));
  const said =
    chosen.length === 0
      ? `All ${trucks.length} trucks`
      : named.length === 1
        ? named[0]!.name
        : `${named.length} of ${trucks.length} trucks`;
  const toggle = (id: string) =>
    onChoose(chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id]);
  return (
    <details className={styles.trucks}>
      <summary>
        <span className={styles.legend}>Trucks</span>
        <span>{said}</span>
      </summary>
      <fieldset>
        <legend className="unseen">Trucks asked about</legend>
        <label>
          <input type="checkbox" checked={chosen.length === 0} onChange={() => onChoose([])} />
          All trucks
        </label>
        {trucks.map((truck) => (
          <label key={truck.id}>
            <input type="checkbox" checked={chosen.includes(truck.id)} onChange={() => toggle(truck.id)} />
            <span>
              {truck.name} <span className="soft dense">{truck.id}</span>
            </span>
          </label>
        ))}
      </fieldset>
    </details>
  );
}
