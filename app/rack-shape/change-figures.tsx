'use client';

import { useUnits } from '@/app/_parts/units-context.tsx';
import type { ChangeFormProps } from '@/app/rack-shape/change-form.tsx';
import { ChoiceField, TickField, WordField } from '@/app/rack-shape/choice-field.tsx';
import type { TypedChange } from '@/app/rack-shape/typed-change.ts';
import { TypedField } from '@/app/rack-shape/typed-field.tsx';
import { CONDITIONS, type Run } from '@/lib/model/racking.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';

/** The new figures. */
export function ChangeFigures({ site, run, typed, onChange, faultOf }: ChangeFormProps) {
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
