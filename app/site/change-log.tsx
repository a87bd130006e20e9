import Link from 'next/link';
import { type Column, DataTable, type Row } from '@/app/_parts/data-table.tsx';
import type { Change } from '@/lib/store/change-log.ts';
import { changeWords } from '@/lib/words/change.ts';

const COLUMNS: readonly Column[] = [
  { id: 'at', label: 'When (UTC)', kind: 'words' },
  { id: 'who', label: 'Who', kind: 'words' },
  { id: 'what', label: 'What', kind: 'words' },
];

/** The last changes, newest first. */
export function ChangeLog({ changes }: { changes: readonly Change[] }) {
  const rows: Row[] = changes.map((change) => {
    const at = change.at.slice(0, 16).replace('T', ' ');
    const what = changeWords(change);
    return {
      id: String(change.id),
      find: `${at} ${change.who} ${what}`,
      cells: {
        at: { show: at, sort: change.at },
        who: { show: change.who, sort: change.who },
        what: { show: what, sort: what },
      },
    };
  });
  return (
    <section className="stack" aria-labelledby="changes-heading">
      <h2 id="changes-heading">Last changes</h2>
      {rows.length === 0 ? (
        <p className="soft">None yet.</p>
      ) : (
        <>
          <DataTable caption="Last changes to the site" columns={COLUMNS} rows={rows} />
          <Link href="/changes">All changes, field by field, and the way back</Link>
        </>
      )}
    </section>
  );
}
