import type { Metadata } from 'next';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { AddPersonForm } from '@/app/people/add-person-form.tsx';
import { PeopleChanges } from '@/app/people/people-changes.tsx';
import { PersonCard } from '@/app/people/person-card.tsx';
import { listPeople, readPeopleChanges } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { NOT_FROM_DEMO_SENTENCE } from '@/lib/words/people.ts';
import styles from './people.module.css';

export const metadata: Metadata = { title: 'People and roles' };

const CHANGES_SHOWN = 50;

export default async function PeoplePage() {
  const own = await requirePermission('manage-people');
  const db = serverDatabase();
  const people = listPeople(db);
  return (
    <div className="stack">
      <h1>People and roles</h1>
      <section className="sheet stack" aria-labelledby="add-heading">
        <h2 id="add-heading">Let somebody in</h2>
        {own.isDemo ? <p className="soft">{NOT_FROM_DEMO_SENTENCE}</p> : <AddPersonForm />}
      </section>
      {people.length === 0 ? (
        <p className="soft">Nobody yet. The built-in people of the demo are not listed.</p>
      ) : (
        <ul className={styles.people} aria-label="People">
          {people.map((person) => (
            <PersonCard
              key={person.id}
              person={person}
              isOwn={person.id === own.id}
              mayChange={!own.isDemo}
            />
          ))}
        </ul>
      )}
      <PeopleChanges changes={readPeopleChanges(db, CHANGES_SHOWN)} />
    </div>
  );
}
