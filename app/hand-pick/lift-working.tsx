import { type HandLift, LOAD_CONSTANT_KG } from '@/lib/hand-pick/hand-lift.ts';
import { type DisplayUnits, formatMass } from '@/lib/units/format-quantity.ts';
import { handLiftSentence, indexWords, multiplierName, multiplierWorking } from '@/lib/words/hand-pick.ts';
import styles from './hand-pick.module.css';

/** The load constant and each multiplier with what it is read from, down to limit and index. */
export function LiftWorking({
  lift,
  title,
  lead,
  units,
  folded = false,
}: {
  lift: HandLift;
  title: string;
  lead?: string;
  units: DisplayUnits;
  folded?: boolean;
}) {
  const table = (
    <table className={styles.working}>
      <caption className="unseen">{title}</caption>
      <tbody>
        <tr>
          <th scope="row">Load constant</th>
          <td>what may be lifted when nothing takes anything off</td>
          <td className="number">{formatMass(LOAD_CONSTANT_KG, units, 'down')}</td>
        </tr>
        {lift.multipliers.map(({ id, value }) => (
          <tr key={id} className={value === 0 ? styles.zero : undefined}>
            <th scope="row">
              {multiplierName(id)} <span className="soft">{id}</span>
            </th>
            <td>{multiplierWorking(id, lift.task, units)}</td>
            <td className="number">× {value.toFixed(3)}</td>
          </tr>
        ))}
        <tr className={styles.total}>
          <th scope="row">Recommended weight limit</th>
          <td>the product</td>
          <td className="number">{formatMass(lift.rwlKg, units, 'down')}</td>
        </tr>
        <tr className={styles.total}>
          <th scope="row">Lifting index</th>
          <td>{formatMass(lift.task.massKg, units, 'up')} divided by the limit</td>
          <td className="number">
            {lift.result.kind === 'index' ? indexWords(lift.result.liftingIndex) : 'none'}
          </td>
        </tr>
      </tbody>
    </table>
  );
  if (folded) {
    return (
      <details className="sheet">
        <summary>
          <strong>{title}.</strong> {handLiftSentence(lift, units)}
        </summary>
        <p className="soft">{lead}</p>
        {table}
      </details>
    );
  }
  return (
    <section className="sheet stack">
      <h2>{title}</h2>
      {table}
    </section>
  );
}
