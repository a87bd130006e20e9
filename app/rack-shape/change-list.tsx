'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import type { Run } from '@/lib/model/racking.ts';
import type { RunChange } from '@/lib/rack-shape/run-change.ts';
import type { ShapeRefusal } from '@/lib/rack-shape/shape-fault.ts';
import { runChangeWords, shapeFaultSentence } from '@/lib/words/rack-shape.ts';
import styles from './rack-shape.module.css';

/** The changes that would be saved, in their order. */
export function ChangeList({
  changes,
  runs,
  stopped,
  onDrop,
}: {
  changes: readonly RunChange[];
  /** The run that each change is made on, to name its bays. */
  runs: readonly Run[];
  stopped: { at: number; refusals: ShapeRefusal[] } | null;
  onDrop: (at: number) => void;
}) {
  const units = useUnits();
  if (changes.length === 0) return <p className="soft">No change is in the list yet.</p>;
  return (
    <ol className={styles.changes} aria-label="Changes to be saved">
      {changes.map((change, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same change may stand twice
        <li key={at}>
          <span>
            {runChangeWords(change, runs[at] ?? runs[0]!, units)}
            {stopped?.at === at ? (
              <span className="fault">
                {' '}
                {stopped.refusals.map(({ fault }) => shapeFaultSentence(fault, units)).join(' ')}
              </span>
            ) : null}
          </span>
          <button type="button" aria-label={`Drop change ${at + 1}`} onClick={() => onDrop(at)}>
            ✕
          </button>
        </li>
      ))}
    </ol>
  );
}
