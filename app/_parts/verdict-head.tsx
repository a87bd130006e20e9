'use client';

import { showStepValue } from '@/app/_parts/step-value.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import type { LiftAnswer } from '@/lib/check/step.ts';
import { formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { mostSentence } from '@/lib/words/answer.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { stepSentence } from '@/lib/words/step.ts';
import { verdictMeaning } from '@/lib/words/verdict.ts';
import styles from './verdict-head.module.css';

/** The answer first: the verdict, the step that decided it, its margin, and the most that could be lifted here. */
export function VerdictHead({ answer }: { answer: LiftAnswer }) {
  const units = useUnits();
  const governing = answer.steps.find((step) => step.rule === answer.governing);
  if (governing === undefined) throw new Error(`no step for the governing rule ${answer.governing}`);
  return (
    <div className={styles.head}>
      <div className={styles.verdict}>
        <VerdictBadge verdict={answer.verdict} size="large" />
        <p className="soft">{verdictMeaning(answer.verdict)}</p>
      </div>
      <div className={styles.why}>
        <h2>{ruleTitle(governing.rule)}</h2>
        <p>{stepSentence(governing, units)}</p>
      </div>
      <dl className={styles.figures}>
        <div>
          <dt>Margin</dt>
          <dd>{marginWords(answer, units)}</dd>
        </div>
        <div>
          <dt>Most here</dt>
          <dd>{answer.mostKg === null ? 'not known' : formatMass(answer.mostKg, units, 'down')}</dd>
        </div>
        <div>
          <dt>Assessed mass</dt>
          <dd>{answer.assessedKg === null ? 'not known' : formatMass(answer.assessedKg, units, 'up')}</dd>
        </div>
      </dl>
      <p className={`soft ${styles.most}`}>{mostSentence(answer.mostKg, units)}</p>
    </div>
  );

  function marginWords(of: LiftAnswer, shown: typeof units): string {
    const step = of.steps.find(({ rule }) => rule === of.governing);
    if (step === undefined || typeof step.need !== 'number' || typeof step.have !== 'number') {
      return step === undefined || step.unit !== 'state' ? 'not known' : showStepValue(step, 'have', shown);
    }
    if (step.unit === 'row') return showStepValue(step, 'have', shown);
    const format = step.unit === 'kg' ? formatMass : formatLength;
    return step.need > step.have
      ? `${format(step.need - step.have, shown, 'up')} too much`
      : format(step.have - step.need, shown, 'down');
  }
}
