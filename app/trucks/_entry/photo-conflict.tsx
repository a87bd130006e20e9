'use client';

import styles from '@/app/_entry/entry.module.css';
import { useFocusFirst } from '@/app/_entry/use-focus-first.ts';
import type { Conflict } from '@/lib/model/change.ts';
import { instantWords } from '@/lib/words/plain-words.ts';

/** Somebody else has put in or taken away a photo since the form was opened. */
export function PhotoConflict({
  conflict,
  onMine,
  onTheirs,
}: {
  conflict: Conflict;
  onMine: () => void;
  onTheirs: () => void;
}) {
  const part = useFocusFirst<HTMLElement>();
  return (
    <section
      className={`sheet stack ${styles.conflict}`}
      role="alert"
      ref={part}
      tabIndex={-1}
      aria-labelledby="photo-conflict-heading"
    >
      <h2 id="photo-conflict-heading">
        Somebody else has {conflict.theirs === null ? 'taken the photo away' : 'put in another photo'}:{' '}
        {conflict.by}, {instantWords(conflict.at)}
      </h2>
      <p>Nothing was stored.</p>
      <div className="row">
        <button type="button" className="button-main" onClick={onMine}>
          Save mine
        </button>
        <button type="button" onClick={onTheirs}>
          Keep theirs
        </button>
      </div>
    </section>
  );
}
