'use client';

import { useActionState } from 'react';
import { Faults } from '@/app/_parts/faults.tsx';
import { NewPassword } from '@/app/_parts/new-password.tsx';
import styles from '@/app/_parts/sign-in.module.css';
import { makeFirstAdministrator } from '@/app/first-start/actions.ts';

export function AdministratorForm({ link }: { link: string }) {
  const [{ faults }, act, busy] = useActionState(makeFirstAdministrator, { faults: [] });
  return (
    <form action={act} className={styles.form}>
      <h2>Make the administrator</h2>
      <p className="soft">The administrator lets the others in and gives them their roles.</p>
      <input type="hidden" name="link" value={link} />
      <div className="field">
        <label htmlFor="name">Your name</label>
        <input id="name" name="name" autoComplete="name" required maxLength={120} />
      </div>
      <div className="field">
        <label htmlFor="sign-in-name">Sign-in name or e-mail</label>
        <input
          id="sign-in-name"
          name="signInName"
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          required
          maxLength={200}
        />
      </div>
      <NewPassword />
      <Faults faults={faults} />
      <button type="submit" className="button-main" disabled={busy}>
        Make the administrator
      </button>
    </form>
  );
}
