'use client';

import styles from '@/app/_entry/entry.module.css';
import { ChoiceEntry, type FaultOf, MeasureEntry, TextEntry } from '@/app/_entry/fields.tsx';
import { KIND_WORDS, POWER_WORDS } from '@/app/trucks/truck-words.ts';
import { TRUCK_MEASURES, type TruckDraft, type TruckMeasure } from '@/lib/entry/truck-draft.ts';
import type { Truck } from '@/lib/model/truck.ts';

type Props = { draft: TruckDraft; fault: FaultOf; onChange: (draft: TruckDraft) => void };

const entriesOf = <K extends string>(words: Record<K, string>) => Object.entries(words) as [K, string][];

/** What the truck is called and what it is. */
export function TruckNames({ draft, fault, onChange, isNew }: Props & { isNew: boolean }) {
  return (
    <div className={styles.fields}>
      <TextEntry
        field="id"
        label="Id"
        fault={fault}
        note={
          isNew
            ? 'As it is marked on the truck; it stays'
            : 'Stays: to give another, copy the truck and delete this one'
        }
        value={draft.id}
        readOnly={!isNew}
        onChange={(id) => onChange({ ...draft, id })}
      />
      <TextEntry
        field="name"
        label="Name"
        fault={fault}
        value={draft.name}
        onChange={(name) => onChange({ ...draft, name })}
      />
      <ChoiceEntry
        field="kind"
        label="Kind"
        fault={fault}
        value={draft.kind}
        choices={entriesOf<Truck['kind']>(KIND_WORDS)}
        onChange={(kind) => onChange({ ...draft, kind })}
      />
      <ChoiceEntry
        field="power"
        label="Power"
        fault={fault}
        value={draft.power}
        choices={entriesOf<Truck['power']>(POWER_WORDS)}
        onChange={(power) => onChange({ ...draft, power })}
      />
    </div>
  );
}

/** The figures of the data sheet, in its order. */
export function TruckFigures({
  draft,
  fault,
  onChange,
  attachments,
}: Props & { attachments: readonly string[] }) {
  const measure = (field: TruckMeasure, label: string, note?: string) => (
    <MeasureEntry
      field={field}
      label={label}
      fault={fault}
      note={note}
      of={TRUCK_MEASURES[field]}
      value={draft.measures[field]}
      onChange={(value) => onChange({ ...draft, measures: { ...draft.measures, [field]: value } })}
    />
  );
  return (
    <>
      <h3>Lift and mast</h3>
      <div className={styles.fields}>
        {measure('maxLiftMm', 'Largest lift', 'Fork top face above the floor')}
        {measure('freeLiftMm', 'Free lift', 'Empty: none')}
        {measure('loweredMm', 'Mast height, lowered')}
        {measure('extendedMm', 'Mast height, extended')}
        {measure(
          'plate.verticalLoadCentreMm',
          'Load centre above the forks, at most',
          'Where the plate states one',
        )}
      </div>
      <h3>Turning</h3>
      <div className={styles.fields}>
        {measure('turning.outsideRadiusMm', 'Outside turning radius', 'All three, or none')}
        {measure('turning.loadDistanceMm', 'Load distance', 'Front axle to fork face')}
        {measure(
          'turning.insideOffsetMm',
          'Inside offset',
          'Turning point to the middle; 0 for three wheels',
        )}
      </div>
      <h3>Forks</h3>
      <div className={styles.fields}>
        {measure('forks.lengthMm', 'Fork length')}
        {measure('forks.armCapacityKg', 'One fork arm carries', 'As marked on the arm')}
        {measure('forks.armLoadCentreMm', 'at a load centre of')}
      </div>
      <h3>Reach, aisle, attachment, speeds</h3>
      <div className={styles.fields}>
        <ChoiceEntry
          field="reachDepth"
          label="Reaches"
          fault={fault}
          value={draft.reachDepth}
          choices={[
            ['1', 'the front row'],
            ['2', 'two pallets deep'],
          ]}
          onChange={(reachDepth) => onChange({ ...draft, reachDepth })}
        />
        {measure('statedAisleMm', 'Aisle stated by the maker', 'Empty: none stated')}
        <TextEntry
          field="fittedAttachment"
          label="Attachment fitted"
          fault={fault}
          note="Empty: the forks alone. The plate needs a grid for it"
          value={draft.fittedAttachment}
          suggestions={attachments}
          onChange={(fittedAttachment) => onChange({ ...draft, fittedAttachment })}
        />
        {measure('speeds.travelMps', 'Travel speed', 'Both speeds, or none')}
        {measure('speeds.liftMps', 'Lifting speed')}
      </div>
    </>
  );
}
