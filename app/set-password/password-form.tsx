'use client';

import { useActionState } from 'react';
import { Faults } from '@/app/_parts/faults.tsx';
import { NewPassword } from '@/app/_parts/new-password.tsx';
import styles from '@/app/_parts/sign-in.module.css';
import { setPassword } from '@/app/set-password/actions.ts';

export function PasswordForm(person: { link: string; name: string; signInName: string }) {
  const [{ faults }, act, busy] = useActionState(setPassword, { faults: [] });
  return (
    <form action={act} className={styles.form}>
      <p>
        For <strong>{person.name}</strong>, who signs in as <code>{person.signInName}</code>.
      </p>
      <input type="hidden" name="link" value={person.link} />
      <input type="hidden" autoComplete="username" value={person.signInName} readOnly />
      <NewPassword />
      <Faults faults={faults} />
      <button type="submit" className="button-main" disabled={busy}>
        Set the password
      </button>
    </form>
  );
}
