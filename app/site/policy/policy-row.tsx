'use client';

import type { ReactNode } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { POLICY_FACTS, type PolicyFact } from '@/app/site/policy-facts.ts';
import { DEFAULT_POLICY, type Policy } from '@/lib/model/policy.ts';
import type { PolicyValue } from '@/lib/store/rows/policy.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './policy.module.css';

/** One value: its field, and beside it the default with its source and who set what is in force. */
export function PolicyRow<Key extends keyof Policy>({
  of,
  author,
  isChanged,
  onDefault,
  children,
}: {
  of: Key;
  author: PolicyValue | undefined;
  isChanged: boolean;
  /** Puts the default into the field; null where it stands there. */
  onDefault: (() => void) | null;
  children: ReactNode;
}) {
  const units = useUnits();
  const fact: PolicyFact<Key> = POLICY_FACTS[of];
  return (
    <fieldset className={styles.row} data-changed={isChanged}>
      <legend>{fact.label}</legend>
      <div>{children}</div>
      <div className={styles.beside}>
        <p>
          <span className="soft">Default:</span> {fact.show(DEFAULT_POLICY[of], units)}
          <span className="soft"> ({fact.source})</span>
        </p>
        <p className="soft">
          {author === undefined
            ? 'The default is in force.'
            : `Set by ${author.changedBy}, ${instantWords(author.changedAt)}.`}
          {isChanged ? <strong> Changed here, not saved yet.</strong> : null}
        </p>
        {onDefault === null ? null : (
          <button type="button" onClick={onDefault} aria-label={`Default: ${fact.label}`}>
            Put the default in
          </button>
        )}
      </div>
    </fieldset>
  );
}
