import { type Column, DataTable, type Row } from '@/app/_parts/data-table.tsx';
import type { readPeopleChanges } from '@/lib/store/people.ts';
import { roleWords } from '@/lib/words/people.ts';

type Change = ReturnType<typeof readPeopleChanges>[number];

const COLUMNS: readonly Column[] = [
  { id: 'at', label: 'When (UTC)', kind: 'words' },
  { id: 'who', label: 'Who', kind: 'words' },
  { id: 'what', label: 'What', kind: 'words' },
  { id: 'person', label: 'To whom', kind: 'words' },
];

const WHAT: Record<Change['what'], string> = {
  added: 'added',
  'link-made': 'password link made',
  'password-set': 'password set',
  'role-changed': 'role changed',
  disabled: 'disabled',
  enabled: 'let in again',
  'sessions-ended': 'signed out everywhere',
};

/** What was done to people, newest first. For administrators only: the site's change log does not hold it. */
export function PeopleChanges({ changes }: { changes: readonly Change[] }) {
  const rows: Row[] = changes.map((change) => {
    const at = change.at.slice(0, 16).replace('T', ' ');
    const what = change.role === null ? WHAT[change.what] : `${WHAT[change.what]}: ${roleWords(change.role)}`;
    return {
      id: String(change.id),
      find: `${at} ${change.who} ${what} ${change.person}`,
      cells: {
        at: { show: at, sort: change.at },
        who: { show: change.who, sort: change.who },
        what: { show: what, sort: what },
        person: { show: change.person, sort: change.person },
      },
    };
  });
  return (
    <section className="stack" aria-labelledby="changes-heading">
      <h2 id="changes-heading">Last changes to people</h2>
      {rows.length === 0 ? (
        <p className="soft">None yet.</p>
      ) : (
        <DataTable caption="Last changes to people" columns={COLUMNS} rows={rows} />
      )}
    </section>
  );
}
