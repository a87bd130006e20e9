import type { ReactNode } from 'react';
import { AskedRefusals, refusalAtField, refusedParameter } from '@/app/_parts/asked-refusals.tsx';
import { lengthUnit, massUnit } from '@/app/_parts/chart-scale.ts';
import type { LiftQuery, RawQuery } from '@/app/_parts/lift-query.ts';
import { BASIS_WORDS } from '@/app/_parts/mass-arithmetic.tsx';
import { fieldText, TYPED_IN } from '@/app/which-truck/form-address.ts';
import { SuggestField } from '@/app/which-truck/suggest-field.tsx';
import { MASS_BASES } from '@/lib/model/policy.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import styles from './which-truck.module.css';

type Quantity = { key: 'mass' | 'depth' | 'width' | 'height'; label: string };

const QUANTITIES: readonly Quantity[] = [
  { key: 'mass', label: 'Gross mass' },
  { key: 'depth', label: 'Depth along the forks' },
  { key: 'width', label: 'Width' },
  { key: 'height', label: 'Height, pallet included' },
];

const TYPED_FIELDS = ['mass', 'basis', 'depth', 'width', 'height', 'pallet'];
const AROUND_FIELDS = ['asOf', 'operator', 'stock', 'from'];

/** The question, field by field, with whatever was typed still in it and a word at each field that could not be read. */
export function WhichTruckForm({
  index,
  raw,
  query,
  refused,
  units,
}: {
  index: SiteIndex;
  raw: RawQuery;
  query: LiftQuery;
  refused: readonly Refusal[];
  units: DisplayUnits;
}) {
  const faults = new Map(refused.map((refusal) => [refusedParameter(refusal), refusalAtField(refusal)]));
  const fault = (key: string) => faults.get(key) ?? null;
  const given = (key: string) => [raw[key]].flat()[0]?.trim() ?? '';
  const any = (keys: readonly string[]) => keys.some((key) => given(key) !== '' || faults.has(key));
  const typedToo = given('load') !== '' && QUANTITIES.some(({ key }) => given(key) !== '');
  return (
    <form method="get" action="/which-truck" className={styles.form} noValidate>
      <input type="hidden" name={TYPED_IN} value={units} />
      <AskedRefusals title="This cannot be answered yet" refused={refused} />
      <SuggestField
        of="location"
        label="Location"
        hint="As it stands on the rack"
        typed={given('location')}
        fault={fault('location')}
      />
      <fieldset className={styles.choice}>
        <legend>Do what</legend>
        {(['place', 'retrieve'] as const).map((operation) => (
          <label key={operation}>
            <input
              type="radio"
              name="operation"
              value={operation}
              defaultChecked={
                operation ===
                (given('operation') === '' && given('location') === '' ? 'place' : query.operation)
              }
            />
            {operation === 'place' ? 'Put away' : 'Take down'}
          </label>
        ))}
        <Fault id="operation" words={fault('operation')} />
      </fieldset>
      <SuggestField
        of="load"
        label="Load"
        hint="Id or part of its name. Left empty for taking down: what stands there"
        typed={given('load')}
        fault={fault('load')}
      />
      <details className={styles.part} open={any(TYPED_FIELDS)}>
        <summary>Or type the load in</summary>
        {typedToo ? <p className="fault">A load is named above: it counts, not what is typed here.</p> : null}
        <div className={styles.typed}>
          {QUANTITIES.map(({ key, label }) => (
            <Field
              key={key}
              id={key}
              label={label}
              unit={key === 'mass' ? massUnit(units) : lengthUnit(units)}
              fault={fault(key)}
            >
              <input
                id={key}
                name={key}
                inputMode="decimal"
                autoComplete="off"
                defaultValue={fieldText(raw, key, units)}
                aria-invalid={faults.has(key)}
                aria-describedby={faults.has(key) ? `${key}-fault` : undefined}
              />
            </Field>
          ))}
          <Field id="basis" label="The mass is" fault={fault('basis')}>
            <select id="basis" name="basis" defaultValue={given('basis')}>
              <option value="">{BASIS_WORDS.declared}</option>
              {MASS_BASES.filter((basis) => basis !== 'declared').map((basis) => (
                <option key={basis} value={basis}>
                  {BASIS_WORDS[basis]}
                </option>
              ))}
            </select>
          </Field>
          <Field id="pallet" label="Pallet" fault={fault('pallet')}>
            <select id="pallet" name="pallet" defaultValue={given('pallet')}>
              <option value="">none named</option>
              {index.site.palletTypes.map(({ id }) => (
                <option key={id} value={id}>
                  {id}
                </option>
              ))}
            </select>
          </Field>
        </div>
      </details>
      <details className={styles.part} open={any(AROUND_FIELDS)}>
        <summary>When, who drives, racks</summary>
        <div className={styles.typed}>
          <Field id="asOf" label="Judged as of, UTC" unit="empty: now" fault={fault('asOf')}>
            <input
              id="asOf"
              name="asOf"
              type="datetime-local"
              defaultValue={query.time.kind === 'at' ? dateTimeText(query.time.instant) : ''}
              aria-invalid={faults.has('asOf')}
              aria-describedby={faults.has('asOf') ? 'asOf-fault' : undefined}
            />
          </Field>
          <Field id="operator" label="Who drives" fault={fault('operator')}>
            <select id="operator" name="operator" defaultValue={given('operator')}>
              <option value="">nobody named</option>
              {index.site.operators.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </Field>
          <label className={styles.tick}>
            <input
              type="checkbox"
              name="asOf"
              value="not-judged"
              defaultChecked={query.time.kind === 'not-judged'}
            />
            Leave checks, holds and expiry dates out
          </label>
          <label className={styles.tick}>
            <input type="checkbox" name="stock" value="empty" defaultChecked={query.stock === 'empty'} />
            Take the racks as empty
          </label>
          <Field id="from" label="Comes from" unit="where it stands now, if anywhere" fault={fault('from')}>
            <input
              id="from"
              name="from"
              autoComplete="off"
              defaultValue={given('from')}
              aria-invalid={faults.has('from')}
              aria-describedby={faults.has('from') ? 'from-fault' : undefined}
            />
          </Field>
        </div>
      </details>
      <button type="submit" className={`button-main ${styles.ask}`}>
        Which truck?
      </button>
    </form>
  );
}

function Field({
  id,
  label,
  unit,
  fault,
  children,
}: {
  id: string;
  label: string;
  unit?: string;
  fault: string | null;
  children: ReactNode;
}) {
  return (
    <div className="field">
      <label htmlFor={id}>
        {label} {unit === undefined ? null : <span className="soft">{unit}</span>}
      </label>
      {children}
      <Fault id={id} words={fault} />
    </div>
  );
}

function Fault({ id, words }: { id: string; words: string | null }) {
  if (words === null) return null;
  return (
    <span id={`${id}-fault`} className="fault">
      {words}
    </span>
  );
}

function dateTimeText(instant: string): string {
  return instant.length === 10 ? `${instant}T00:00` : instant.slice(0, 16);
}
