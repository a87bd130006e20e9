import type { RackQuery } from '@/app/rack-advice/rack-query.ts';
import { type DamageClass, damageClass } from '@/lib/rack/damage-class.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { damageAction, damageKindWords } from '@/lib/words/rack-advice.ts';
import styles from './rack-advice.module.css';

/** The mark of each class: a level bar, a bent bar, a broken one. */
const MARKS: Record<DamageClass, string> = {
  green: 'M2 8h12',
  amber: 'M2 6l6 4 6-4',
  red: 'M2 5l5 3M9 11l5-4',
};

/** Which class a measured bend is, and what that asks for. */
export function DamageAdvice({
  bend,
  units,
}: {
  bend: NonNullable<RackQuery['damage']>;
  units: DisplayUnits;
}) {
  const { kind, bowMm, lengthMm } = bend;
  const judged = damageClass(lengthMm === null ? { kind, bowMm } : { kind, bowMm, lengthMm });
  return (
    <section className={`sheet ${styles.damage} ${styles[judged.damage]}`} aria-labelledby="damage-heading">
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d={MARKS[judged.damage]} />
      </svg>
      <div>
        <h2 id="damage-heading">{damageAction(judged.damage)}</h2>
        <p>
          {damageKindWords(kind)}: {formatLength(bowMm, units, 'up')} measured; green to{' '}
          {formatLength(judged.greenLimitMm, units, 'down')}, amber to{' '}
          {formatLength(judged.amberLimitMm, units, 'down')} (EN 15635; shorter bends in proportion). Tears,
          splits, buckles, cracked welds and missing locks are red whatever is measured.
        </p>
      </div>
    </section>
  );
}
