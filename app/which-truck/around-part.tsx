import type { LiftQuery } from '@/app/_parts/lift-query.ts';
import { Field, type FormState, faultLink } from '@/app/which-truck/form-field.tsx';
import type { Operator } from '@/lib/model/truck.ts';
import styles from './which-truck.module.css';

const AROUND_FIELDS = ['asOf', 'operator', 'stock', 'from'];

/** When the lift is judged, who drives, and whether what stands in the racks counts. */
export function AroundPart({
  form,
  query,
  operators,
}: {
  form: FormState;
  query: LiftQuery;
  operators: readonly Operator[];
}) {
  return (
    <details className={styles.part} open={form.any(AROUND_FIELDS)}>
      <summary>When, who drives, racks</summary>
      <div className={styles.typed}>
        <Field id="asOf" label="Judged as of, UTC" unit="empty: now" fault={form.fault('asOf')}>
          <input
            id="asOf"
            name="asOf"
            type="datetime-local"
            defaultValue={query.time.kind === 'at' ? dateTimeText(query.time.instant) : ''}
            {...faultLink('asOf', form.fault('asOf'))}
          />
        </Field>
        <Field id="operator" label="Who drives" fault={form.fault('operator')}>
          <select id="operator" name="operator" defaultValue={form.given('operator')}>
            <option value="">nobody named</option>
            {operators.map(({ id, name }) => (
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
        <Field
          id="from"
          label="Comes from"
          unit="where it stands now, if anywhere"
          fault={form.fault('from')}
        >
          <input
            id="from"
            name="from"
            autoComplete="off"
            defaultValue={form.given('from')}
            {...faultLink('from', form.fault('from'))}
          />
        </Field>
      </div>
    </details>
  );
}

function dateTimeText(instant: string): string {
  return instant.length === 10 ? `${instant}T00:00` : instant.slice(0, 16);
}
