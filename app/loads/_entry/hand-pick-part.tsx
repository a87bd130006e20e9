'use client';

import entryStyles from '@/app/_entry/entry.module.css';
import { ChoiceEntry, type FaultOf, MeasureEntry } from '@/app/_entry/fields.tsx';
import { LOAD_MEASURES, type LoadDraft, type LoadMeasure } from '@/lib/entry/load-draft.ts';

/** What the lifting of one case by hand takes; all of it or none. */
export function HandPickPart({
  draft,
  fault,
  onChange,
}: {
  draft: LoadDraft;
  fault: FaultOf;
  onChange: (draft: LoadDraft) => void;
}) {
  const measure = (field: LoadMeasure, label: string, unit?: string, note?: string) => (
    <MeasureEntry
      field={field}
      label={label}
      unit={unit}
      note={note}
      of={LOAD_MEASURES[field]}
      fault={fault}
      value={draft.measures[field]}
      onChange={(value) => onChange({ ...draft, measures: { ...draft.measures, [field]: value } })}
    />
  );
  return (
    <>
      <div className="row">
        <input
          id="is-hand-picked"
          type="checkbox"
          checked={draft.isHandPicked}
          onChange={(event) => onChange({ ...draft, isHandPicked: event.target.checked })}
        />
        <label htmlFor="is-hand-picked">Cases of it are picked by hand</label>
      </div>
      {draft.isHandPicked ? (
        <div className={entryStyles.fields}>
          {measure('handPick.massKg', 'One case weighs')}
          {measure('handPick.horizontalMm', 'Hands ahead of the ankles')}
          {measure('handPick.gripHeightMm', 'Hands above what the pallet stands on')}
          {measure('handPick.destinationHeightMm', 'Put down at, above the floor')}
          {measure('handPick.asymmetryDeg', 'Turning of the body', '°', '0 to 180')}
          {measure('handPick.liftsPerMinute', 'Lifts a minute', ' ')}
          {measure('handPick.durationHours', 'For how long at a time', 'hours', 'At most 8')}
          <ChoiceEntry
            field="handPick.coupling"
            label="Grip"
            fault={fault}
            value={draft.coupling}
            choices={[
              ['good', 'good: handles'],
              ['fair', 'fair: fingers under it'],
              ['poor', 'poor: nothing to hold'],
            ]}
            onChange={(coupling) => onChange({ ...draft, coupling })}
          />
        </div>
      ) : null}
    </>
  );
}
