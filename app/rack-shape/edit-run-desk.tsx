'use client';

import Link from 'next/link';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { type ShapeOutcome, saveRunShape } from '@/app/rack-shape/actions.ts';
import { ChangeForm, INSPECTION_KINDS, RACK_KINDS } from '@/app/rack-shape/change-form.tsx';
import { ChangeList } from '@/app/rack-shape/change-list.tsx';
import { ChoiceField } from '@/app/rack-shape/choice-field.tsx';
import { ConflictPart } from '@/app/rack-shape/conflict-part.tsx';
import { ConsequencesPanel } from '@/app/rack-shape/consequences-panel.tsx';
import { DeletePart } from '@/app/rack-shape/delete-part.tsx';
import { faultsByField } from '@/app/rack-shape/faults-by-field.ts';
import { HistoryButtons } from '@/app/rack-shape/history-buttons.tsx';
import { LabelPreview } from '@/app/rack-shape/label-preview.tsx';
import { SavePart } from '@/app/rack-shape/save-part.tsx';
import { ShapeElevation } from '@/app/rack-shape/shape-elevation.tsx';
import { plainChange, type TypedChange } from '@/app/rack-shape/typed-change.ts';
import { useConsequences } from '@/app/rack-shape/use-consequences.ts';
import { useHistory } from '@/app/rack-shape/use-history.ts';
import { useReference } from '@/app/rack-shape/use-reference.ts';
import { type RunEdit, useRunEdit } from '@/app/rack-shape/use-run-edit.ts';
import { useSettled } from '@/app/rack-shape/use-settled.ts';
import { VERDICTS } from '@/lib/check/step.ts';
import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import { changeRunByAll } from '@/lib/rack-shape/change-run.ts';
import type { Consequences } from '@/lib/rack-shape/consequences.ts';
import { neighboursOf } from '@/lib/rack-shape/neighbours.ts';
import type { RunChange, RunChangeKind } from '@/lib/rack-shape/run-change.ts';
import { draftOf, movesOf } from '@/lib/rack-shape/run-draft.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { NOTICE_WARNING, SIGNS_WARNING, touchesNotice } from '@/lib/words/rack-shape.ts';
import styles from './rack-shape.module.css';

export type MayChange = { racks: boolean; inspection: boolean };

