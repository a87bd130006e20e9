import { AskedRefusals } from '@/app/_parts/asked-refusals.tsx';
import type { LiftQuery, RawQuery } from '@/app/_parts/lift-query.ts';
import { AroundPart } from '@/app/which-truck/around-part.tsx';
import { TYPED_IN } from '@/app/which-truck/form-address.ts';
import { Fault, formState } from '@/app/which-truck/form-field.tsx';
import { SuggestField } from '@/app/which-truck/suggest-field.tsx';
import { TypedLoadPart } from '@/app/which-truck/typed-load-part.tsx';
import type { Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import styles from './which-truck.module.css';

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
  const form = formState(raw, refused);
  return (
    <form method="get" action="/which-truck" className={styles.form} noValidate>
      <input type="hidden" name={TYPED_IN} value={units} />
      <AskedRefusals title="This cannot be answered yet" refused={refused} />
      <SuggestField
        of="location"
        label="Location"
        hint="As it stands on the rack"
        typed={form.given('location')}
        fault={form.fault('location')}
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
                (form.given('operation') === '' && form.given('location') === '' ? 'place' : query.operation)
              }
            />
            {operation === 'place' ? 'Put away' : 'Take down'}
          </label>
        ))}
        <Fault id="operation" words={form.fault('operation')} />
      </fieldset>
      <SuggestField
        of="load"
        label="Load"
        hint="Id or part of its name. Left empty for taking down: what stands there"
        typed={form.given('load')}
        fault={form.fault('load')}
      />
      <TypedLoadPart form={form} palletTypes={index.site.palletTypes} units={units} />
      <AroundPart form={form} query={query} operators={index.site.operators} />
      <button type="submit" className={`button-main ${styles.ask}`}>
        Which truck?
      </button>
    </form>
  );
}
