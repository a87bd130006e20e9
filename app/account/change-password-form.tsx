'use client';

import { useActionState } from 'react';
import { Faults } from '@/app/_parts/faults.tsx';
import { NewPassword } from '@/app/_parts/new-password.tsx';
import styles from '@/app/_parts/sign-in.module.css';
import { type ChangePasswordState, changePassword } from '@/app/account/actions.ts';

export function ChangePasswordForm({ signInName }: { signInName: string }) {
  const [outcome, act, busy] = useActionState<ChangePasswordState, FormData>(changePassword, {
    state: 'none',
  });
  return (
    <form action={act} className={styles.form}>
      <input type="hidden" autoComplete="username" value={signInName} readOnly />
      <div className="field">
        <label htmlFor="current-password">Password until now</label>
        <input
          id="current-password"
          name="current"
          type="password"
          autoComplete="current-password"
          required
          maxLength={1000}
        />
      </div>
      <NewPassword />
      <Faults faults={outcome.state === 'refused' ? outcome.faults : []} />
      <p role="status">
        {outcome.state === 'done' ? 'The password is changed. You are signed out everywhere else.' : null}
      </p>
      <button type="submit" className="button-main" disabled={busy}>
        Change the password
      </button>
    </form>
  );
}
