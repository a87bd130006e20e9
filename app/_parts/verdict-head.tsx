'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import type { LiftAnswer, Step } from '@/lib/check/step.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { mostSentence } from '@/lib/words/answer.ts';
import { answerLead, governingLead, leadSentence } from '@/lib/words/room.ts';
import { verdictMeaning } from '@/lib/words/verdict.ts';
import styles from './verdict-head.module.css';

/**
 * The answer first: the verdict, then what is left where it is clear and what decided it where it is not, the margin
 * and the most that could be lifted here.
 */
export function VerdictHead({ answer }: { answer: LiftAnswer }) {
  const units = useUnits();
  const governing = answer.steps.find((step) => step.rule === answer.governing);
  if (governing === undefined) throw new Error(`no step for the governing rule ${answer.governing}`);
  const lead = answerLead(answer, units);
  const decided = governingLead(answer, units);
  return (
    <div className={styles.head}>
      <div className={styles.verdict}>
        <VerdictBadge verdict={answer.verdict} size="large" />
        <p className="soft">{verdictMeaning(answer.verdict)}</p>
      </div>
      <div className={styles.why}>
        <h2>{lead.title}</h2>
        <p>{lead.sentence}</p>
        {lead.title === decided.title ? null : (
          <p className={`soft ${styles.used}`}>Of all rules the most used: {leadSentence(decided)}</p>
        )}
      </div>
      <dl className={styles.figures}>
        <div>
          <dt>Margin</dt>
          <dd>{marginWords(answer, governing, units)}</dd>
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
      {answer.verdict === 'clear' ? null : (
        <p className={`soft ${styles.most}`}>{mostSentence(answer.mostKg, units)}</p>
      )}
    </div>
  );
}

/** What is left, or missing: of a clear lift how much more the load could weigh, else of what decided. */
function marginWords(
  { verdict, mostKg, assessedKg }: LiftAnswer,
  governing: Step,
  units: DisplayUnits,
): string {
  const { need, have, unit } = governing;
  if (verdict === 'clear' && mostKg !== null && assessedKg !== null)
    return formatMass(mostKg - assessedKg, units, 'down');
  if (unit === 'kg' || unit === 'mm') {
    if (typeof need !== 'number' || typeof have !== 'number') return 'not known';
    const format = unit === 'kg' ? formatMass : formatLength;
    return need > have ? `${format(need - have, units, 'up')} too much` : format(have - need, units, 'down');
  }
  if (verdict === 'refuse') return 'none';
  if (verdict === 'unproven' || mostKg === null || assessedKg === null) return 'not known';
  return formatMass(mostKg - assessedKg, units, 'down');
}
