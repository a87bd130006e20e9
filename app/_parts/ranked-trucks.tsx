import Link from 'next/link';
import type { LiftQuery } from '@/app/_parts/lift-query.ts';
import { workingHref } from '@/app/_parts/screen-links.ts';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import type { LiftAnswer } from '@/lib/check/step.ts';
import { found, type SiteIndex } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatMass } from '@/lib/units/format-quantity.ts';
import { answerLead, leadSentence } from '@/lib/words/room.ts';
import styles from './ranked-trucks.module.css';

/** Trucks for one lift, best first: verdict, name, the one reason, and the most each could lift there. Each leads to its working. */
export function RankedTrucks({
  answers,
  index,
  query,
  units,
  label,
}: {
  answers: readonly LiftAnswer[];
  index: SiteIndex;
  query: LiftQuery;
  units: DisplayUnits;
  label: string;
}) {
  return (
    <ol className={styles.list} aria-label={label}>
      {answers.map((answer) => {
        const truck = found(index.trucks, answer.truck, 'truck');
        return (
          <li key={answer.truck}>
            <Link
              href={workingHref({ ...query, truck: answer.truck })}
              className={styles.link}
              prefetch={false}
            >
              <span className={styles.verdict}>
                <VerdictBadge verdict={answer.verdict} />
              </span>
              <span className={styles.truck}>
                <strong>{truck.id}</strong> <span className="soft">{truck.name}</span>
              </span>
              <span className={styles.most}>
                {answer.mostKg === null ? (
                  <span className="soft">most not known</span>
                ) : (
                  <>
                    <span className="soft">most </span>
                    <strong>{formatMass(answer.mostKg, units, 'down')}</strong>
                  </>
                )}
              </span>
              <span className={styles.reason}>{leadSentence(answerLead(answer, units))}</span>
            </Link>
          </li>
        );
      })}
    </ol>
  );
}
