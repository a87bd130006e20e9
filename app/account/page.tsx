import type { Metadata } from 'next';
import Link from 'next/link';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import styles from '@/app/_parts/sign-in.module.css';
import { ChangePasswordForm } from '@/app/account/change-password-form.tsx';
import { SignOutButton } from '@/app/account/sign-out-button.tsx';
import { may, PERMISSION_IDS } from '@/lib/model/permissions.ts';
import { permissionWords, roleWords } from '@/lib/words/people.ts';

export const metadata: Metadata = { title: 'Your account' };

export default async function AccountPage() {
  const person = await requirePermission('read');
  const allowed = PERMISSION_IDS.filter((what) => what !== 'read' && may(person.role, what));
  return (
    <div className={`${styles.sheet} stack`}>
      <h1>{person.name}</h1>
      <section className="sheet stack" aria-labelledby="role-heading">
        <h2 id="role-heading">Role: {roleWords(person.role)}</h2>
        {allowed.length === 0 ? (
          <p>You may look at everything and change nothing.</p>
        ) : (
          <>
            <p>You may look at everything, and</p>
            <ul>
              {allowed.map((what) => (
                <li key={what}>{permissionWords(what)}</li>
              ))}
            </ul>
          </>
        )}
        {may(person.role, 'manage-people') ? (
          <Link className="button" href="/people">
            People and roles
          </Link>
        ) : null}
        <SignOutButton />
      </section>
      <section className="sheet stack" aria-labelledby="password-heading">
        <h2 id="password-heading">Change your password</h2>
        {person.isDemo ? (
          <p className="soft">People of the demo have no password.</p>
        ) : (
          <ChangePasswordForm signInName={person.signInName} />
        )}
      </section>
    </div>
  );
}
