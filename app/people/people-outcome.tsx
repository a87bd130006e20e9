'use client';

import { useState, useSyncExternalStore } from 'react';
import { Faults } from '@/app/_parts/faults.tsx';
import styles from '@/app/_parts/sign-in.module.css';
import type { PeopleState } from '@/app/people/actions.ts';

/** What became of a change to people, with the link to hand over where one was made. */
export function PeopleOutcome({ outcome }: { outcome: PeopleState }) {
  switch (outcome.state) {
    case 'none':
      return <div role="status" />;
    case 'refused':
      return <Faults faults={outcome.faults} />;
    case 'done':
      return (
        <div role="status" className="stack">
          <p>{outcome.said}</p>
          {outcome.link === null ? null : <LinkToHandOver key={outcome.link} path={outcome.link} />}
        </div>
      );
  }
}

function LinkToHandOver({ path }: { path: string }) {
  const origin = useSyncExternalStore(neverChanges, ownOrigin, noOrigin);
  const [isCopied, setCopied] = useState(false);
  const link = origin + path;
  return (
    <div className={styles.link}>
      <label className="unseen" htmlFor={path}>
        One-time link
      </label>
      <input id={path} readOnly value={link} onFocus={(event) => event.target.select()} />
      <button
        type="button"
        onClick={() =>
          // there is no clipboard without https: the field stays to copy from by hand
          navigator.clipboard?.writeText(link).then(
            () => setCopied(true),
            () => setCopied(false),
          )
        }
      >
        {isCopied ? 'Copied' : 'Copy'}
      </button>
      <p className="soft dense">
        Hand this link to the person, who chooses a password with it: good once, for a day. It is not shown
        again.
      </p>
    </div>
  );
}

const neverChanges = () => () => {};
const ownOrigin = () => window.location.origin;
const noOrigin = () => '';
