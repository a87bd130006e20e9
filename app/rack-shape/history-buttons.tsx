'use client';

import type { History } from '@/app/rack-shape/use-history.ts';
import styles from './rack-shape.module.css';

/** Not `disabled` at an end of the way: a button that is loses the focus, and the keys with it. */
export function HistoryButtons<T>({ history }: { history: History<T> }) {
  return (
    <div className="row">
      <button
        type="button"
        className={styles.step}
        onClick={history.undo}
        aria-disabled={!history.canUndo}
        aria-keyshortcuts="Control+Z"
      >
        Undo
      </button>
      <button
        type="button"
        className={styles.step}
        onClick={history.redo}
        aria-disabled={!history.canRedo}
        aria-keyshortcuts="Control+Y"
      >
        Redo
      </button>
    </div>
  );
}
