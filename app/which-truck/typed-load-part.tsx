import { lengthUnit, massUnit } from '@/app/_parts/chart-scale.ts';
import { BASIS_WORDS } from '@/app/_parts/mass-arithmetic.tsx';
import { fieldText } from '@/app/which-truck/form-address.ts';
import { Field, type FormState, faultLink } from '@/app/which-truck/form-field.tsx';
import type { PalletType } from '@/lib/model/load.ts';
import { MASS_BASES } from '@/lib/model/policy.ts';
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

/** A load that the site does not know, typed in; folded away until it is wanted. */
export function TypedLoadPart({
  form,
  palletTypes,
  units,
}: {
  form: FormState;
  palletTypes: readonly PalletType[];
  units: DisplayUnits;
}) {
  const typedToo = form.given('load') !== '' && QUANTITIES.some(({ key }) => form.given(key) !== '');
  return (
    <details className={styles.part} open={form.any(TYPED_FIELDS)}>
      <summary>Or type the load in</summary>
      {typedToo ? <p className="fault">A load is named above: it counts, not what is typed here.</p> : null}
      <div className={styles.typed}>
        {QUANTITIES.map(({ key, label }) => (
          <Field
            key={key}
            id={key}
            label={label}
            unit={key === 'mass' ? massUnit(units) : lengthUnit(units)}
            fault={form.fault(key)}
          >
            <input
              id={key}
              name={key}
              inputMode="decimal"
              autoComplete="off"
              defaultValue={fieldText(form.raw, key, units)}
              {...faultLink(key, form.fault(key))}
            />
          </Field>
        ))}
        <Field id="basis" label="The mass is" fault={form.fault('basis')}>
          <select
            id="basis"
            name="basis"
            defaultValue={form.given('basis') === 'declared' ? '' : form.given('basis')}
          >
            <option value="">{BASIS_WORDS.declared}</option>
            {MASS_BASES.filter((basis) => basis !== 'declared').map((basis) => (
              <option key={basis} value={basis}>
                {BASIS_WORDS[basis]}
              </option>
            ))}
          </select>
        </Field>
        <Field id="pallet" label="Pallet" fault={form.fault('pallet')}>
          <select id="pallet" name="pallet" defaultValue={form.given('pallet')}>
            <option value="">none named</option>
            {palletTypes.map(({ id }) => (
              <option key={id} value={id}>
                {id}
              </option>
            ))}
          </select>
        </Field>
      </div>
    </details>
  );
}
