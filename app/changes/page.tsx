import type { Metadata } from 'next';
import Link from 'next/link';
import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { ChangeItem } from '@/app/changes/change-item.tsx';
import { ChangesForm } from '@/app/changes/changes-form.tsx';
import { filterOf, readChangesAsk, writeChangesAsk } from '@/app/changes/changes-query.ts';
import { whoIs } from '@/lib/model/person.ts';
import { lastChangeOf, readAuthors, readChanges } from '@/lib/store/change-log.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { changeWords } from '@/lib/words/change.ts';
import styles from './changes.module.css';

export const metadata: Metadata = { title: 'Changes' };

const ON_A_PAGE = 30;

/** Who changed what, when, from what to what; a page at a time, newest first. The address is the question. */
export default async function ChangesPage({ searchParams }: { searchParams: Promise<RawQuery> }) {
  const person = await requirePermission('read');
  const [raw, units] = await Promise.all([searchParams, readUnits()]);
  const db = serverDatabase();
  const { ask, refused } = readChangesAsk(raw);
  const page = { limit: ON_A_PAGE + 1, filter: filterOf(ask) };
  const found = readChanges(db, ask.before === undefined ? page : { ...page, before: ask.before });
  const shown = found.slice(0, ON_A_PAGE);
  const own = lastChangeOf(db, whoIs(person));
  return (
    <div className="stack">
      <h1>Changes</h1>
      {own === null ? null : (
        <p>
          Your last change: <Link href={`/changes/${own.id}`}>{changeWords(own)}</Link>. It can be undone
          there.
        </p>
      )}
      <ChangesForm key={JSON.stringify(ask)} ask={ask} authors={readAuthors(db)} />
      <AskedRefusals title="Part of the address could not be read and was left out" refused={refused} />
      {shown.length === 0 ? <p className="sheet soft">No change matches.</p> : null}
      <ol className={styles.list}>
        {shown.map((change) => (
          <ChangeItem key={change.id} change={change} units={units} />
        ))}
      </ol>
      <nav className={styles.pages} aria-label="Pages of changes">
        {ask.before === undefined ? null : (
          <Link href={`/changes?${writeChangesAsk({ ...ask, before: undefined })}`} className="button">
            Newest
          </Link>
        )}
        {found.length > ON_A_PAGE ? (
          <Link
            href={`/changes?${writeChangesAsk(ask, { before: shown.at(-1)!.id })}`}
            className="button"
            prefetch={false}
          >
            Older
          </Link>
        ) : null}
      </nav>
    </div>
  );
}
