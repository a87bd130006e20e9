'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import type { Conflict } from '@/lib/model/change.ts';
import { differences } from '@/lib/model/differences.ts';
import type { Run } from '@/lib/model/racking.ts';
import type { RunChange } from '@/lib/rack-shape/run-change.ts';
import { differenceSentence } from '@/lib/words/difference.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import { runChangeWords } from '@/lib/words/rack-shape.ts';
import styles from './rack-shape.module.css';

const SHOWN = 12;

/** Somebody else was faster: what they changed, what is changed here, and the two ways on. */
export function ConflictPart({
  conflict,
  saved,
  changes,
  onKeepMine,
  onTakeTheirs,
}: {
  conflict: Conflict;
  /** The run as it was read here. */
  saved: Run;
  changes: readonly RunChange[];
  onKeepMine: () => void;
  onTakeTheirs: () => void;
}) {
  const units = useUnits();
  const theirs = differences(saved, conflict.theirs);
  const isGone = conflict.theirs === null;
  return (
    <section className={`sheet stack ${styles.conflict}`} role="alert" aria-labelledby="conflict-heading">
      <h2 id="conflict-heading">
        {isGone ? 'The run is gone' : 'Somebody else has changed this run'}: {conflict.by},{' '}
        {instantWords(conflict.at)}
      </h2>
      <p>Nothing of yours is saved yet.</p>
      <div className={styles.fields}>
        <div>
          <h3>They changed</h3>
          <ul className={styles.plain}>
            {isGone ? <li>The whole run was taken away.</li> : null}
            {isGone
              ? null
              : theirs
                  .slice(0, SHOWN)
                  .map((difference) => (
                    <li key={difference.path.join('.')}>{differenceSentence(difference, units)}</li>
                  ))}
          </ul>
          {!isGone && theirs.length > SHOWN ? <p className="soft">and {theirs.length - SHOWN} more</p> : null}
        </div>
        <div>
          <h3>You changed</h3>
          <ul className={styles.plain}>
            {changes.map((change) => (
              <li key={JSON.stringify(change)}>{runChangeWords(change, saved, units)}</li>
            ))}
          </ul>
        </div>
      </div>
      <div className="row">
        {isGone ? null : (
          <button type="button" className="button-main" onClick={onKeepMine}>
            Make my changes on theirs, and look again
          </button>
        )}
        <button type="button" onClick={onTakeTheirs}>
          Drop mine, keep theirs
        </button>
      </div>
    </section>
  );
}
