import type { Metadata } from 'next';
import styles from '@/app/_parts/sign-in.module.css';
import { PasswordForm } from '@/app/set-password/password-form.tsx';
import { purposeOfLink } from '@/lib/store/one-time-links.ts';
import { findPerson } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'Choose a password' };

/** Where a person chooses a password, for whoever holds the link that an administrator handed over. */
export default async function SetPasswordPage({
  searchParams,
}: {
  searchParams: Promise<{ link?: unknown }>;
}) {
  const { link } = await searchParams;
  const db = serverDatabase();
  const purpose = typeof link === 'string' ? purposeOfLink(db, link, new Date()) : null;
  const person = purpose?.kind === 'password' ? findPerson(db, purpose.person) : null;
  return (
    <div className={`${styles.sheet} stack`}>
      <h1>Choose a password</h1>
      <section className="sheet stack">
        {person === null ? (
          <p>This link is used or over. An administrator can give you a new one.</p>
        ) : (
          <PasswordForm link={String(link)} name={person.name} signInName={person.signInName} />
        )}
      </section>
    </div>
  );
}
