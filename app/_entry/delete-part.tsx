'use client';

import type { ReactNode } from 'react';
import type { EntryOutcome } from '@/app/_entry/entry-outcome.ts';
import { OutcomePart } from '@/app/_entry/outcome-part.tsx';
import { useSave } from '@/app/_entry/use-save.ts';
import { conflictSentence } from '@/lib/words/change.ts';
import styles from './entry.module.css';

/** Taking a fact out of the site, once its consequences were read. `children`: what goes with it, or what stands against it. */
export function DeletePart({
  what,
  id,
  basedOn,
  action,
  list,
  children,
}: {
  what: string;
  id: string;
  basedOn: number;
  action: (before: EntryOutcome | null, form: FormData) => Promise<EntryOutcome>;
  /** The list that is shown afterwards. */
  list: string;
  children: ReactNode;
}) {
  const { outcome, isBusy, send } = useSave(action, ({ revision }) => `${list}?gone=${revision}`);
  return (
    <details className={styles.delete}>
      <summary>
        Delete {what} {id}
      </summary>
      <div className="stack">
        {children}
        <div>
          <button
            type="button"
            disabled={isBusy}
            onClick={() => {
              const form = new FormData();
              form.set('id', id);
              form.set('basedOn', String(basedOn));
              form.set('isNew', 'no');
              send(form);
            }}
          >
            {isBusy ? 'Deleting…' : `Delete ${what} ${id}`}
          </button>
        </div>
        {outcome?.state === 'conflict' ? (
          <p className="fault" role="alert">
            {conflictSentence(outcome.conflict)}
          </p>
        ) : null}
        <OutcomePart outcome={outcome} />
      </div>
    </details>
  );
}
