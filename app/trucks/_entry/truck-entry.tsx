'use client';

import Link from 'next/link';
import { useMemo, useRef, useState } from 'react';
import { ConflictPart } from '@/app/_entry/conflict-part.tsx';
import styles from '@/app/_entry/entry.module.css';
import { EntryFoot } from '@/app/_entry/entry-foot.tsx';
import { faultReader } from '@/app/_entry/fault-reader.ts';
import { useLeaveWarning, useSave } from '@/app/_entry/use-save.ts';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import { LoadChart } from '@/app/_parts/load-chart.tsx';
import { truckHref } from '@/app/_parts/screen-links.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { saveTruckEntry } from '@/app/trucks/_entry/actions.ts';
import { PhotoConflict } from '@/app/trucks/_entry/photo-conflict.tsx';
import { type PhotoChoice, PhotoPart } from '@/app/trucks/_entry/photo-part.tsx';
import platePartStyles from '@/app/trucks/_entry/plate-editor.module.css';
import { PlateEditor } from '@/app/trucks/_entry/plate-editor.tsx';
import { TruckFigures, TruckNames } from '@/app/trucks/_entry/truck-figures.tsx';
import { TRUCK_FIELDS } from '@/lib/entry/merge-facts.ts';
import { plateAdvice } from '@/lib/entry/plate-advice.ts';
import { blankBlock, readPlate } from '@/lib/entry/plate-draft.ts';
import {
  BLANK_TRUCK,
  drawableTruck,
  judgeTruck,
  type TruckDraft,
  truckDraftOf,
} from '@/lib/entry/truck-draft.ts';
import type { Truck } from '@/lib/model/truck.ts';
import type { PlatePhoto } from '@/lib/store/plate-photos.ts';
import { idleHeadingsSentence, plateAdviceSentence } from '@/lib/words/entry.ts';

/**
 * A truck as it is typed: its plate as a grid beside the chart that it draws, then its data sheet. `saved`: the truck
 * that is changed; `copyOf`: the one that a new truck begins as.
 */
