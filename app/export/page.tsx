import type { Metadata } from 'next';
import Link from 'next/link';
import { NoSite } from '@/app/_parts/no-site.tsx';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { countRows } from '@/app/export/count-rows.ts';
import { LIST_WORDS } from '@/app/import/list-words.ts';
import { mayImport } from '@/app/import/needed-permissions.ts';
import { LIST_NAMES } from '@/lib/import/lists.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './export.module.css';

export const metadata: Metadata = { title: 'Export lists' };

/** Everything that the site holds, to take away: whole, or list by list for a spreadsheet. */
export default async function ExportPage() {
  const { role } = await requirePermission('read');
  const snapshot = await siteSnapshot();
  if (snapshot === null) return <NoSite />;
  const { site, revision } = snapshot;
  return (
    <div className="stack">
      <h1>Export lists</h1>
      <p>
        {site.site.name} at revision {groupDigits(revision)}. What is exported can be{' '}
        <Link href="/import">read in again</Link> and changes nothing then.
      </p>
      <div className={styles.whole}>
        <section className="sheet stack" aria-labelledby="whole">
          <h2 id="whole">Everything</h2>
          <p className="soft">
            The site file holds every fact, policy included, and can take the place of a site. The zip file
            holds the lists below.
          </p>
          <div className="row">
            <a className="button button-main" href="/export/site.json" download>
              Site file (JSON)
            </a>
            <a className="button" href="/export/lists.zip" download>
              All lists (zip)
            </a>
          </div>
        </section>
        <section className="sheet stack" aria-labelledby="lists">
          <h2 id="lists">List by list</h2>
          <p className="soft">
            CSV with a header: lengths in mm, masses in kg, decimal points, times in UTC.
          </p>
          <table className={styles.lists}>
            <caption className="unseen">Lists that can be exported</caption>
            <thead>
              <tr>
                <th scope="col">List</th>
                <th scope="col" className="number">
                  Rows
                </th>
                <th scope="col">File</th>
              </tr>
            </thead>
            <tbody>
              {LIST_NAMES.map((list) => (
                <tr key={list}>
                  <th scope="row">
                    {mayImport(role, list) ? (
                      <Link href={`/import?list=${list}`}>{LIST_WORDS[list]}</Link>
                    ) : (
                      LIST_WORDS[list]
                    )}
                  </th>
                  <td className="number">{groupDigits(countRows(site, list))}</td>
                  <td>
                    <a
                      className={`button ${styles.file}`}
                      href={`/export/${list}.csv`}
                      download
                      aria-label={`${LIST_WORDS[list]} as CSV`}
                    >
                      CSV
                    </a>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </div>
    </div>
  );
}
