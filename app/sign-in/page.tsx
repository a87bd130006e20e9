import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { nextAddress } from '@/app/_parts/gate.ts';
import { currentlySignedIn } from '@/app/_parts/require-permission.ts';
import styles from '@/app/_parts/sign-in.module.css';
import { DemoRoles } from '@/app/sign-in/demo-roles.tsx';
import { SignInForm } from '@/app/sign-in/sign-in-form.tsx';
import { ROLES } from '@/lib/model/permissions.ts';
import { needsAdministrator } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { serverOffersDemo } from '@/lib/store/sign-in.ts';
import { roleDuty, roleWords } from '@/lib/words/people.ts';

export const metadata: Metadata = { title: 'Sign in' };

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ next?: unknown }> }) {
  const next = nextAddress((await searchParams).next);
  if ((await currentlySignedIn()) !== null) redirect(next);
  const isDemo = serverOffersDemo(await headers());
  const isNew = needsAdministrator(serverDatabase());
  return (
    <div className={`${styles.sheet} stack`}>
      <h1>Sign in</h1>
      {isDemo ? (
        <section className="sheet stack" aria-labelledby="demo-heading">
          <h2 id="demo-heading">Look round the demo as</h2>
          <DemoRoles
            next={next}
            roles={ROLES.map((role) => ({ role, name: roleWords(role), duty: roleDuty(role) }))}
          />
          <p className="soft">
            No password: this database holds the demo and only this machine can reach it. Reading in another
            site file ends the demo.
          </p>
        </section>
      ) : null}
      {isNew ? (
        <p className="soft">
          To begin with a site of your own, open the one-time link that was printed when Tinewise started: it
          makes the administrator.
        </p>
      ) : (
        <section className="sheet">
          <SignInForm next={next} />
        </section>
      )}
    </div>
  );
}
