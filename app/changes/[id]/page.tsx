import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { readUnits } from '@/app/_parts/read-units.ts';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { DifferenceTable } from '@/app/changes/difference-table.tsx';
import { UndoPart } from '@/app/changes/undo-part.tsx';
import type { Unavailable } from '@/lib/model/change.ts';
import { differences } from '@/lib/model/differences.ts';
import { whoIs } from '@/lib/model/person.ts';
import { readBatch, readChange } from '@/lib/store/change-log.ts';
import { type Reverted, tryRevert } from '@/lib/store/revert-change.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { StoreUnavailable } from '@/lib/store/transaction.ts';
import { changeWords } from '@/lib/words/change.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from '../changes.module.css';

type Params = { params: Promise<{ id: string }>; searchParams: Promise<RawQuery> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: `Change ${(await params).id}` };
}

/** One change with all that was changed together with it, field by field, and what undoing it would do. */
export default async function ChangePage({ params, searchParams }: Params) {
  const person = await requirePermission('read');
  const [{ id }, raw, units] = await Promise.all([params, searchParams, readUnits()]);
  const db = serverDatabase();
  const change = /^\d{1,15}$/.test(id) ? readChange(db, Number(id)) : null;
  if (change === null) notFound();
  const batch = readBatch(db, change.batch);
  const actor = { who: whoIs(person), at: new Date().toISOString() };
  const { outcome, failed } = tried();
  return (
    <div className="stack">
      <header>
        <p>
          <Link href="/changes">Changes</Link>
        </p>
        <h1>{changeWords(change)}</h1>
        <p className="soft">
          {instantWords(change.at)}, {change.who}, number {change.id}
        </p>
      </header>
      {batch.map((made) => (
        <section key={made.id} className={`sheet ${styles.item}`}>
          <h2>{batch.length === 1 ? 'What it changed' : changeWords(made)}</h2>
          <DifferenceTable
            caption={changeWords(made)}
            differences={differences(made.before, made.after)}
            units={units}
          />
        </section>
      ))}
      <UndoPart
        change={change}
        batch={batch}
        outcome={outcome}
        role={person.role}
        failed={failed ?? [raw.failed].flat()[0]}
        units={units}
      />
    </div>
  );

  /** A disk that is full must not keep the change itself from being read. */
  function tried(): { outcome: Reverted | null; failed?: Unavailable } {
    try {
      return { outcome: tryRevert(db, Number(id), actor) };
    } catch (error) {
      if (error instanceof StoreUnavailable) return { outcome: null, failed: error.reason };
      throw error;
    }
  }
}
