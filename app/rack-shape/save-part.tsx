'use client';

import { useRouter } from 'next/navigation';
import { useId, useState, useTransition } from 'react';
import type { ShapeOutcome } from '@/app/rack-shape/actions.ts';
import type { Site } from '@/lib/model/site.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { refusalSentence } from '@/lib/words/refusal.ts';
import styles from './rack-shape.module.css';

type Pallets = Site['stock'];

/**
 * Saving, once what the change comes to has been seen: a tick that says so, one for pallets that go with their
 * locations, and what became of it. `hindrance`: why it cannot be saved yet.
 */
export function SavePart({
  label,
  hindrance,
  warnings,
  worse,
  stranded,
  save,
  hrefOf,
  onConflict,
}: {
  label: string;
  hindrance: string | null;
  warnings: readonly string[];
  /** What turns for the worse, in words; null: nothing does. */
  worse: string | null;
  stranded: Pallets;
  save: () => Promise<ShapeOutcome>;
  hrefOf: (revision: number) => string;
  onConflict?: (outcome: Extract<ShapeOutcome, { state: 'conflict' }>) => void;
}) {
  const ids = useId();
  const router = useRouter();
  const [seen, setSeen] = useState<string | null>(null);
  const [taken, setTaken] = useState<string | null>(null);
  const [outcome, setOutcome] = useState<ShapeOutcome | null>(null);
  const [isBusy, start] = useTransition();
  // a tick counts for what was shown when it was set
  const shown = `${worse} ${warnings.join()}`;
  const pallets = stranded.map(({ location, load }) => `${location} ${load}`).join();
  const mustSee = worse !== null || warnings.length > 0;
  const blocked =
    hindrance ??
    (mustSee && seen !== shown ? 'Tick that you have seen what the change comes to.' : null) ??
    (stranded.length > 0 && taken !== pallets ? 'Tick that the pallets have been taken out.' : null);
  const onSave = () => {
    setOutcome(null);
    start(async () => {
      const result = await save();
      setOutcome(result);
      if (result.state === 'saved') {
        router.replace(hrefOf(result.revision));
        router.refresh();
      }
      if (result.state === 'conflict') onConflict?.(result);
    });
  };
  return (
    <section className={`sheet stack ${styles.save}`} aria-label={label}>
      {warnings.map((warning) => (
        <p key={warning} className={styles.warning}>
          {warning}
        </p>
      ))}
      {mustSee ? (
        <div className={styles.tick}>
          <input
            id={`${ids}-seen`}
            type="checkbox"
            checked={seen === shown}
            onChange={({ target }) => setSeen(target.checked ? shown : null)}
          />
          <label htmlFor={`${ids}-seen`}>
            I have seen what this change comes to{worse === null ? '' : `: ${worse} turn for the worse`}
          </label>
        </div>
      ) : null}
      {stranded.length > 0 ? (
        <div className={styles.tick}>
          <input
            id={`${ids}-taken`}
            type="checkbox"
            checked={taken === pallets}
            onChange={({ target }) => setTaken(target.checked ? pallets : null)}
          />
          <label htmlFor={`${ids}-taken`}>
            {counted(stranded.length, 'pallet')} whose locations go (
            {stranded
              .slice(0, 4)
              .map(({ location, load }) => `${load} in ${location}`)
              .join(', ')}
            {stranded.length > 4 ? ', …' : ''}) have been taken out: take them out of the stock too
          </label>
        </div>
      ) : null}
      <div className="row">
        <button
          type="button"
          className="button-main"
          disabled={blocked !== null || isBusy}
          aria-describedby={`${ids}-why`}
          onClick={onSave}
        >
          {isBusy ? 'Saving…' : label}
        </button>
        <span id={`${ids}-why`} className="soft dense">
          {blocked}
        </span>
      </div>
      <div aria-live="polite">
        {outcome?.state === 'refused' ? (
          <ul className={styles.plain}>
            {outcome.refusals.map((refusal) => (
              <li key={`${refusal.path} ${refusal.came}`} className="fault">
                {refusalSentence(refusal)}
              </li>
            ))}
          </ul>
        ) : null}
        {outcome?.state === 'not-allowed' ? <p className="fault">{outcome.why}</p> : null}
      </div>
    </section>
  );
}
