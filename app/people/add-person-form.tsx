'use client';

import { useActionState } from 'react';
import { letIn, type PeopleState } from '@/app/people/actions.ts';
import styles from '@/app/people/people.module.css';
import { PeopleOutcome } from '@/app/people/people-outcome.tsx';
import { RoleField } from '@/app/people/role-field.tsx';

export function AddPersonForm() {
  const [outcome, act, busy] = useActionState<PeopleState, FormData>(letIn, { state: 'none' });
  return (
    <>
      <form action={act} className={styles.fields}>
        <div className="field">
          <label htmlFor="new-name">Name</label>
          <input id="new-name" name="name" autoComplete="off" required maxLength={120} />
        </div>
        <div className="field">
          <label htmlFor="new-sign-in-name">Sign-in name or e-mail</label>
          <input
            id="new-sign-in-name"
            name="signInName"
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            required
            maxLength={200}
          />
        </div>
        <RoleField id="new-role" value="viewer" />
        <button type="submit" className="button-main" disabled={busy}>
          Add
        </button>
      </form>
      <PeopleOutcome outcome={outcome} />
    </>
  );
}
