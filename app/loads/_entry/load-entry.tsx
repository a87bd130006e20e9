'use client';

import Link from 'next/link';
import { useMemo, useRef, useState } from 'react';
import { ConflictPart } from '@/app/_entry/conflict-part.tsx';
import entryStyles from '@/app/_entry/entry.module.css';
import { EntryFoot } from '@/app/_entry/entry-foot.tsx';
import { faultReader } from '@/app/_entry/fault-reader.ts';
import { ChoiceEntry, MeasureEntry, TextEntry } from '@/app/_entry/fields.tsx';
import { useLeaveWarning, useSave } from '@/app/_entry/use-save.ts';
import { LoadSideView } from '@/app/_parts/load-side-view.tsx';
import { MassArithmetic } from '@/app/_parts/mass-arithmetic.tsx';
import { loadHref } from '@/app/_parts/screen-links.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { saveLoadEntry } from '@/app/loads/_entry/actions.ts';
import { ConsequencesPart } from '@/app/loads/_entry/consequences-part.tsx';
import { HandPickPart } from '@/app/loads/_entry/hand-pick-part.tsx';
import { MassPart } from '@/app/loads/_entry/mass-part.tsx';
import { useLoadConsequences } from '@/app/loads/_entry/use-load-consequences.ts';
import {
  BLANK_LOAD,
  drawableLoad,
  judgeLoad,
  LOAD_MEASURES,
  type LoadDraft,
  type LoadMeasure,
  loadDraftOf,
  massOnly,
} from '@/lib/entry/load-draft.ts';
import { LOAD_FIELDS } from '@/lib/entry/merge-facts.ts';
import type { Load, PalletType } from '@/lib/model/load.ts';
import type { Policy } from '@/lib/model/policy.ts';
import { formatMass } from '@/lib/units/format-quantity.ts';

