import { chooseUnits } from '@/app/_parts/units-action.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import styles from './units-switch.module.css';

const CHOICES: readonly { units: DisplayUnits; label: string; name: string }[] = [
  { units: 'metric', label: 'kg · mm', name: 'Show kilograms and millimetres' },
  { units: 'lb-in', label: 'lb · in', name: 'Show pounds and inches' },
];

/** Which units are shown. A form, so that it works before any script has run. */
export function UnitsSwitch({ units }: { units: DisplayUnits }) {
  return (
    <form action={chooseUnits} className={styles.switch}>
      {CHOICES.map((choice) => (
        <button
          key={choice.units}
          type="submit"
          name="units"
          value={choice.units}
          aria-pressed={choice.units === units}
          aria-label={choice.name}
        >
          {choice.label}
        </button>
      ))}
    </form>
  );
}
