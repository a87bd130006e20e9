import type { Metadata } from 'next';
import styles from '@/app/_parts/sign-in.module.css';
import { AdministratorForm } from '@/app/first-start/administrator-form.tsx';
import { purposeOfLink } from '@/lib/store/one-time-links.ts';
import { needsAdministrator } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

export const metadata: Metadata = { title: 'First start' };

/** Where the first administrator is made, for whoever holds the link that was printed at the start. */
export default async function FirstStartPage({
  searchParams,
}: {
  searchParams: Promise<{ link?: unknown }>;
}) {
  const { link } = await searchParams;
  const db = serverDatabase();
  const purpose = typeof link === 'string' ? purposeOfLink(db, link, new Date()) : null;
  return (
    <div className={`${styles.sheet} stack`}>
      <h1>First start</h1>
      <section className="sheet stack">
        {purpose?.kind === 'first-administrator' ? (
          <AdministratorForm link={String(link)} />
        ) : needsAdministrator(db) ? (
          <>
            <p>
              Nobody can sign in yet. <strong>The link to begin stands where Tinewise was started</strong>,
              under its address: in the terminal window, or in the log of the service.
            </p>
            <p className="soft">
              It is good once and for a day. When it is over, stop Tinewise and start it again: a new link is
              printed.
            </p>
          </>
        ) : (
          <>
            <p>Tinewise has an administrator already. The link is good once only.</p>
            <a className="button button-main" href="/sign-in">
              Sign in
            </a>
          </>
        )}
      </section>
    </div>
  );
}
