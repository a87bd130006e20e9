'use client';

import Link from 'next/link';
import { useEffect, useRef } from 'react';
import { PlanResult } from '@/app/import/plan-result.tsx';
import { StoreBar } from '@/app/import/store-bar.tsx';
import type { RunState, useDryRun } from '@/app/import/use-dry-run.ts';
import { WorkingBar } from '@/app/import/working-bar.tsx';
import type { ImportMode } from '@/lib/import/plan-import.ts';
import type { Role } from '@/lib/model/permissions.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './import.module.css';
import { LIST_WORDS } from './list-words.ts';

const MODES: readonly { mode: ImportMode; label: string }[] = [
  { mode: 'all-or-nothing', label: 'Store all rows or nothing' },
  { mode: 'good-rows-only', label: 'Store the good rows, leave the refused ones out' },
];

/** What the files would change, found without changing anything; then storing it. */
export function DryRunPart({
  work,
  role,
  mode,
  waiting,
  onMode,
  onMore,
}: {
  work: ReturnType<typeof useDryRun>;
  role: Role;
  mode: ImportMode;
  /** Files that are not read, or cannot be. */
  waiting: number;
  onMode: (mode: ImportMode) => void;
  onMore: () => void;
}) {
  const { state } = work;
  const isBusy = state.is === 'running' || state.is === 'storing';
  if (state.is === 'stored') return <Stored state={state} onMore={onMore} />;
  return (
    <section className="sheet stack" aria-labelledby="dry-run">
      <h2 id="dry-run">What would change</h2>
      <fieldset className={styles.modes} disabled={isBusy}>
        <legend className="unseen">Refused rows</legend>
        {MODES.map((each) => (
          <label key={each.mode}>
            <input type="radio" name="mode" checked={mode === each.mode} onChange={() => onMode(each.mode)} />
            {each.label}
          </label>
        ))}
      </fieldset>
      {waiting > 0 ? (
        <p className="soft">
          {waiting === 1 ? 'One file is' : `${waiting} files are`} not read: mend or leave out first.
        </p>
      ) : null}
      {isBusy ? null : (
        <div className="row">
          <button
            type="button"
            className={state.is === 'none' || state.is === 'stopped' ? 'button-main' : undefined}
            disabled={waiting > 0}
            onClick={() => work.run(mode)}
          >
            {state.is === 'none' ? 'Try it without storing' : 'Try again'}
          </button>
          {state.is === 'none' ? (
            <span className="soft">Reads every row and compares it with the site.</span>
          ) : null}
        </div>
      )}
      <WorkingBar state={state} onStop={work.stop} />
      <Result state={state} role={role} onStore={work.store} />
    </section>
  );
}

function Result({
  state,
  role,
  onStore,
}: {
  state: RunState;
  role: Role;
  onStore: ReturnType<typeof useDryRun>['store'];
}) {
  switch (state.is) {
    case 'stopped':
      return <p role="status">Stopped. Nothing was stored.</p>;
    case 'failed':
      return (
        <p role="alert" className="fault">
          The dry run broke off: {state.why}. Nothing was stored.
        </p>
      );
    case 'shown':
    case 'storing':
    case 'refused':
      return (
        <>
          {state.is === 'shown' && state.again ? (
            <p role="alert" className={styles.needed}>
              <strong>The site has changed meanwhile.</strong> Nothing was stored: what was to be stored is no
              longer what you saw. This is the dry run on the site as it stands now.
            </p>
          ) : null}
          {state.is === 'refused' ? (
            <p role="alert" className="fault">
              {state.message}
            </p>
          ) : null}
          {state.run.shown.map((shown) => (
            <PlanResult key={shown.file.key} shown={shown} />
          ))}
          <StoreBar run={state.run} role={role} isStoring={state.is === 'storing'} onStore={onStore} />
        </>
      );
    default:
      return null;
  }
}

function Stored({ state, onMore }: { state: Extract<RunState, { is: 'stored' }>; onMore: () => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="sheet stack" aria-labelledby="stored">
      <h2 id="stored" ref={heading} tabIndex={-1}>
        Stored
      </h2>
      <ul>
        {state.run.shown.map(({ file, plan }) => (
          <li key={file.key}>
            {LIST_WORDS[plan.list]} from {file.name}: {groupDigits(plan.added.length)} added,{' '}
            {groupDigits(plan.changed.length)} changed, {groupDigits(plan.unchanged)} unchanged,{' '}
            {groupDigits(plan.refused.length)} refused.
          </li>
        ))}
      </ul>
      <p>
        The site stands at revision {groupDigits(state.revision)}; storing took{' '}
        {(state.milliseconds / 1000).toFixed(1)} s. It can be undone from the change log.
      </p>
      <div className="row">
        <button type="button" className="button-main" onClick={onMore}>
          Read in more
        </button>
        <Link className="button" href="/racks">
          Racks
        </Link>
        <Link className="button" href="/loads">
          Loads
        </Link>
        <Link className="button" href="/changes">
          Change log
        </Link>
      </div>
    </section>
  );
}