export function TruckEntry({
  saved,
  copyOf,
  revision,
  photo,
  attachments,
}: {
  saved: Truck | null;
  copyOf: Truck | null;
  revision: number;
  photo: PlatePhoto | null;
  attachments: readonly string[];
}) {
  const units = useUnits();
  const [opened, setOpened] = useState({ saved, basedOn: revision, isNew: saved === null });
  const [draft, setDraft] = useState<TruckDraft>(() => firstDraft(saved, copyOf));
  const [choice, setChoice] = useState<PhotoChoice>({ kind: 'keep' });
  const [wasTried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const { outcome, isBusy, isStored, send, forget } = useSave(
    saveTruckEntry,
    ({ id, revision }) => `${truckHref(id)}?saved=${revision}`,
  );
  const judged = useMemo(() => judgeTruck(draft), [draft]);
  const drawn = useMemo(() => drawableTruck(draft), [draft]);
  const advice = useMemo(() => (judged.fact === null ? [] : plateAdvice(judged.fact)), [judged]);
  const idle = useMemo(() => readPlate(draft.plate).idle, [draft.plate]);
  const { fault, count, first } = faultReader(judged.faults, outcome, 'trucks', wasTried);
  const isChanged =
    choice.kind !== 'keep' ||
    (judged.fact === null ? true : JSON.stringify(judged.fact) !== JSON.stringify(opened.saved));
  const begun = useRef(draft);
  useLeaveWarning(() => !isStored.current && (draft !== begun.current || choice.kind !== 'keep'));

  const change = (next: TruckDraft) => {
    setDraft(next);
    if (outcome?.state === 'refused') forget();
  };
  const save = (basedOn = opened.basedOn) => {
    setTried(true);
    if (judged.fact === null) {
      const field = first ?? [...judged.faults.keys()][0];
      form.current?.querySelector<HTMLElement>(`[data-field="${CSS.escape(field ?? '')}"]`)?.focus();
      return;
    }
    const data = new FormData();
    data.set('isNew', opened.isNew ? 'yes' : 'no');
    data.set('basedOn', String(basedOn));
    data.set('truck', JSON.stringify(judged.fact));
    data.set('photo', choice.kind);
    if (choice.kind === 'put') data.set('file', choice.file);
    send(data);
  };
  const openWith = (truck: Truck, basedOn: number, base: Truck) => {
    setOpened({ saved: base, basedOn, isNew: false });
    setDraft(truckDraftOf(truck));
    forget();
  };

  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      {outcome?.state === 'conflict' && outcome.conflict.noun === 'truck' && judged.fact !== null ? (
        <ConflictPart
          conflict={outcome.conflict}
          fields={TRUCK_FIELDS}
          fixed={['hold']}
          base={opened.saved ?? judged.fact}
          mine={judged.fact}
          onMerged={(merged, basedOn) => openWith(merged, basedOn, outcome.conflict.theirs as Truck)}
          onStartAgain={() =>
            openWith(
              outcome.conflict.theirs as Truck,
              outcome.conflict.revision,
              outcome.conflict.theirs as Truck,
            )
          }
          onAddAgain={() => {
            setOpened({ saved: null, basedOn: outcome.conflict.revision, isNew: true });
            forget();
          }}
        />
      ) : null}
      {outcome?.state === 'conflict' && outcome.conflict.noun === 'plate-photo' ? (
        <PhotoConflict
          conflict={outcome.conflict}
          onMine={() => {
            setOpened({ ...opened, basedOn: outcome.conflict.revision });
            save(outcome.conflict.revision);
          }}
          onTheirs={() => {
            setOpened({ ...opened, basedOn: outcome.conflict.revision });
            setChoice({ kind: 'keep' });
            forget();
          }}
        />
      ) : null}
      <section className="sheet stack" aria-label="What it is">
        <TruckNames draft={draft} fault={fault} onChange={change} isNew={opened.isNew} />
      </section>
      <section className="sheet stack" aria-labelledby="plate-heading">
        <h2 id="plate-heading">Capacity plate</h2>
        <div className={styles.pair}>
          <PlateEditor
            plate={draft.plate}
            attachments={attachments}
            fault={fault}
            onChange={(plate) => change({ ...draft, plate })}
          />
          <div className={`${styles.aside} ${platePartStyles.sticky}`}>
            <LoadChart truck={drawn} units={units} />
            <PhotoPart kept={photo} choice={choice} onChange={setChoice} />
          </div>
        </div>
        <div aria-live="polite">
          <CautionStrip
            title="Look at these once more"
            cautions={[
              ...advice.map((entry) => plateAdviceSentence(entry, units)),
              ...(idle.length === 0 ? [] : [idleHeadingsSentence(idle.length)]),
            ]}
          />
        </div>
      </section>
      <section className="sheet stack" aria-labelledby="figures-heading">
        <h2 id="figures-heading">Data sheet</h2>
        <p className="soft">What is not known stays empty: a rule that needs it will say so.</p>
        <TruckFigures draft={draft} fault={fault} onChange={change} attachments={attachments} />
      </section>
      <EntryFoot
        label={opened.isNew ? 'Add the truck' : 'Save the truck'}
        isBusy={isBusy}
        isChanged={isChanged}
        faults={wasTried ? count : 0}
        outcome={outcome}
      >
        <Link href={saved === null ? '/trucks' : truckHref(saved.id)}>Leave without saving</Link>
      </EntryFoot>
    </form>
  );
}

/** A copy has no id yet: two trucks of one id would be one. Nor is it on hold because the other is. */
function firstDraft(saved: Truck | null, copyOf: Truck | null): TruckDraft {
  if (saved !== null) return truckDraftOf(saved);
  if (copyOf !== null) return { ...truckDraftOf(copyOf), id: '', hold: null };
  return { ...BLANK_TRUCK, plate: [blankBlock([], { mast: 'vertical', attachment: null })] };
}
