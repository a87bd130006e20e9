import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { PlainField } from '@/app/_parts/plain-field.tsx';
import { typedAgain, typedText } from '@/app/_parts/typed-measures.ts';
import { PICK_PARAMETERS, type PickFace } from '@/app/hand-pick/hand-pick-query.ts';
import { COUPLINGS } from '@/lib/model/load.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import styles from './hand-pick.module.css';

/** The question as a plain form: it works before any script has run. What is left empty is what the load states. */
export function HandPickForm({
  raw,
  face,
  units,
}: {
  raw: RawQuery;
  face: PickFace | null;
  units: DisplayUnits;
}) {
  const typed = (name: string) => typedText(raw, name) ?? '';
  const stated = (field: keyof PickFace['pick']) => (face === null ? '' : shown(face, field, units));
  return (
    <form method="get" action="/hand-pick" className={`sheet ${styles.form}`} aria-labelledby="ask-heading">
      <h2 id="ask-heading">{face === null ? 'Ask about a pick' : 'Ask differently'}</h2>
      <p className="soft">
        Name a location, and what stands there is read. Fill in a field to try another value; leave it empty
        for what the load states. Lengths and masses in {units === 'metric' ? 'mm and kg' : 'in and lb'}, or
        with a unit of their own.
      </p>
      <input type="hidden" name="units" value={units} />
      <div className={styles.fields}>
        <PlainField name="location" label="Location" value={typed('location')} />
        <PlainField name="load" label="Load, if another than stands there" value={typed('load')} />
        <PlainField
          name="beam-top"
          label="Height the pallet stands on, without a location"
          value={typedAgain(raw, 'beam-top', 'length')}
        />
        {PICK_PARAMETERS.map(({ name, field, label, of }) =>
          of === 'word' ? (
            <div key={name} className="field">
              <label htmlFor={`field-${name}`}>{label}</label>
              <select id={`field-${name}`} name={name} defaultValue={typed(name)}>
                <option value="">
                  {face === null ? 'as the load states' : `as stated: ${stated(field)}`}
                </option>
                {COUPLINGS.map((coupling) => (
                  <option key={coupling} value={coupling}>
                    {coupling}
                  </option>
                ))}
              </select>
            </div>
          ) : (
            <PlainField
              key={name}
              name={name}
              label={label}
              value={typedAgain(raw, name, of)}
              placeholder={stated(field)}
            />
          ),
        )}
        <PlainField
          name="minutes"
          label="Minutes of lifting in 15, where it is not without a break"
          value={typed('minutes')}
        />
        <PlainField
          name="also"
          label="Other pick faces of the same shift (locations, comma between)"
          value={typed('also')}
        />
      </div>
      <button type="submit" className="button-main">
        Work it out
      </button>
    </form>
  );
}

/** A stated value in the shown units, written so that the form reads it back. */
function shown({ pick }: PickFace, field: keyof PickFace['pick'], units: DisplayUnits): string {
  const value = pick[field];
  if (field === 'massKg') return formatMass(pick.massKg, units, 'up');
  if (field === 'horizontalMm' || field === 'gripHeightMm' || field === 'destinationHeightMm') {
    return formatLength(pick[field], units, 'up');
  }
  return String(value);
}
