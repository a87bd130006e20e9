'use client';

import { useState } from 'react';
import { OutcomeBadge } from '@/app/_parts/outcome-badge.tsx';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { VerdictBadge } from '@/app/_parts/verdict-badge.tsx';
import styles from '@/app/loads/_entry/load-entry.module.css';
import type { Weighed } from '@/app/loads/_entry/use-load-consequences.ts';
import { MOST_TURNS, type PlaceTurn } from '@/lib/entry/load-consequences.ts';
import { consequencesSentence, liftTurnSentence } from '@/lib/words/entry.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { stepSentence } from '@/lib/words/step.ts';

const SHOWN = 10;

/** What the change comes to where the load stands now, before it is saved. */
export function ConsequencesPart({ weighed }: { weighed: Weighed }) {
  const [all, setAll] = useState(false);
  const turns = weighed.state === 'ready' ? weighed.consequences.turns : [];
  return (
    <section className="sheet stack" aria-labelledby="consequences-heading">
      <h2 id="consequences-heading">What the change comes to where it stands</h2>
      <p role="status">
        {weighed.state === 'none' ? 'Asked once the form is whole and something is changed.' : null}
        {weighed.state === 'busy' ? 'Reckoning…' : null}
        {weighed.state === 'failed' ? (
          <span className="fault">
            It could not be reckoned: {weighed.why}. Saving is possible all the same.
          </span>
        ) : null}
        {weighed.state === 'ready' ? consequencesSentence(weighed.consequences) : null}
      </p>
      {turns.length === 0 ? null : (
        <ul className={styles.turns} aria-label="Locations where something turns">
          {turns.slice(0, all ? undefined : SHOWN).map((turn) => (
            <TurnLine key={turn.location} turn={turn} />
          ))}
        </ul>
      )}
      {turns.length > SHOWN ? (
        <div>
          <button type="button" onClick={() => setAll(!all)}>
            {all ? 'Show fewer' : `Show ${turns.length === MOST_TURNS ? 'the first' : 'all'} ${turns.length}`}
          </button>
        </div>
      ) : null}
      <p className="soft dense">
        Who can take it down from each place, and every rule of the racks there, as the site stands. Checks,
        holds and expiry dates are not judged.
      </p>
    </section>
  );
}

function TurnLine({ turn }: { turn: PlaceTurn }) {
  const units = useUnits();
  return (
    <li>
      <strong>{turn.location}</strong>{' '}
      <span className="soft">{turn.isWorse ? 'turns for the worse' : 'turns for the better'}</span>
      {turn.lift === null ? null : (
        <div className="row">
          <VerdictBadge verdict={turn.lift.to} />
          <span>{liftTurnSentence(turn.lift)}</span>
        </div>
      )}
      {turn.racks.map(({ step }) => (
        <div key={step.rule} className="row">
          <OutcomeBadge outcome={step.outcome} />
          <span>
            {ruleTitle(step.rule)}: {stepSentence(step, units)}
          </span>
        </div>
      ))}
    </li>
  );
}
