'use client';

import { useActionState } from 'react';
import { type ImportState, importSiteFile } from '@/app/site/actions.ts';
import { expectedWords, refusalsAdvice } from '@/lib/words/refusal.ts';
import styles from './site.module.css';

export function ImportForm() {
  const [outcome, act, busy] = useActionState<ImportState, FormData>(importSiteFile, { state: 'none' });
  return (
    <>
      <form action={act} className={styles.import}>
        <div className="field">
          <label htmlFor="site-file">Site file (JSON)</label>
          <input id="site-file" name="file" type="file" accept=".json,application/json" required />
        </div>
        <button type="submit" className="button-main" disabled={busy}>
          {busy ? 'Reading…' : 'Read it in'}
        </button>
      </form>
      <div aria-live="polite">
        <Outcome outcome={outcome} />
      </div>
    </>
  );
}

function Outcome({ outcome }: { outcome: ImportState }) {
  switch (outcome.state) {
    case 'none':
      return null;
    case 'incomplete':
      return <p>Choose a file first.</p>;
    case 'done':
      return (
        <p>
          <strong>{outcome.siteName}</strong> was read in from {outcome.fileName}. It is revision{' '}
          {outcome.revision}.
        </p>
      );
    case 'refused':
      return (
        <div className="stack">
          <p>
            <strong>
              {outcome.fileName}: {outcome.count === 1 ? '1 fault' : `${outcome.count} faults`}.
            </strong>{' '}
            {refusalsAdvice(outcome.count)}
          </p>
          <div className={styles.refusals}>
            <table>
              <caption className="unseen">Faults in the file</caption>
              <thead>
                <tr>
                  <th scope="col">Where</th>
                  <th scope="col">Came</th>
                  <th scope="col">Expected</th>
                </tr>
              </thead>
              <tbody>
                {outcome.refusals.map((refusal) => (
                  <tr key={`${refusal.path} ${refusal.came} ${refusal.expected.is}`}>
                    <th scope="row">
                      <code>{refusal.path}</code>
                    </th>
                    <td>{refusal.came}</td>
                    <td>{expectedWords(refusal.expected)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {outcome.count > outcome.refusals.length ? (
            <p className="soft">The first {outcome.refusals.length} are shown.</p>
          ) : null}
        </div>
      );
  }
}
