'use client';

import Link from 'next/link';
import { usePathname, useRouter } from 'next/navigation';
import { useState, useTransition } from 'react';
import { type ShapeOutcome, undoRunShape } from '@/app/rack-shape/actions.ts';
import { refusalSentence } from '@/lib/words/refusal.ts';
import styles from './rack-shape.module.css';

/** What was just saved, with the way back. `runBefore`: where the editor goes once it is undone; null: where it is. */
export function SavedStrip({ revision, isUndone }: { revision: number; isUndone: boolean }) {
  const router = useRouter();
  const path = usePathname();
  const [outcome, setOutcome] = useState<ShapeOutcome | null>(null);
  const [isBusy, start] = useTransition();
  if (isUndone)
    return (
      <p className={styles.saved} role="status">
        Undone: everything is as it was before revision {revision}.
      </p>
    );
  const undo = () =>
    start(async () => {
      const result = await undoRunShape(revision);
      setOutcome(result);
      if (result.state !== 'saved') return;
      router.replace(`${path}?saved=${revision}&undone=${result.revision}`);
      router.refresh();
    });
  return (
    <div className={styles.saved} role="status">
      <span>Saved as revision {revision}.</span>
      <button type="button" onClick={undo} disabled={isBusy}>
        {isBusy ? 'Undoing…' : 'Undo this save'}
      </button>
      <Link href={`/changes/${revision}`}>See the change</Link>
      {outcome?.state === 'conflict' ? (
        <span className="fault">
          It cannot be undone: {outcome.conflict.by} has changed {outcome.conflict.noun}{' '}
          {outcome.conflict.subject} since.
        </span>
      ) : null}
      {outcome?.state === 'refused' ? (
        <span className="fault">{outcome.refusals.map(refusalSentence).join(' ')}</span>
      ) : null}
      {outcome?.state === 'not-allowed' ? <span className="fault">{outcome.why}</span> : null}
    </div>
  );
}
