import { type Column, DataTable, type Row } from '@/app/_parts/data-table.tsx';
import type { Change } from '@/lib/store/change-log.ts';

const COLUMNS: readonly Column[] = [
  { id: 'at', label: 'When (UTC)', kind: 'words' },
  { id: 'who', label: 'Who', kind: 'words' },
  { id: 'what', label: 'What', kind: 'words' },
  { id: 'subject', label: 'Which', kind: 'words' },
];

const KINDS: Record<Change['kind'], string> = {
  import: 'read in',
  save: 'changed',
  add: 'added',
  remove: 'removed',
};

/** The last changes, newest first. */
export function ChangeLog({ changes }: { changes: readonly Change[] }) {
  const rows: Row[] = changes.map((change) => {
    const at = change.at.slice(0, 16).replace('T', ' ');
    const what = `${change.noun.replace('-', ' ')} ${KINDS[change.kind]}`;
    return {
      id: String(change.id),
      find: `${at} ${change.who} ${what} ${change.subject}`,
      cells: {
        at: { show: at, sort: change.at },
        who: { show: change.who, sort: change.who },
        what: { show: what, sort: what },
        subject: { show: change.subject, sort: change.subject },
      },
    };
  });
  return (
    <section className="stack" aria-labelledby="changes-heading">
      <h2 id="changes-heading">Last changes</h2>
      {rows.length === 0 ? (
        <p className="soft">None yet.</p>
      ) : (
        <DataTable caption="Last changes to the site" columns={COLUMNS} rows={rows} />
      )}
    </section>
  );
}
