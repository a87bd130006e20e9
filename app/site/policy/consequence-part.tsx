'use client';

import { OutcomePart } from '@/app/_entry/outcome-part.tsx';
import type { SaveOutcome } from '@/app/_entry/use-save.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { PolicyConflict } from '@/app/site/policy/policy-conflict.tsx';
import type { ConsequenceWork } from '@/app/site/policy/use-policy-consequences.ts';
import { showPolicyValue } from '@/app/site/policy-facts.ts';
import type { PolicyChange } from '@/lib/entry/policy-draft.ts';
import { type Policy, policyInForce, type SitePolicy } from '@/lib/model/policy.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { shiftsWords } from '@/lib/words/policy.ts';
import styles from './policy.module.css';

/** What is changed, what that does to the verdicts on what stands, and only then the button that saves it. */
export function ConsequencePart({
  own,
  policy,
  change,
  faults,
  work,
  isSeen,
  isBusy,
  outcome,
  onKeepMine,
  onTakeTheirs,
}: {
  own: SitePolicy;
  policy: SitePolicy | null;
  change: PolicyChange;
  faults: number;
  work: ConsequenceWork;
  isSeen: boolean;
  isBusy: boolean;
  outcome: SaveOutcome | null;
  onKeepMine: (basedOn: number) => void;
  onTakeTheirs: () => void;
}) {
  const units = useUnits();
  const keys = Object.keys(change) as (keyof Policy)[];
  const [before, after] = [policyInForce(own), policyInForce(policy ?? own)];
  return (
    <section className={`sheet stack ${styles.foot}`} aria-labelledby="consequence-heading">
      <h2 id="consequence-heading">What it changes</h2>
      {keys.length === 0 || policy === null ? null : (
        <ul>
          {keys.map((key) => (
            <li key={key}>{showPolicyValue(key, before, after, units)}</li>
          ))}
        </ul>
      )}
      <div aria-live="polite">
        {work.state === 'busy' ? (
          <p className="row">
            <progress value={work.done} max={1} aria-label="Share of the verdicts compared" />
            <span>{`Judging what stands, before and after, ${Math.floor(work.done * 100)} %`}</span>
          </p>
        ) : null}
        {work.state === 'failed' ? (
          <p className="fault">What it changes could not be worked out: {work.why}</p>
        ) : null}
        {isSeen && work.state === 'told' ? (
          <dl className={styles.shifts}>
            {work.consequences.map((told) => (
              <div key={`${told.operation} ${told.isNow}`}>
                <dt>
                  {told.operation === 'retrieve' ? 'Taking down' : 'Putting back'}
                  {told.isNow ? ', as of now' : ', checks and dates left out'}
                </dt>
                <dd>{shiftsWords(told)}</dd>
              </div>
            ))}
          </dl>
        ) : null}
      </div>
      {outcome?.state === 'conflict' ? (
        <PolicyConflict
          conflict={outcome.conflict}
          mine={after}
          onKeepMine={onKeepMine}
          onTakeTheirs={onTakeTheirs}
        />
      ) : null}
      <OutcomePart outcome={outcome} />
      <div className="row">
        <button
          type="submit"
          className="button-main"
          disabled={isBusy || work.state === 'busy' || (keys.length === 0 && faults === 0)}
        >
          {isBusy ? 'Saving…' : isSeen ? 'Save these values' : 'See what it changes'}
        </button>
        <span className={faults > 0 ? 'fault' : 'soft'} role="status">
          {faults > 0
            ? `${counted(faults, 'field')} to be mended first.`
            : keys.length === 0
              ? 'Nothing is changed yet.'
              : isSeen
                ? 'Each value is written down with who set it and when, and can be put back.'
                : 'Before it can be saved, see how many verdicts on what stands would change.'}
        </span>
      </div>
    </section>
  );
}
