import Link from 'next/link';
import { undoChange } from '@/app/changes/actions.ts';
import { DifferenceTable } from '@/app/changes/difference-table.tsx';
import { type Change, UNAVAILABLE } from '@/lib/model/change.ts';
import { differences } from '@/lib/model/differences.ts';
import { CHANGE_PERMISSION, may, type Role } from '@/lib/model/permissions.ts';
import type { ListedChange } from '@/lib/store/change-log.ts';
import type { Reverted } from '@/lib/store/revert-change.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import {
  cannotRevertSentence,
  changeWords,
  lateRevertSentence,
  unavailableSentence,
} from '@/lib/words/change.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';
import { refusalSentence } from '@/lib/words/refusal.ts';
import styles from './changes.module.css';

/** What undoing would do, shown before it is done; or why it cannot be. */
export function UndoPart({
  change,
  batch,
  outcome,
  role,
  failed,
  units,
}: {
  change: ListedChange;
  batch: readonly Change[];
  /** null: it could not be found out. */
  outcome: Reverted | null;
  role: Role;
  failed: string | undefined;
  units: DisplayUnits;
}) {
  const denied = batch.map(({ noun }) => CHANGE_PERMISSION[noun]).find((what) => !may(role, what));
  const unavailable = UNAVAILABLE.find((reason) => reason === failed);
  return (
    <section className={`sheet ${styles.item}`} aria-labelledby="undo-heading">
      <h2 id="undo-heading">Undo it</h2>
      {unavailable === undefined ? null : <p role="alert">{unavailableSentence(unavailable)}</p>}
      {change.revertedBy === null ? null : (
        <p>
          It was undone by <Link href={`/changes/${change.revertedBy}`}>number {change.revertedBy}</Link>.
        </p>
      )}
      {outcome === null ? null : outcome.ok ? (
        <>
          <p className="soft">
            {change.wholeSite
              ? 'The whole site as it stood before comes back; nothing has been changed since.'
              : 'This would stand there then. The undoing is a change of its own, in the log like any other, and can be undone itself.'}
          </p>
          {batch.toReversed().map((made) => (
            <DifferenceTable
              key={made.id}
              caption={`Undoing: ${changeWords(made)}`}
              differences={differences(made.after, made.before)}
              units={units}
              headings={['Now', 'Then']}
            />
          ))}
          {denied === undefined ? (
            <form action={undoChange}>
              <input type="hidden" name="change" value={change.id} />
              <button type="submit" className="button-main">
                Undo this change
              </button>
            </form>
          ) : (
            <p>{notAllowedSentence(denied, role)}</p>
          )}
        </>
      ) : (
        <WhyNot outcome={outcome} />
      )}
      {change.wholeSite && change.before !== null ? (
        <p>
          <a href={`/changes/${change.id}/file`} download>
            The site file as it stood before this change
          </a>{' '}
          <span className="soft">(kept for the newest 20 imports)</span>
        </p>
      ) : null}
    </section>
  );
}

function WhyNot({ outcome }: { outcome: Extract<Reverted, { ok: false }> }) {
  if (outcome.cannot !== undefined) return <p>{cannotRevertSentence(outcome.cannot)}</p>;
  if (outcome.conflict !== undefined) return <p>{lateRevertSentence(outcome.conflict)}</p>;
  return (
    <>
      <p>It cannot be undone as the site stands now:</p>
      <ul>
        {outcome.refusals.map((refusal) => (
          <li key={`${refusal.path} ${refusal.came}`}>{refusalSentence(refusal)}</li>
        ))}
      </ul>
    </>
  );
}
