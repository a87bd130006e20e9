import type { Run } from '@/lib/model/racking.ts';
import { locationsOf } from '@/lib/rack-shape/neighbours.ts';
import styles from './rack-shape.module.css';

/** The first and the last labels of a run. */
export function LabelPreview({ run }: { run: Run }) {
  const labels = locationsOf(run);
  const [first, last] = [labels.slice(0, 3), labels.slice(-3)];
  return (
    <p className={styles.preview}>
      <span className="soft">Labels:</span> <strong>{first.join(', ')}</strong>
      {labels.length > 6 ? ' … ' : ', '}
      <strong>{last.join(', ')}</strong>{' '}
      <span className="soft">({labels.length}, each once in the site)</span>
    </p>
  );
}
