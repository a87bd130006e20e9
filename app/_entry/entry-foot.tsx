import type { ReactNode } from 'react';
import styles from '@/app/_entry/entry.module.css';
import { OutcomePart } from '@/app/_entry/outcome-part.tsx';
import type { SaveOutcome } from '@/app/_entry/use-save.ts';
import { counted } from '@/lib/words/plain-words.ts';

/** Saving, and why it did not happen. */
export function EntryFoot({
  label,
  isBusy,
  isChanged,
  faults,
  outcome,
  children,
}: {
  label: string;
  isBusy: boolean;
  isChanged: boolean;
  /** How many fields have something wrong, once saving was tried. */
  faults: number;
  outcome: SaveOutcome | null;
  children: ReactNode;
}) {
  return (
    <section className={`sheet ${styles.foot}`} aria-label="Save">
      <OutcomePart outcome={outcome} />
      <div className="row">
        <button type="submit" className="button-main" disabled={isBusy || !isChanged}>
          {isBusy ? 'Saving…' : label}
        </button>
        {children}
        <span role="status" className={faults > 0 ? 'fault' : 'soft'}>
          {isBusy
            ? 'Sending; what you typed stays here until it is stored.'
            : faults > 0
              ? `${counted(faults, 'field')} to be mended first.`
              : isChanged
                ? ''
                : 'Nothing is changed yet.'}
        </span>
      </div>
    </section>
  );
}
