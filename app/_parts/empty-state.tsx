import type { ReactNode } from 'react';
import styles from './empty-state.module.css';

/** Nothing to show, and what to do about it. */
export function EmptyState({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section className={styles.empty}>
      <svg viewBox="0 0 64 48" aria-hidden="true">
        <path d="M6 4v40M58 4v40M6 16h52M6 34h52" />
      </svg>
      <h2>{title}</h2>
      <div>{children}</div>
    </section>
  );
}