/** A run that stands, with a list of changes beside its drawing. */
export function EditRunDesk({
  site,
  revision,
  saved,
  mayChange,
  begun,
  onBegun,
}: {
  site: Site;
  revision: number;
  saved: Run;
  mayChange: MayChange;
  /** Changes that were begun on an older version of the run. */
  begun: readonly RunChange[];
  /** Asks for the newest version of the run, with these changes to be made on it. */
  onBegun: (changes: readonly RunChange[]) => void;
}) {
  const units = useUnits();
  const history = useHistory<readonly RunChange[]>(begun);
  const changes = history.now;
  const [typed, setTyped] = useState<TypedChange | null>(null);
  const [isTried, setTried] = useState(false);
  const [conflict, setConflict] = useState<Extract<ShapeOutcome, { state: 'conflict' }> | null>(null);
  const { edit, sites, stranded, judge, isSettled } = useRunEdit(site, saved, changes, typed);
  const reference = useReference();
  const asked = useMemo(
    () => (sites === null ? null : { sites, reference: reference.load, asOf: null }),
    [sites, reference.load],
  );
  const settledAsked = useSettled(asked, 200);
  const weighed = useConsequences(settledAsked);
  const steps = useMemo(() => {
    const neighbours = neighboursOf(site, saved.id);
    return changes.map((_, at) => changeRunByAll(draftOf(saved), changes.slice(0, at), neighbours).draft.run);
  }, [site, saved, changes]);

  const kinds = [...(mayChange.racks ? RACK_KINDS : []), ...(mayChange.inspection ? INSPECTION_KINDS : [])];
  const begin = (kind: RunChangeKind | '') => {
    setTried(false);
    setTyped(kind === '' ? null : plainChange(edit.kept.run, kind));
  };
  const form = useRef<HTMLFormElement>(null);
  const [closed, setClosed] = useState(0);
  // what was typed in is gone from the page: the keys go on at the next choice
  useEffect(() => {
    if (closed > 0) form.current?.querySelector('select')?.focus();
  }, [closed]);
  const close = () => {
    begin('');
    setClosed(closed + 1);
  };
  const add = () => {
    setTried(true);
    const { change } = judge(typed).pending;
    if (change === null) return;
    history.set([...changes, change], null);
    close();
  };
  const drop = (at: number) => {
    history.set(changes.toSpliced(at, 1), null);
    setClosed(closed + 1);
  };
  const pick = ({ bay, level }: { bay: number; level: number }) => {
    if (kinds.length === 0) return;
    const from = typed ?? plainChange(edit.kept.run, kinds[0]!.value);
    setTyped({
      ...from,
      first: bay,
      last: bay,
      level: level === 0 && from.kind !== 'level-condition' ? from.level : level,
    });
  };

  const save = async () => {
    const { renamed } = movesOf(saved, edit.kept);
    const links = { bays: [...edit.kept.bays], frames: [...edit.kept.frames] };
    return saveRunShape({
      basedOn: revision,
      replaces: saved.id,
      run: edit.kept.run,
      renamed,
      takeOut: stranded,
      links,
    });
  };
  const isReckoned = weighed.state === 'ready' && settledAsked === asked;
  const hindrance =
    edit.stopped !== null
      ? `Change ${edit.stopped.at + 1} cannot be made: drop it, or undo.`
      : typed !== null
        ? 'Add the change that is being typed, or clear it.'
        : changes.length === 0
          ? 'Nothing is changed yet.'
          : edit.kept.run === saved || !isReckoned
            ? 'What it comes to is being reckoned.'
            : null;
  const faultOf = faultsByField(edit.pending.refusals, units, isTried);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only hears the keys of undo and redo
    <div className={styles.desk} onKeyDown={history.onKeyDown}>
      <div className={styles.left}>
        {conflict === null ? null : (
          <ConflictPart
            conflict={conflict.conflict}
            saved={saved}
            changes={changes}
            onKeepMine={() => onBegun(changes)}
            onTakeTheirs={() => onBegun([])}
          />
        )}
        <form
          ref={form}
          className={`sheet ${styles.form}`}
          aria-label="Change the run"
          onSubmit={(event) => {
            event.preventDefault();
            add();
          }}
        >
          <div className={styles.spread}>
            <h2>Changes</h2>
            <HistoryButtons history={history} />
          </div>
          <ChangeList changes={changes} runs={steps} stopped={edit.stopped} onDrop={drop} />
          {kinds.length === 0 ? (
            <p className="soft">Your role may look at runs, and not change them.</p>
          ) : typed === null ? (
            <ChoiceField
              label="Change"
              value=""
              choices={[{ value: '', words: 'choose what to change' }, ...kinds]}
              onChange={(kind) => begin(kind as RunChangeKind | '')}
            />
          ) : (
            <>
              <ChangeForm
                site={site}
                run={edit.kept.run}
                typed={typed}
                kinds={kinds}
                onKind={begin}
                onChange={(part) => setTyped({ ...typed, ...part })}
                faultOf={faultOf}
              />
              <div className="row">
                <button type="submit" className="button-main">
                  Add to the changes
                </button>
                <button type="button" onClick={close}>
                  Clear
                </button>
              </div>
              <p className={isTried ? 'fault' : 'soft dense'} role="status">
                {isSettled ? pendingWords(edit.pending, isTried) : ''}
              </p>
            </>
          )}
        </form>
        {mayChange.racks ? (
          <div className="sheet stack">
            <Link className="button" href={`/rack-shape?copy=${encodeURIComponent(saved.id)}`}>
              Copy this run
            </Link>
            <DeletePart site={site} run={saved} revision={revision} />
          </div>
        ) : null}
      </div>
      <div className={styles.side}>
        <ShapeElevation run={edit.shown.run} onPick={pick} />
        <LabelPreview run={edit.shown.run} />
        <ConsequencesPanel title="What it comes to" weighed={weighed} sites={sites} reference={reference} />
        {kinds.length === 0 ? null : (
          <SavePart
            label="Save the changes"
            hindrance={hindrance}
            warnings={[
              ...(changes.some(touchesNotice) ? [NOTICE_WARNING] : []),
              ...(changes.some(({ kind }) => kind === 'renumber') ? [SIGNS_WARNING] : []),
            ]}
            worse={isReckoned ? worseWords(weighed.consequences) : null}
            stranded={stranded}
            save={save}
            hrefOf={(done) => `/rack-shape/${encodeURIComponent(edit.kept.run.id)}?saved=${done}`}
            onConflict={setConflict}
          />
        )}
      </div>
    </div>
  );
}

function pendingWords({ change, refusals, isAsItStands }: RunEdit['pending'], isTried: boolean): string {
  if (isAsItStands) return 'This is how it stands already.';
  if (change !== null) return 'Drawn and reckoned as if it were in the list.';
  if (!isTried) return '';
  return refusals.length > 0 ? 'See the marked fields.' : 'Say what is to change.';
}

/** Rules that standing pallets no longer keep, and lifts whose verdict falls; null: none. */
function worseWords({ standing, lifts }: Consequences): string | null {
  let falling = 0;
  for (const [from, verdict] of VERDICTS.entries())
    for (const to of VERDICTS.slice(from + 1)) falling += lifts.counts[verdict][to];
  const parts = [
    ...(standing.worse.length > 0
      ? [`${counted(standing.worse.length, 'rule')} that standing pallets kept`]
      : []),
    ...(falling > 0 ? [counted(falling, 'lift')] : []),
  ];
  return parts.length === 0 ? null : parts.join(' and ');
}
