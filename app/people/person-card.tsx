'use client';

import { useActionState } from 'react';
import { changePerson, type PeopleState } from '@/app/people/actions.ts';
import styles from '@/app/people/people.module.css';
import { PeopleOutcome } from '@/app/people/people-outcome.tsx';
import { RoleField } from '@/app/people/role-field.tsx';
import type { ListedPerson } from '@/lib/store/people.ts';
import { roleWords } from '@/lib/words/people.ts';

/** One person with what an administrator can do about them. */
export function PersonCard({
  person,
  isOwn,
  mayChange,
}: {
  person: ListedPerson;
  isOwn: boolean;
  mayChange: boolean;
}) {
  const [outcome, act, busy] = useActionState<PeopleState, FormData>(changePerson, { state: 'none' });
  const heading = `person-${person.id}`;
  return (
    <li className="sheet stack" aria-labelledby={heading}>
      <div className="row">
        <h2 id={heading}>{person.name}</h2>
        <code>{person.signInName}</code>
        {isOwn ? <span className="soft">you</span> : null}
        <span className="soft">{standing(person)}</span>
      </div>
      {mayChange ? (
        <form action={act} className={styles.fields}>
          <input type="hidden" name="id" value={person.id} />
          <RoleField id={`role-${person.id}`} value={person.role} />
          <button type="submit" name="change" value="role" disabled={busy}>
            Change the role
          </button>
          <button type="submit" name="change" value="link" disabled={busy || person.isDisabled}>
            {person.hasPassword ? 'Link for a new password' : 'Link for a password'}
          </button>
          <button
            type="submit"
            name="change"
            value="end-sessions"
            disabled={busy || person.sessionCount === 0}
          >
            Sign out everywhere
          </button>
          <button
            type="submit"
            name="change"
            value={person.isDisabled ? 'enable' : 'disable'}
            disabled={busy}
          >
            {person.isDisabled ? 'Let in again' : 'Disable'}
          </button>
        </form>
      ) : (
        <p>{roleWords(person.role)}</p>
      )}
      <PeopleOutcome outcome={outcome} />
    </li>
  );
}

function standing(person: ListedPerson): string {
  if (person.isDisabled) return 'disabled';
  if (!person.hasPassword) return 'has not chosen a password yet';
  if (person.lastSeenAt === null) return 'signed out';
  return `signed in, last seen ${person.lastSeenAt.slice(0, 16).replace('T', ' ')} UTC`;
}
