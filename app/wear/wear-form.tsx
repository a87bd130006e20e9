import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { PlainField } from '@/app/_parts/plain-field.tsx';
import { typedAgain, typedText } from '@/app/_parts/typed-measures.ts';
import { RETEST_RULES } from '@/app/wear/wear-query.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { retestRuleWords } from '@/lib/words/wear.ts';
import styles from './wear.module.css';

const FIELDS = [
  {
    title: 'Fork arms',
    fields: [
      ['heel-new', 'Heel thickness when new'],
      ['heel', 'Heel thickness now, thinnest'],
      ['blade', 'Blade length'],
      ['tips', 'One tip higher than the other by'],
      ['bow', 'Largest bow of blade or shank'],
      ['angle', 'Blade to shank, degrees'],
    ],
  },
  {
    title: 'Lift chain',
    fields: [
      ['pitch', 'Pitch'],
      ['pins', 'Pins counted'],
      ['chain', 'Length over these pins, under load'],
    ],
  },
] as const;

/** The measurements as a plain form; what was not measured stays empty. */
export function WearForm({
  raw,
  bladeMm,
  units,
}: {
  raw: RawQuery;
  bladeMm: number | null;
  units: DisplayUnits;
}) {
  const typed = (name: string) => typedText(raw, name) ?? '';
  const blade = bladeMm === null ? undefined : formatLength(bladeMm, units, 'up');
  return (
    <form method="get" action="/wear" className={`sheet ${styles.form}`} aria-labelledby="ask-heading">
      <h2 id="ask-heading">Measured</h2>
      <p className="soft">Lengths in {units === 'metric' ? 'mm' : 'in'}, or with a unit of their own.</p>
      <input type="hidden" name="units" value={units} />
      <div className={styles.fields}>
        <PlainField name="truck" label="Truck" value={typed('truck')} />
      </div>
      {FIELDS.map(({ title, fields }) => (
        <fieldset key={title} className={styles.group}>
          <legend>{title}</legend>
          <div className={styles.fields}>
            {fields.map(([name, label]) => (
              <PlainField
                key={name}
                name={name}
                label={label}
                value={typedAgain(raw, name, name === 'angle' || name === 'pins' ? 'number' : 'length')}
                {...(name === 'blade' && blade !== undefined ? { placeholder: blade } : {})}
              />
            ))}
          </div>
        </fieldset>
      ))}
      <fieldset className={styles.group}>
        <legend>Gas cylinder</legend>
        <div className={styles.fields}>
          <PlainField
            name="stamp"
            label="Last stamp, year and month"
            value={typed('stamp')}
            placeholder="2021-06"
          />
          <div className="field">
            <label htmlFor="field-rule">Stamped under</label>
            <select id="field-rule" name="rule" defaultValue={typed('rule') || 'unknown'}>
              {RETEST_RULES.map((rule) => (
                <option key={rule} value={rule}>
                  {retestRuleWords(rule)}
                </option>
              ))}
            </select>
          </div>
          <PlainField name="dent" label="Depth of a dent" value={typedAgain(raw, 'dent', 'length')} />
          <PlainField
            name="dent-width"
            label="Mean diameter of the dent"
            value={typedAgain(raw, 'dent-width', 'length')}
          />
          <div className="field">
            <label htmlFor="field-weld">The dent touches a weld</label>
            <select id="field-weld" name="weld" defaultValue={typed('weld') === 'yes' ? 'yes' : 'no'}>
              <option value="no">no</option>
              <option value="yes">yes</option>
            </select>
          </div>
        </div>
      </fieldset>
      <button type="submit" className="button-main">
        Hold against the limits
      </button>
    </form>
  );
}
