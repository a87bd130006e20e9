import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { PlainField } from '@/app/_parts/plain-field.tsx';
import { typedAgain, typedText } from '@/app/_parts/typed-measures.ts';
import { DAMAGE_KINDS } from '@/lib/rack/damage-class.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { damageKindWords } from '@/lib/words/rack-advice.ts';
import styles from './rack-advice.module.css';

/** The questions as one plain form: a bay, a beam's stiffness, a load off the middle, a measured bend. */
export function RackForm({ raw, units }: { raw: RawQuery; units: DisplayUnits }) {
  const typed = (name: string) => typedText(raw, name) ?? '';
  return (
    <form method="get" action="/rack-advice" className={`sheet ${styles.form}`} aria-labelledby="ask-heading">
      <h2 id="ask-heading">Ask</h2>
      <p className="soft">
        Lengths and masses in {units === 'metric' ? 'mm and kg' : 'in and lb'}, or with a unit of their own.
      </p>
      <input type="hidden" name="units" value={units} />
      <div className={styles.fields}>
        <PlainField name="bay" label="Bay" value={typed('bay')} />
        <PlainField
          name="inertia"
          label="Stiffness of one beam, I in cm⁴ (supplier's table)"
          value={typed('inertia')}
        />
        <PlainField name="mass" label="Mass of a load" value={typedAgain(raw, 'mass', 'mass')} />
        <PlainField
          name="offset"
          label="Its centre off the middle between the beams"
          value={typedAgain(raw, 'offset', 'length')}
        />
        <PlainField
          name="plate-width"
          label="Base plate, width"
          value={typedAgain(raw, 'plate-width', 'length')}
        />
        <PlainField
          name="plate-depth"
          label="Base plate, depth"
          value={typedAgain(raw, 'plate-depth', 'length')}
        />
        <div className="field">
          <label htmlFor="field-kind">What is bent</label>
          <select id="field-kind" name="kind" defaultValue={typed('kind') || 'upright-cross-aisle'}>
            {DAMAGE_KINDS.map((kind) => (
              <option key={kind} value={kind}>
                {damageKindWords(kind)}
              </option>
            ))}
          </select>
        </div>
        <PlainField
          name="bow"
          label="Gap under a 1000 mm straight edge laid on the hollow side"
          value={typedAgain(raw, 'bow', 'length')}
        />
        <PlainField
          name="length"
          label="Length of the bend, if shorter than 1000 mm"
          value={typedAgain(raw, 'length', 'length')}
        />
      </div>
      <button type="submit" className="button-main">
        Work it out
      </button>
    </form>
  );
}
