import Link from 'next/link';
import type { Person } from '@/lib/model/person.ts';
import { roleWords } from '@/lib/words/people.ts';
import styles from './account-link.module.css';

/** Who is signed in, and the way to their own page. */
export function AccountLink({ person }: { person: Person }) {
  return (
    <Link
      href="/account"
      className={styles.account}
      aria-label={`Your account: ${person.name}, ${roleWords(person.role)}`}
    >
      <span className={styles.name}>{person.name}</span>
      <span className={styles.role}>{roleWords(person.role)}</span>
    </Link>
  );
}
