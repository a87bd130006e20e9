'use client';

import Link from 'next/link';
import { Fragment, useMemo, useState } from 'react';
import { workingHref } from '@/app/_parts/screen-links.ts';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import { VerdictHead } from '@/app/_parts/verdict-head.tsx';
import { WorkingSteps } from '@/app/_parts/working-steps.tsx';
import { checkLift } from '@/lib/check/check-lift.ts';
import { VERDICTS } from '@/lib/check/step.ts';
import type { Load } from '@/lib/model/load.ts';
import { found, indexSite } from '@/lib/model/site-index.ts';
import type { LiftChange, LiftComparison } from '@/lib/rack-shape/compare-lifts.ts';
import type { BeforeAfter } from '@/lib/rack-shape/site-of-run.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import styles from './rack-shape.module.css';

const SHOWN = 10;

/** Lifts whose verdict the change turns: how many from which verdict to which, and each with its working before and after. */
export function LiftsPart({
  lifts,
  sites,
  reference,
}: {
  lifts: LiftComparison;
  sites: BeforeAfter;
  reference: Load;
}) {
  const [shown, setShown] = useState(SHOWN);
  const [open, setOpen] = useState<LiftChange | null>(null);
  const fresh = Object.values(lifts.fresh).reduce((sum, count) => sum + count, 0);
  const turned = VERDICTS.flatMap((from) =>
    VERDICTS.filter((to) => to !== from && lifts.counts[from][to] > 0).map((to) => ({
      from,
      to,
      count: lifts.counts[from][to],
    })),
  );
  const listed = lifts.changes.slice(0, shown);
  return (
    <>
      {sites.before === null ? null : (
        <p>
          {lifts.changed === 0
            ? 'No lift changes its verdict.'
            : `${counted(lifts.changed, 'lift')} ${lifts.changed === 1 ? 'changes its verdict' : 'change their verdict'}:`}
        </p>
      )}
      {turned.length === 0 ? null : (
        <ul className={styles.turns} aria-label="Verdicts before and after">
          {turned.map(({ from, to, count }) => (
            <li key={`${from} ${to}`}>
              <strong>{count}</strong> <VerdictBadge verdict={from} /> <span aria-hidden="true">→</span>
              <span className="unseen">to</span> <VerdictBadge verdict={to} />
            </li>
          ))}
        </ul>
      )}
      {fresh === 0 ? null : (
        <>
          <p>The reference load put away at the new locations, by every truck:</p>
          <ul className={styles.turns} aria-label="Verdicts at the new locations">
            {VERDICTS.filter((verdict) => lifts.fresh[verdict] > 0).map((verdict) => (
              <li key={verdict}>
                <strong>{lifts.fresh[verdict]}</strong> <VerdictBadge verdict={verdict} />
              </li>
            ))}
          </ul>
        </>
      )}
      {listed.length === 0 ? null : (
        <ul className={styles.troubles} aria-label="Lifts that change, worst first">
          {listed.map((change) => (
            <Fragment key={`${change.asked.of} ${change.asked.operation} ${change.truck} ${change.after}`}>
              <li>
                <VerdictBadge verdict={change.to} />
                <span>
                  <strong>{change.after}</strong>
                  {change.before === change.after ? null : ` (${change.before} now)`}, {change.truck}:{' '}
                  {askedWords(change)}. {ruleTitle(change.toRule)}.{' '}
                  <Link href={beforeHref(change, reference)} target="_blank" rel="noreferrer">
                    Working as it is now
                  </Link>{' '}
                  <button
                    type="button"
                    className={styles.small}
                    aria-expanded={open === change}
                    onClick={() => setOpen(open === change ? null : change)}
                  >
                    Working after the change
                  </button>
                </span>
              </li>
              {open === change ? (
                <li className={styles.working}>
                  <WorkingAfter change={change} sites={sites} reference={reference} />
                </li>
              ) : null}
            </Fragment>
          ))}
        </ul>
      )}
      {lifts.changes.length > shown ? (
        <button type="button" onClick={() => setShown(shown + 50)}>
          Show more of {lifts.changes.length}
        </button>
      ) : null}
      {lifts.changed > lifts.changes.length ? (
        <p className="soft dense">The worst {lifts.changes.length} are listed.</p>
      ) : null}
    </>
  );
}

function askedWords({ asked, from }: LiftChange): string {
  const was = `was ${from}`;
  if (asked.of === 'reference') return `putting the reference load away ${was}`;
  return asked.operation === 'retrieve'
    ? `taking down what stands there ${was}`
    : `placing back what stands there ${was}`;
}

function beforeHref({ asked, before, truck }: LiftChange, reference: Load): string {
  return workingHref({
    location: before,
    truck,
    operation: asked.operation,
    time: { kind: 'not-judged' },
    from: asked.of === 'standing' && asked.operation === 'place' ? before : null,
    load:
      asked.of === 'standing'
        ? { kind: 'stored' }
        : {
            kind: 'typed',
            massKg: reference.grossKg,
            basis: reference.massBasis,
            depthMm: reference.depthMm,
            widthMm: reference.widthMm,
            heightMm: reference.heightMm,
            palletType: null,
          },
  });
}

/** The whole working of a lift in the run as it would be: only this page knows that run. */
function WorkingAfter({
  change,
  sites,
  reference,
}: {
  change: LiftChange;
  sites: BeforeAfter;
  reference: Load;
}) {
  const answer = useMemo(() => {
    if (sites.after === null) return null;
    const index = indexSite(sites.after);
    const place = found(index.places, change.after, 'location');
    const truck = found(index.trucks, change.truck, 'truck');
    const load = change.asked.of === 'reference' ? reference : index.stockAt.get(change.after);
    if (load === undefined) return null;
    const from = change.asked.of === 'standing' && change.asked.operation === 'place' ? change.after : null;
    const context = {
      operation: change.asked.operation,
      asOf: null,
      operator: null,
      stock: 'as-is',
      from,
    } as const;
    return checkLift(index, { load, truck, place, context });
  }, [change, sites, reference]);
  if (answer === null) return null;
  return (
    <section aria-label={`Working after the change at ${change.after}`}>
      <VerdictHead answer={answer} />
      <WorkingSteps answer={answer} />
    </section>
  );
}
