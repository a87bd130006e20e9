'use client';

import { useId, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { ChoiceField, TickField, WordField } from '@/app/rack-shape/choice-field.tsx';
import { LabelFields } from '@/app/rack-shape/label-fields.tsx';
import { DEPTHS, LevelRows } from '@/app/rack-shape/level-rows.tsx';
import { readWidths, shownWidths } from '@/app/rack-shape/read-typed.ts';
import { TypedField, unitOf } from '@/app/rack-shape/typed-field.tsx';
import type { Site } from '@/lib/model/site.ts';
import type { RunDescription } from '@/lib/rack-shape/description.ts';
import styles from './rack-shape.module.css';

type Change = (part: Partial<RunDescription>, step: string | null) => void;

/** A whole run in a few figures. */
export function RunForm({
  site,
  description,
  onChange,
  faultOf,
}: {
  site: Site;
  description: RunDescription;
  onChange: Change;
  faultOf: (field: string) => string | null;
}) {
  const { labels, floor } = description;
  const types = site.frameTypes.map(({ id }) => ({ value: id, words: id }));
  return (
    <>
      <fieldset className={styles.group}>
        <legend>Where it stands</legend>
        <div className={styles.fields}>
          <ChoiceField
            label="Aisle"
            value={description.aisleId}
            choices={site.aisles.map(({ id }) => ({ value: id, words: id }))}
            fault={faultOf('aisleId')}
            onChange={(aisleId) =>
              onChange(
                { aisleId, labels: { ...labels, aisle: aisleId }, id: `${aisleId}-${labels.side}` },
                null,
              )
            }
          />
          <WordField
            label="Run"
            value={description.id}
            onChange={(id) => onChange({ id }, 'id')}
            fault={faultOf('id')}
          />
        </div>
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Bays and frames</legend>
        <div className={styles.fields}>
          <TypedField
            label="Bays"
            of="count"
            value={description.bayCount}
            onChange={(bayCount) => onChange({ bayCount }, 'bayCount')}
            fault={faultOf('bayCount')}
          />
          <WidthsField
            widths={description.clearWidthsMm}
            onChange={(clearWidthsMm) => onChange({ clearWidthsMm }, 'widths')}
            fault={faultOf('clearWidthsMm')}
          />
          <ChoiceField
            label="Frame type"
            value={description.frameTypeId}
            choices={types}
            fault={faultOf('frameTypeId')}
            onChange={(frameTypeId) => onChange({ frameTypeId }, null)}
          />
          <ChoiceField
            label="End frames"
            value={description.endFrameTypeId ?? ''}
            choices={[{ value: '', words: 'the same type' }, ...types]}
            fault={faultOf('endFrameTypeId')}
            onChange={(type) => onChange({ endFrameTypeId: type === '' ? null : type }, null)}
          />
          <TypedField
            label="Frame depth"
            of="length"
            value={description.frameDepthMm}
            onChange={(frameDepthMm) => onChange({ frameDepthMm }, 'depth')}
            fault={faultOf('frameDepthMm')}
          />
          <TypedField
            label="Bay load"
            of="mass"
            value={description.maxBayLoadKg}
            onChange={(maxBayLoadKg) => onChange({ maxBayLoadKg }, 'bayLoad')}
            fault={faultOf('maxBayLoadKg')}
            note={description.maxBayLoadKg === null ? 'the notice states none' : undefined}
          />
        </div>
        <TickField
          label="Loads stand on the floor too"
          value={floor !== null}
          onChange={(used) => onChange({ floor: used ? { positions: 3, depthPositions: 1 } : null }, null)}
        />
        {floor === null ? null : (
          <div className={styles.fields}>
            <TypedField
              label="Positions on the floor"
              of="count"
              value={floor.positions}
              onChange={(positions) => onChange({ floor: { ...floor, positions } }, 'floor')}
              fault={faultOf('floor.positions')}
            />
            <ChoiceField
              label="Depth on the floor"
              value={String(floor.depthPositions) as '1' | '2'}
              choices={DEPTHS}
              onChange={(depth) =>
                onChange({ floor: { ...floor, depthPositions: depth === '2' ? 2 : 1 } }, null)
              }
            />
          </div>
        )}
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Beam levels, the lowest first</legend>
        <LevelRows
          levels={description.levels}
          onChange={(levels, step) => onChange({ levels }, step)}
          faultOf={faultOf}
        />
      </fieldset>
      <fieldset className={styles.group}>
        <legend>Labels of the locations</legend>
        <LabelFields
          labels={labels}
          onChange={(part, step) => onChange({ labels: { ...labels, ...part } }, step)}
          faultOf={faultOf}
        />
      </fieldset>
    </>
  );
}

function WidthsField({
  widths,
  onChange,
  fault,
}: {
  widths: RunDescription['clearWidthsMm'];
  onChange: (widths: RunDescription['clearWidthsMm']) => void;
  fault: string | null;
}) {
  const units = useUnits();
  const field = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const holds = typed !== null && String(readWidths(typed, units)) === String(widths);
  return (
    <div className="field">
      <label htmlFor={field}>
        Clear width <span className="soft">{unitOf('length', units)}</span>
      </label>
      <input
        id={field}
        autoComplete="off"
        value={holds ? typed : shownWidths(widths, units)}
        aria-invalid={fault !== null}
        aria-describedby={`${field}-note`}
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(readWidths(event.target.value, units));
        }}
      />
      <span id={`${field}-note`} className={fault === null ? 'soft dense' : 'fault'}>
        {fault ?? 'of each bay, or of all: 5 x 2700; 1350'}
      </span>
    </div>
  );
}
