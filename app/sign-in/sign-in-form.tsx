'use client';

import { type FormEvent, useState } from 'react';
import { postJson } from '@/app/_parts/post-json.ts';
import styles from '@/app/_parts/sign-in.module.css';

export function SignInForm({ next }: { next: string }) {
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setBusy(true);
    const refused = await postJson('/api/auth/sign-in', {
      name: String(form.get('name')),
      password: String(form.get('password')),
    });
    if (refused === null) return window.location.assign(next);
    setBusy(false);
    setFault(refused);
  }
  return (
    <form method="post" className={styles.form} onSubmit={submit}>
      <div className="field">
        <label htmlFor="sign-in-name">Sign-in name or e-mail</label>
        <input
          id="sign-in-name"
          name="name"
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          required
          maxLength={200}
        />
      </div>
      <div className="field">
        <label htmlFor="sign-in-password">Password</label>
        <input
          id="sign-in-password"
          name="password"
          type="password"
          autoComplete="current-password"
          required
          maxLength={1000}
        />
      </div>
      <p className="fault" role="alert">
        {fault}
      </p>
      <button type="submit" className="button-main" disabled={busy}>
        {busy ? 'Signing in…' : 'Sign in'}
      </button>
      <p className="soft dense">
        Password forgotten? An administrator can give you a link to choose a new one.
      </p>
    </form>
  );
}
