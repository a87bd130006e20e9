import Link from 'next/link';
import { DifferenceTable } from '@/app/changes/difference-table.tsx';
import { differences } from '@/lib/model/differences.ts';
import type { ListedChange } from '@/lib/store/change-log.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { changeWords } from '@/lib/words/change.ts';
import { counted, instantWords } from '@/lib/words/plain-words.ts';
import styles from './changes.module.css';

const SHOWN = 6;

/** One change in the list: what, who, when, and its first differences. */
export function ChangeItem({ change, units }: { change: ListedChange; units: DisplayUnits }) {
  const found = differences(change.before, change.after);
  const more = found.length - SHOWN;
  return (
    <li className={`sheet ${styles.item}`}>
      <div className={styles.head}>
        <h2>
          <Link href={`/changes/${change.id}`} prefetch={false}>
            {changeWords(change)}
          </Link>
        </h2>
        <span className="soft dense">
          {instantWords(change.at)}, {change.who}, number {change.id}
        </span>
        {change.revertedBy === null ? null : (
          <span className={styles.undone}>
            Undone by <Link href={`/changes/${change.revertedBy}`}>number {change.revertedBy}</Link>
          </span>
        )}
      </div>
      <DifferenceTable caption={changeWords(change)} differences={found.slice(0, SHOWN)} units={units} />
      {more > 0 ? (
        <Link href={`/changes/${change.id}`} prefetch={false} className="dense">
          And {counted(more, 'field')} more
        </Link>
      ) : null}
    </li>
  );
}
