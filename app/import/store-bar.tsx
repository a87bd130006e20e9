'use client';

import type { DryRun } from '@/app/import/dry-run.ts';
import { neededPermissions } from '@/app/import/needed-permissions.ts';
import { may, type Role } from '@/lib/model/permissions.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';

/** The last step, or why it cannot be taken. */
export function StoreBar({
  run,
  role,
  isStoring,
  onStore,
}: {
  run: DryRun;
  role: Role;
  isStoring: boolean;
  onStore: (run: DryRun) => void;
}) {
  const plans = run.shown.map(({ plan }) => plan);
  const sum = (of: 'added' | 'changed' | 'refused') => plans.reduce((all, plan) => all + plan[of].length, 0);
  const [added, changed, refused] = [sum('added'), sum('changed'), sum('refused')];
  const lacking = neededPermissions(plans).find((what) => !may(role, what));
  if (!run.applies) {
    return (
      <p>
        <strong>Nothing would be stored</strong>, since{' '}
        {refused === 1 ? 'a row is' : `${groupDigits(refused)} rows are`} refused. Mend{' '}
        {refused === 1 ? 'it' : 'them'} in the file or in the mapping, or store the good rows only.
      </p>
    );
  }
  if (added + changed === 0) return <p>Nothing to store: the site says all of this already.</p>;
  if (lacking !== undefined) return <p className="fault">{notAllowedSentence(lacking, role)}</p>;
  return (
    <div className="row">
      <button type="button" className="button-main" disabled={isStoring} onClick={() => onStore(run)}>
        Store {groupDigits(added)} added, {groupDigits(changed)} changed
      </button>
      {refused === 0 ? null : (
        <span className="fault">{groupDigits(refused)} refused rows are left out.</span>
      )}
    </div>
  );
}
