'use client';

import { useState } from 'react';
import { OutcomeBadge } from '@/app/_parts/outcome-badge.tsx';
import { useUnits } from '@/app/_parts/units-context.tsx';
import type { StandingComparison } from '@/lib/rack-shape/compare-standing.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { stepSentence } from '@/lib/words/step.ts';
import styles from './rack-shape.module.css';

const SHOWN = 12;

/** What stands in the run and breaks a rule of the racks after the change that it kept before. */
export function StandingPart({ standing }: { standing: StandingComparison }) {
  const units = useUnits();
  const [all, setAll] = useState(false);
  const { worse, asBefore, better } = standing;
  const rest = [
    asBefore === 0 ? null : `${counted(asBefore, 'fault')} that stood before stay`,
    better === 0 ? null : `${counted(better, 'fault')} are mended`,
  ].filter((text) => text !== null);
  return (
    <>
      <p>
        {worse.length === 0
          ? 'Everything that stands there keeps the rules it kept.'
          : `${counted(worse.length, 'rule')} that a standing pallet kept ${worse.length === 1 ? 'is' : 'are'} broken or no longer proven.`}{' '}
        {rest.length === 0 ? null : <span className="soft">{rest.join('; ')}.</span>}
      </p>
      {worse.length === 0 ? null : (
        <ul className={styles.troubles} aria-label="What no longer fits or is too heavy">
          {worse.slice(0, all ? undefined : SHOWN).map(({ location, load, step }) => (
            <li key={`${location} ${step.rule}`}>
              <OutcomeBadge outcome={step.outcome} />
              <span>
                <strong>{location}</strong>, {load}. {ruleTitle(step.rule)}: {stepSentence(step, units)}
              </span>
            </li>
          ))}
        </ul>
      )}
      {worse.length > SHOWN ? (
        <button type="button" onClick={() => setAll(!all)}>
          {all ? 'Show fewer' : `Show all ${worse.length}`}
        </button>
      ) : null}
    </>
  );
}
