'use client';

import { useRef, useState } from 'react';
import { OutcomeBadge } from '@/app/_parts/outcome-badge.tsx';
import { stepOrder } from '@/app/_parts/step-order.ts';
import { showStepValue } from '@/app/_parts/step-value.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import type { LiftAnswer, Origin, Step } from '@/lib/check/step.ts';
import { stepUse } from '@/lib/check/step-use.ts';
import { MASS_RULES } from '@/lib/model/rule-ids.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { originSentence } from '@/lib/words/origin.ts';
import { ruleQuestion, ruleTitle } from '@/lib/words/rule.ts';
import { stepSentence } from '@/lib/words/step.ts';
import styles from './working-steps.module.css';

/**
 * The working of one lift, rule by rule, the one that decided first: what each asks, needs and has, how much of it is
 * used, and where each number came from: open for whatever does not plainly pass, a tap away for the rest, all open in
 * print. Fits a side panel as well as a page.
 */
export function WorkingSteps({ answer }: { answer: LiftAnswer }) {
  const units = useUnits();
  const root = useRef<HTMLDivElement>(null);
  const [allOpen, setAllOpen] = useState(false);
  const { governing, others, notAsked } = stepOrder(answer);
  const openAll = (open: boolean) => {
    for (const part of root.current?.querySelectorAll('details') ?? []) part.open = open;
    setAllOpen(open);
  };
  return (
    <div className={styles.steps} ref={root}>
      <button type="button" className={styles.openAll} onClick={() => openAll(!allOpen)}>
        {allOpen ? 'Fold where the numbers came from' : 'Open where every number came from'}
      </button>
      <ol className={styles.list} aria-label="The working, rule by rule">
        <StepRow step={governing} units={units} decided />
        {others.map((step) => (
          <StepRow key={step.rule} step={step} units={units} />
        ))}
      </ol>
      {notAsked.length === 0 ? null : (
        <details className={styles.notAsked}>
          <summary>{`${notAsked.length} rules are not asked of this lift`}</summary>
          <ul>
            {notAsked.map((step) => (
              <li key={step.rule}>
                <strong>{ruleTitle(step.rule)}</strong> {stepSentence(step, units)}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

type RowProps = { step: Step; units: DisplayUnits; decided?: boolean };

function StepRow({ step, units, decided = false }: RowProps) {
  return (
    <li
      className={`${styles.row} ${styles[step.outcome]} ${decided ? styles.decided : ''}`}
      data-rule={step.rule}
    >
      <div className={styles.asks}>
        {decided ? <p className={styles.decides}>This decides</p> : null}
        <h3>{ruleTitle(step.rule)}</h3>
        <p className="soft">{ruleQuestion(step.rule)}</p>
      </div>
      <dl className={styles.values}>
        <div>
          <dt>Needs</dt>
          <dd>{showStepValue(step, 'need', units)}</dd>
        </div>
        <div>
          <dt>Has</dt>
          <dd>{showStepValue(step, 'have', units)}</dd>
        </div>
        <Use step={step} />
      </dl>
      <div className={styles.outcome}>
        <OutcomeBadge outcome={step.outcome} />
      </div>
      <p className={styles.sentence}>{stepSentence(step, units)}</p>
      <Sources step={step} units={units} open={decided || step.outcome !== 'pass'} />
    </li>
  );
}

/** How much of what it has the lift uses: in per cent, with a bar for the mass rules. */
function Use({ step }: { step: Step }) {
  const use = stepUse(step);
  if (typeof step.need !== 'number' || typeof step.have !== 'number' || step.unit === 'row') return null;
  const mass = MASS_RULES.some((rule) => rule === step.rule);
  const percent = Number.isFinite(use)
    ? `${Math.ceil(Number((use * 100).toFixed(4)))}\u202f%`
    : 'all, and more';
  return (
    <div className={styles.use}>
      <dt>Use</dt>
      <dd>
        {percent}
        {mass ? (
          <svg viewBox="0 0 125 10" preserveAspectRatio="none" aria-hidden="true">
            <rect width="125" height="10" className={styles.track} />
            <rect width={Math.min(125, use * 100)} height="10" className={styles.fill} />
            <path d="M100 0v10" className={styles.limit} />
          </svg>
        ) : null}
      </dd>
    </div>
  );
}

function Sources({ step, units, open }: { step: Step; units: DisplayUnits; open: boolean }) {
  if (step.needFrom.length + step.haveFrom.length === 0) return null;
  return (
    <details className={styles.sources} open={open}>
      <summary>Where the numbers came from</summary>
      <div className={styles.lists}>
        <SourceList title="Needs, from" origins={step.needFrom} units={units} />
        <SourceList title="Has, from" origins={step.haveFrom} units={units} />
      </div>
    </details>
  );
}

function SourceList({
  title,
  origins,
  units,
}: {
  title: string;
  origins: readonly Origin[];
  units: DisplayUnits;
}) {
  if (origins.length === 0) return null;
  return (
    <div>
      <h4>{title}</h4>
      <ul>
        {origins.map((origin) => (
          <li key={`${origin.of} ${origin.subject} ${origin.field}`}>{originSentence(origin, units)}</li>
        ))}
      </ul>
    </div>
  );
}
