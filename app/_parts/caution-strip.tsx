import type { ReactNode } from 'react';
import styles from './caution-strip.module.css';

/** What must be read before a figure is used: a strip with a floor-paint edge. Says nothing when there is nothing to say. */
export function CautionStrip({ title, cautions }: { title?: string; cautions: readonly ReactNode[] }) {
  if (cautions.length === 0) return null;
  return (
    <aside className={styles.strip} aria-label={title ?? 'Cautions'}>
      {title === undefined ? null : <strong>{title}</strong>}
      <ul>
        {cautions.map((caution, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is fixed text in its own order
          <li key={at}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}
