'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import { ChoiceField, TickField, WordField } from '@/app/rack-shape/choice-field.tsx';
import { LabelFields } from '@/app/rack-shape/label-fields.tsx';
import type { TypedChange } from '@/app/rack-shape/typed-change.ts';
import { TypedField } from '@/app/rack-shape/typed-field.tsx';
import { CONDITIONS, type Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import type { RunChangeKind } from '@/lib/rack-shape/run-change.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
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

type Props = {
  site: Site;
  run: Run;
  typed: TypedChange;
  kinds: readonly { value: RunChangeKind; words: string }[];
  onKind: (kind: RunChangeKind) => void;
  onChange: (part: Partial<TypedChange>) => void;
  faultOf: (field: string) => string | null;
};

/** One change of a run: what kind, where, and the new figures. */
export function ChangeForm(props: Props) {
  const { typed, kinds, onKind, faultOf } = props;
  return (
    <>
      <ChoiceField label="Change" value={typed.kind} choices={kinds} onChange={onKind} />
      <div className={styles.fields}>
        <Where {...props} />
        <Figures {...props} />
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
function Where({ run, typed, onChange, faultOf }: Props) {
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

/** The new figures. */
function Figures({ site, run, typed, onChange, faultOf }: Props) {
  const units = useUnits();
  const bayIds = run.bays.map(({ id }, at) => ({ value: String(at), words: id }));
  const figure = (
    label: string,
    of: 'mass' | 'length' | 'count',
    key:
      | 'beamTopMm'
      | 'beamHeightMm'
      | 'pairCapacityKg'
      | 'maxUnitKg'
      | 'clearWidthMm'
      | 'maxBayLoadKg'
      | 'leftMm'
      | 'rightMm'
      | 'leftColumns',
    note?: string,
  ) => (
    <TypedField
      label={label}
      of={of}
      value={typed[key]}
      onChange={(value) => onChange({ [key]: value })}
      fault={faultOf(key)}
      note={note}
    />
  );
  switch (typed.kind) {
    case 'move-beam':
      return figure('New beam top', 'length', 'beamTopMm', topsNow(run, typed, units));
    case 'level-facts':
      return (
        <>
          {figure('Beam height', 'length', 'beamHeightMm', 'empty: as it is')}
          {figure('Pair capacity', 'mass', 'pairCapacityKg', 'empty: as it is')}
          {figure('Unit limit', 'mass', 'maxUnitKg', 'empty: as it is')}
          <ChoiceField
            label="Decking"
            value={typed.decking}
            choices={[
              { value: 'as-it-is', words: 'as it is' },
              { value: 'decked', words: 'decked' },
              { value: 'not-decked', words: 'not decked' },
            ]}
            onChange={(decking) => onChange({ decking })}
          />
          <TickField
            label="Pair capacity is not known"
            value={typed.isPairNotKnown}
            onChange={(isPairNotKnown) => onChange({ isPairNotKnown })}
          />
          <TickField
            label="No unit limit is stated"
            value={typed.isUnitNotStated}
            onChange={(isUnitNotStated) => onChange({ isUnitNotStated })}
          />
        </>
      );
    case 'add-level':
      return (
        <>
          {figure('Beam top', 'length', 'beamTopMm')}
          {figure('Beam height', 'length', 'beamHeightMm')}
          {figure('Pair capacity', 'mass', 'pairCapacityKg', 'empty: not known')}
          {figure('Unit limit', 'mass', 'maxUnitKg', 'empty: none stated')}
          <TickField
            label="Decked"
            value={typed.decking === 'decked'}
            onChange={(decked) => onChange({ decking: decked ? 'decked' : 'as-it-is' })}
          />
        </>
      );
    case 'bay-facts':
      return (
        <>
          {figure('Clear width', 'length', 'clearWidthMm', 'empty: as it is')}
          {figure('Bay load', 'mass', 'maxBayLoadKg', 'empty: as it is')}
          <TickField
            label="No bay load is stated"
            value={typed.isBayLoadNotStated}
            onChange={(isBayLoadNotStated) => onChange({ isBayLoadNotStated })}
          />
        </>
      );
    case 'level-condition':
    case 'frame-condition':
      return (
        <ChoiceField
          label="Condition"
          value={typed.condition}
          choices={CONDITIONS.map((value) => ({ value, words: value }))}
          onChange={(condition) => onChange({ condition })}
        />
      );
    case 'frame-type':
      return (
        <ChoiceField
          label="Type"
          value={typed.typeId}
          choices={[
            { value: '', words: 'choose' },
            ...site.frameTypes.map(({ id }) => ({ value: id, words: id })),
          ]}
          fault={faultOf('typeId')}
          onChange={(typeId) => onChange({ typeId })}
        />
      );
    case 'insert-bay':
      return (
        <>
          <ChoiceField
            label="Where"
            value={String(typed.before)}
            choices={[
              ...bayIds.map(({ value, words }) => ({ value, words: `before ${words}` })),
              { value: String(bayIds.length), words: 'at the end' },
            ]}
            onChange={(at) => onChange({ before: Number(at) })}
          />
          <ChoiceField
            label="Like bay"
            value={String(typed.like)}
            choices={bayIds}
            onChange={(at) => onChange({ like: Number(at) })}
          />
          <WordField
            label="Its number or name"
            value={typed.name}
            onChange={(name) => onChange({ name })}
            fault={faultOf('name') ?? faultOf('labels.pattern')}
          />
          {figure('Clear width', 'length', 'clearWidthMm')}
        </>
      );
    case 'split-bay':
      return (
        <>
          {figure('Clear width left', 'length', 'leftMm')}
          {figure('Clear width right', 'length', 'rightMm')}
          {figure('Positions that stay left', 'count', 'leftColumns')}
          <WordField
            label="Name of the right half"
            value={typed.name}
            onChange={(name) => onChange({ name })}
            fault={faultOf('name')}
          />
        </>
      );
    case 'renumber':
      return (
        <>
          <WordField label="Run" value={typed.id} onChange={(id) => onChange({ id })} fault={faultOf('id')} />
          <ChoiceField
            label="Aisle"
            value={typed.aisleId}
            choices={site.aisles.map(({ id }) => ({ value: id, words: id }))}
            onChange={(aisleId) => onChange({ aisleId })}
            fault={faultOf('aisleId')}
          />
        </>
      );
    case 'remove-level':
    case 'remove-bays':
      return null;
    default:
      return typed.kind satisfies never;
  }
}

/** Where a beam level stands now: "now 1 500 mm", or from the lowest to the highest of some bays. */
function topsNow(run: Run, { first, last, level }: TypedChange, units: DisplayUnits): string | undefined {
  const tops = run.bays
    .slice(first, last + 1)
    .flatMap((bay) => bay.levels.filter((entry) => entry.level === level).map((entry) => entry.beamTopMm));
  if (tops.length === 0) return undefined;
  const [low, high] = [Math.min(...tops), Math.max(...tops)].map((mm) => formatLength(mm, units, 'up'));
  return low === high ? `now ${low}` : `now ${low} to ${high}`;
}
