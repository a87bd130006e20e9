import Link from 'next/link';
import type { Site } from '@/lib/model/site.ts';
import styles from './rack-shape.module.css';

/** The runs that stand, by aisle. */
export function RunLinks({ site, here }: { site: Site; here: string | null }) {
  return (
    <details className={`sheet ${styles.runs}`}>
      <summary>{here === null ? 'Change a run that stands' : 'Another run'}</summary>
      <ul>
        {site.aisles.map((aisle) => (
          <li key={aisle.id}>
            <span className="soft">Aisle {aisle.id}</span>
            {site.runs
              .filter((run) => run.aisleId === aisle.id)
              .map((run) => (
                <Link
                  key={run.id}
                  className="button"
                  href={`/rack-shape/${encodeURIComponent(run.id)}`}
                  aria-current={run.id === here ? 'page' : undefined}
                >
                  {run.id}
                </Link>
              ))}
          </li>
        ))}
      </ul>
    </details>
  );
}
