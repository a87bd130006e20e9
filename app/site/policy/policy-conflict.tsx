'use client';

import { useFocusFirst } from '@/app/_entry/use-focus-first.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { POLICY_FACTS, policyValueWords } from '@/app/site/policy-facts.ts';
import type { Conflict } from '@/lib/model/change.ts';
import { type Policy, policyInForce } from '@/lib/model/policy.ts';
import { conflictSentence } from '@/lib/words/change.ts';

/** Somebody else has set the same value since: theirs beside mine, and the two ways on. */
export function PolicyConflict({
  conflict,
  mine,
  onKeepMine,
  onTakeTheirs,
}: {
  conflict: Conflict;
  mine: Policy;
  onKeepMine: (basedOn: number) => void;
  onTakeTheirs: () => void;
}) {
  const units = useUnits();
  const part = useFocusFirst<HTMLDivElement>();
  const key = (Object.keys(POLICY_FACTS) as (keyof Policy)[]).find((known) => known === conflict.subject);
  const theirs = key === undefined || conflict.theirs === null ? {} : { [key]: conflict.theirs };
  return (
    <div ref={part} tabIndex={-1} role="alert" className="stack">
      <p className="fault">{conflictSentence(conflict)}</p>
      {key === undefined ? null : (
        <p>
          {POLICY_FACTS[key].label}: theirs is {policyValueWords(key, policyInForce(theirs), units)}, yours{' '}
          {policyValueWords(key, mine, units)}.
        </p>
      )}
      <div className="row">
        <button type="button" onClick={() => onKeepMine(conflict.revision)}>
          Save mine all the same
        </button>
        <button type="button" onClick={onTakeTheirs}>
          Start again from theirs
        </button>
      </div>
    </div>
  );
}
