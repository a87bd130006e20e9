'use client';

import { useId } from 'react';
import type { AskedLoad, LiftQuery } from '@/app/_parts/lift-query.ts';
import { LoadSearch } from '@/app/_parts/load-search.tsx';
import { TimeFields } from '@/app/_parts/time-fields.tsx';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import { TruckPicker } from '@/app/racks/truck-picker.tsx';
import { TypedLoadFields } from '@/app/racks/typed-load-fields.tsx';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import styles from './question-form.module.css';

type Change = (change: Partial<RacksQuery>) => void;

const LOAD_KINDS: readonly { kind: AskedLoad['kind']; label: string }[] = [
  { kind: 'stored', label: 'What stands there' },
  { kind: 'known', label: 'A load' },
  { kind: 'typed', label: 'Typed in' },
];

const TYPED_TO_START: Extract<AskedLoad, { kind: 'typed' }> = {
  kind: 'typed',
  massKg: 1000,
  basis: 'declared',
  depthMm: 1200,
  widthMm: 800,
  heightMm: 1200,
  palletType: null,
};

/** What is asked of the racks: which load, which trucks, put away or take down, when. Every change is asked at once. */
export function QuestionForm({
  index,
  query,
  onChange,
}: {
  index: SiteIndex;
  query: RacksQuery;
  onChange: Change;
}) {
  const { lift } = query;
  const change = (part: Partial<LiftQuery>) => onChange({ lift: { ...lift, ...part } });
  return (
    <form className={styles.form} onSubmit={(event) => event.preventDefault()} aria-label="What is asked">
      <LoadPart index={index} lift={lift} change={change} />
      <Choice
        legend="Do what"
        value={lift.operation}
        options={[
          { value: 'place', label: lift.load.kind === 'stored' ? 'Put back' : 'Put away' },
          { value: 'retrieve', label: 'Take down' },
        ]}
        onChoose={(operation) => change({ operation })}
      />
      <TruckPicker
        trucks={index.site.trucks}
        chosen={query.trucks}
        onChoose={(trucks) => onChange({ trucks })}
      />
      <TimeFields time={lift.time} onTime={(time) => change({ time })} />
      <Choice
        legend="Racks"
        value={lift.stock}
        options={[
          { value: 'as-is', label: 'As they stand' },
          { value: 'empty', label: 'As if empty' },
        ]}
        onChoose={(stock) => change({ stock })}
      />
      <OperatorPart index={index} lift={lift} change={change} />
    </form>
  );
}

type PartProps = { index: SiteIndex; lift: LiftQuery; change: (part: Partial<LiftQuery>) => void };

function LoadPart({ index, lift, change }: PartProps) {
  const { load } = lift;
  const begin = (kind: AskedLoad['kind']) => {
    if (kind === load.kind) return;
    if (kind === 'stored') change({ load: { kind }, operation: 'retrieve' });
    else if (kind === 'typed') change({ load: TYPED_TO_START, operation: 'place' });
    else {
      const first = index.site.loads[0];
      if (first !== undefined) change({ load: { kind, id: first.id }, operation: 'place' });
    }
  };
  return (
    <>
      <Choice
        legend="Which load"
        value={load.kind}
        options={LOAD_KINDS.map(({ kind, label }) => ({ value: kind, label }))}
        onChoose={begin}
      />
      {load.kind === 'known' ? (
        <LoadSearch
          label="Load"
          loads={index.site.loads}
          chosen={index.loads.get(load.id) ?? null}
          onChoose={({ id }) => change({ load: { kind: 'known', id } })}
        />
      ) : null}
      {load.kind === 'typed' ? (
        <TypedLoadFields
          load={load}
          palletTypes={index.site.palletTypes}
          onChange={(typed) => change({ load: typed })}
        />
      ) : null}
    </>
  );
}

function OperatorPart({ index, lift, change }: PartProps) {
  const field = useId();
  if (index.site.operators.length === 0) return null;
  return (
    <div className="field">
      <label htmlFor={field}>Driver</label>
      <select
        id={field}
        value={lift.operator ?? ''}
        onChange={({ target }) => change({ operator: target.value || null })}
      >
        <option value="">nobody named</option>
        {index.site.operators.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}

/** A choice of a few words, all of them seen at once. */
function Choice<Value extends string>({
  legend,
  value,
  options,
  onChoose,
}: {
  legend: string;
  value: Value;
  options: readonly { value: Value; label: string }[];
  onChoose: (value: Value) => void;
}) {
  const name = useId();
  return (
    <fieldset className={styles.choice}>
      <legend>{legend}</legend>
      <div>
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
