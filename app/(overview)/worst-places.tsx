'use client';

import Link from 'next/link';
import { useMemo } from 'react';
import { type RacksAnswer, ruleAt, spareAt, truckAt } from '@/app/_parts/racks-answer.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictMark } from '@/app/_parts/verdict-badge.tsx';
import { VERDICTS } from '@/lib/check/step.ts';
import { formatMass, groupDigits } from '@/lib/units/format-quantity.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { codeWord } from './look-words.ts';
import styles from './overview.module.css';
import type { OverviewQuery } from './overview-query.ts';
import { racksHref } from './racks-href.ts';
import { worstPlaces } from './trouble.ts';

const SHOWN = 40;

/** The places that are not in order, worst first, each one tap from its elevation. */
export function WorstPlaces({
  answer,
  codes,
  query,
}: {
  answer: RacksAnswer | null;
  codes: Uint8Array | null;
  query: OverviewQuery;
}) {
  const worst = useMemo(
    () => (answer === null || codes === null ? null : worstPlaces(answer, codes, SHOWN)),
    [answer, codes],
  );
  const firstRun = answer?.places[0]?.run.id;
  return (
    <section className={`sheet ${styles.worst}`} aria-labelledby="worst-heading">
      <h2 id="worst-heading">Trouble first</h2>
      {worst === null || answer === null || codes === null ? (
        <p className="soft">Not judged yet.</p>
      ) : worst.inAll === 0 ? (
        <p>Every stocked location is in order.</p>
      ) : (
        <>
          <ol>
            {worst.places.map((at) => (
              <WorstPlace key={at} answer={answer} at={at} code={codes[at]!} query={query} />
            ))}
          </ol>
          {worst.inAll > worst.places.length && firstRun !== undefined ? (
            <Link href={racksHref(query, { run: firstRun }, 'table')} className="button" prefetch={false}>
              All {groupDigits(worst.inAll)} in the table
            </Link>
          ) : null}
        </>
      )}
    </section>
  );
}

function WorstPlace({
  answer,
  at,
  code,
  query,
}: {
  answer: RacksAnswer;
  at: number;
  code: number;
  query: OverviewQuery;
}) {
  const units = useUnits();
  const place = answer.places[at]!;
  const verdict = VERDICTS[code]!;
  const standing = answer.index.stockAt.get(place.id);
  const rule = ruleAt(answer, at);
  const spare = spareAt(answer, at);
  const able = answer.summary.clear[at]! + answer.summary.thin[at]!;
  const why = [
    able === 1 ? truckAt(answer, at) : rule === null ? null : ruleTitle(rule),
    spare === null
      ? null
      : spare < 0
        ? `${formatMass(-spare, units, 'up')} too much`
        : `${formatMass(spare, units, 'down')} to spare`,
  ];
  return (
    <li>
      <Link href={racksHref(query, { place })} prefetch={false}>
        <VerdictMark verdict={verdict} />
        <span>
          <strong>{place.id}</strong> {codeWord(verdict, query.look)}
          <span className="soft dense">
            {standing === undefined ? '' : `${standing.id} ${standing.name}`}
            <br />
            {why.filter((part) => part !== null).join(' · ')}
          </span>
        </span>
      </Link>
    </li>
  );
}
