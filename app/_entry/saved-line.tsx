import Link from 'next/link';
import type { RawQuery } from '@/app/_parts/lift-query.ts';
import styles from './entry.module.css';

/** What was just stored, with the way back; says nothing on a page that was opened otherwise. */
export function SavedLine({ raw }: { raw: RawQuery }) {
  const [saved, gone] = [revisionIn(raw.saved), revisionIn(raw.gone)];
  const revision = saved ?? gone;
  if (revision === null) return null;
  return (
    <p className={styles.saved} role="status">
      {saved === null ? 'Deleted.' : 'Saved.'}{' '}
      <Link href={`/changes/${revision}`}>See the change, or undo it</Link>
    </p>
  );
}

function revisionIn(value: RawQuery[string]): number | null {
  return typeof value === 'string' && /^\d{1,12}$/.test(value) ? Number(value) : null;
}