/** A load as it is typed: what it weighs with the sum beside it, its size with the drawing, and what a change comes to. */
export function LoadEntry({
  saved,
  copyOf,
  revision,
  palletTypes,
  groups,
  policy,
  isStanding,
}: {
  saved: Load | null;
  copyOf: Load | null;
  revision: number;
  palletTypes: readonly PalletType[];
  groups: readonly string[];
  policy: Policy;
  isStanding: boolean;
}) {
  const units = useUnits();
  const [opened, setOpened] = useState({ saved, basedOn: revision, isNew: saved === null });
  const [draft, setDraft] = useState<LoadDraft>(() => firstDraft(saved, copyOf));
  const [wasTried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const begun = useRef(draft);
  const { outcome, isBusy, isStored, send, forget } = useSave(
    saveLoadEntry,
    ({ id, revision }) => `${loadHref(id)}?saved=${revision}`,
  );
  const judged = useMemo(() => judgeLoad(draft, palletTypes), [draft, palletTypes]);
  const { fault, count, first } = faultReader(judged.faults, outcome, 'loads', wasTried);
  const isChanged = judged.fact === null || JSON.stringify(judged.fact) !== JSON.stringify(opened.saved);
  const pallet = palletTypes.find(({ id }) => id === draft.palletType) ?? null;
  const weighed = useLoadConsequences(isStanding && !opened.isNew && isChanged ? judged.fact : null, pallet);
  const drawn = drawableLoad(draft);
  useLeaveWarning(() => !isStored.current && draft !== begun.current);

  const change = (next: LoadDraft) => {
    setDraft(next);
    if (outcome?.state === 'refused') forget();
  };
  const measure = (field: LoadMeasure, label: string, note?: string) => (
    <MeasureEntry
      field={field}
      label={label}
      note={note}
      of={LOAD_MEASURES[field]}
      fault={fault}
      value={draft.measures[field]}
      onChange={(value) => change({ ...draft, measures: { ...draft.measures, [field]: value } })}
    />
  );
  const save = () => {
    setTried(true);
    if (judged.fact === null) {
      const field = first ?? [...judged.faults.keys()][0];
      form.current?.querySelector<HTMLElement>(`[data-field="${CSS.escape(field ?? '')}"]`)?.focus();
      return;
    }
    const data = new FormData();
    data.set('isNew', opened.isNew ? 'yes' : 'no');
    data.set('basedOn', String(opened.basedOn));
    data.set('load', JSON.stringify(judged.fact));
    send(data);
  };
  const openWith = (load: Load, basedOn: number, base: Load) => {
    setOpened({ saved: base, basedOn, isNew: false });
    setDraft(loadDraftOf(load));
    forget();
  };

  return (
    <form
      ref={form}
      className={entryStyles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      {outcome?.state === 'conflict' && judged.fact !== null ? (
        <ConflictPart
          conflict={outcome.conflict}
          fields={LOAD_FIELDS}
          base={opened.saved ?? judged.fact}
          mine={judged.fact}
          onMerged={(merged, basedOn) => openWith(merged, basedOn, outcome.conflict.theirs as Load)}
          onStartAgain={() =>
            openWith(
              outcome.conflict.theirs as Load,
              outcome.conflict.revision,
              outcome.conflict.theirs as Load,
            )
          }
          onAddAgain={() => {
            setOpened({ saved: null, basedOn: outcome.conflict.revision, isNew: true });
            forget();
          }}
        />
      ) : null}
      <section className="sheet stack" aria-label="What it is">
        <div className={entryStyles.fields}>
          <TextEntry
            field="id"
            label="Id"
            fault={fault}
            note={opened.isNew ? 'It stays' : 'Stays: to give another, copy the load and delete this one'}
            value={draft.id}
            readOnly={!opened.isNew}
            onChange={(id) => change({ ...draft, id })}
          />
          <TextEntry
            field="name"
            label="Name"
            fault={fault}
            value={draft.name}
            onChange={(name) => change({ ...draft, name })}
          />
          <ChoiceEntry
            field="palletType"
            label="Pallet"
            fault={fault}
            none="No pallet"
            value={draft.palletType}
            choices={palletTypes.map(({ id, tareKg }) => [id, `${id}, ${formatMass(tareKg, units, 'up')}`])}
            onChange={(palletType) => change({ ...draft, palletType })}
          />
          <TextEntry
            field="group"
            label="Group"
            fault={fault}
            value={draft.group}
            suggestions={groups}
            onChange={(group) => change({ ...draft, group })}
          />
          {measure('picksPerWeek', 'Picks a week', 'Empty: not known')}
        </div>
      </section>
      <section className="sheet stack" aria-labelledby="mass-heading">
        <h2 id="mass-heading">What it weighs</h2>
        <div className={entryStyles.pair}>
          <div className="stack">
            <MassPart draft={draft} fault={fault} onChange={change} />
          </div>
          <div className={entryStyles.aside} aria-live="polite">
            <MassArithmetic load={massOnly(draft)} pallet={pallet} policy={policy} units={units} />
          </div>
        </div>
      </section>
      <section className="sheet stack" aria-labelledby="size-heading">
        <h2 id="size-heading">Size and centre of gravity</h2>
        <div className={entryStyles.pair}>
          <div className={entryStyles.fields}>
            {measure('depthMm', 'Depth along the forks')}
            {measure('widthMm', 'Width')}
            {measure('heightMm', 'Height, pallet included')}
            {measure('centreFromHeelMm', 'Centre of gravity from the fork heel', 'Empty: half the depth')}
            {measure('centreHeightMm', 'Centre of gravity above the underside', 'Empty: half the height')}
          </div>
          <div className={entryStyles.aside}>
            {drawn === null ? (
              <p className="soft">Drawn to scale once depth and height are there.</p>
            ) : (
              <LoadSideView load={drawn} pallet={pallet} units={units} />
            )}
          </div>
        </div>
      </section>
      <section className="sheet stack" aria-labelledby="pick-heading">
        <h2 id="pick-heading">Picked by hand</h2>
        <HandPickPart draft={draft} fault={fault} onChange={change} />
      </section>
      {isStanding ? <ConsequencesPart weighed={weighed} /> : null}
      <EntryFoot
        label={opened.isNew ? 'Add the load' : 'Save the load'}
        isBusy={isBusy}
        isChanged={isChanged}
        faults={wasTried ? count : 0}
        outcome={outcome}
      >
        <Link href={saved === null ? '/loads' : loadHref(saved.id)}>Leave without saving</Link>
      </EntryFoot>
    </form>
  );
}

function firstDraft(saved: Load | null, copyOf: Load | null): LoadDraft {
  if (saved !== null) return loadDraftOf(saved);
  return copyOf === null ? BLANK_LOAD : { ...loadDraftOf(copyOf), id: '' };
}
