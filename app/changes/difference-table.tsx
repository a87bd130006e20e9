import type { Difference } from '@/lib/model/differences.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { differenceField, differenceValues } from '@/lib/words/difference.ts';
import styles from './changes.module.css';

/** Field by field, what stood there and what stands there then, in the units chosen. */
export function DifferenceTable({
  caption,
  differences,
  units,
  headings = ['Before', 'After'],
}: {
  caption: string;
  differences: readonly Difference[];
  units: DisplayUnits;
  headings?: readonly [string, string];
}) {
  if (differences.length === 0) return <p className="soft">No field differs.</p>;
  return (
    <table className={styles.differences}>
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Field</th>
          <th scope="col">{headings[0]}</th>
          <th scope="col">{headings[1]}</th>
        </tr>
      </thead>
      <tbody>
        {differences.map((difference) => {
          const [before, after] = differenceValues(difference, units);
          return (
            <tr key={difference.path.join('\n')}>
              <th scope="row">{differenceField(difference) || 'what stands there'}</th>
              <td data-label={headings[0]}>{before}</td>
              <td data-label={headings[1]}>{after}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
