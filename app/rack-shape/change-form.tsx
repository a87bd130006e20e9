'use client';

import { ChangeFigures } from '@/app/rack-shape/change-figures.tsx';
import { ChoiceField } from '@/app/rack-shape/choice-field.tsx';
import { LabelFields } from '@/app/rack-shape/label-fields.tsx';
import type { TypedChange } from '@/app/rack-shape/typed-change.ts';
import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import type { RunChangeKind } from '@/lib/rack-shape/run-change.ts';
import styles from './rack-shape.module.css';

export const RACK_KINDS: readonly { value: RunChangeKind; words: string }[] = [
  { value: 'move-beam', words: 'Move a beam level' },
  { value: 'level-facts', words: 'Beams and capacities of a level' },
  { value: 'add-level', words: 'Add a beam level on top' },
  { value: 'remove-level', words: 'Take out a beam level' },
  { value: 'bay-facts', words: 'Width and load of bays' },
  { value: 'insert-bay', words: 'Put in a bay' },
  { value: 'split-bay', words: 'Split a bay' },
  { value: 'remove-bays', words: 'Take bays away' },
  { value: 'frame-type', words: 'Type of frames' },
  { value: 'renumber', words: 'New ids' },
];
export const INSPECTION_KINDS: readonly { value: RunChangeKind; words: string }[] = [
  { value: 'level-condition', words: 'Mark the condition of a level' },
  { value: 'frame-condition', words: 'Mark the condition of frames' },
];

export type ChangeFormProps = {
  site: Site;
  run: Run;
  typed: TypedChange;
  kinds: readonly { value: RunChangeKind; words: string }[];
  onKind: (kind: RunChangeKind) => void;
  onChange: (part: Partial<TypedChange>) => void;
  faultOf: (field: string) => string | null;
};

/** One change of a run: what kind, where, and the new figures. */
export function ChangeForm(props: ChangeFormProps) {
  const { typed, kinds, onKind, faultOf } = props;
  return (
    <>
      <ChoiceField label="Change" value={typed.kind} choices={kinds} onChange={onKind} />
      <div className={styles.fields}>
        <Where {...props} />
        <ChangeFigures {...props} />
      </div>
      {typed.kind === 'renumber' ? (
        <LabelFields
          labels={typed.labels}
          onChange={(part) => props.onChange({ labels: { ...typed.labels, ...part } })}
          faultOf={faultOf}
        />
      ) : null}
      {faultOf('bays') === null ? null : <p className="fault">{faultOf('bays')}</p>}
    </>
  );
}

const ONE_PLACE: readonly RunChangeKind[] = ['insert-bay', 'split-bay', 'renumber'];
const ON_A_LEVEL: readonly RunChangeKind[] = ['move-beam', 'level-facts', 'remove-level', 'level-condition'];

/** Which bays or frames, and which level. */
function Where({ run, typed, onChange, faultOf }: ChangeFormProps) {
  const isFrames = typed.kind === 'frame-condition' || typed.kind === 'frame-type';
  const list = (isFrames ? run.frames : run.bays).map(({ id }, at) => ({ value: String(at), words: id }));
  const what = isFrames ? 'frame' : 'bay';
  const levels = [...new Set(run.bays.flatMap((bay) => bay.levels.map((level) => level.level)))].sort(
    (a, b) => a - b,
  );
  return (
    <>
      {typed.kind === 'split-bay' ? (
        <ChoiceField
          label="Bay"
          value={String(typed.first)}
          choices={list}
          fault={faultOf('range')}
          onChange={(at) => onChange({ first: Number(at), last: Number(at) })}
        />
      ) : null}
      {ONE_PLACE.includes(typed.kind) ? null : (
        <>
          <ChoiceField
            label={`From ${what}`}
            value={String(typed.first)}
            choices={list}
            fault={faultOf('range')}
            onChange={(at) => onChange({ first: Number(at), last: Math.max(typed.last, Number(at)) })}
          />
          <ChoiceField
            label={`To ${what}`}
            value={String(typed.last)}
            choices={list}
            onChange={(at) => onChange({ last: Number(at), first: Math.min(typed.first, Number(at)) })}
          />
        </>
      )}
      {ON_A_LEVEL.includes(typed.kind) ? (
        <ChoiceField
          label="Level"
          value={String(typed.level)}
          choices={levels
            .filter((level) => level > 0 || typed.kind === 'level-condition')
            .map((level) => ({ value: String(level), words: level === 0 ? '0, the floor' : String(level) }))}
          fault={faultOf('level')}
          onChange={(level) => onChange({ level: Number(level) })}
        />
      ) : null}
    </>
  );
}
