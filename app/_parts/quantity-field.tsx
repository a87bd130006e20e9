'use client';

import { useId, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { LARGEST_NUMBER } from '@/lib/model/quantities.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import { parseLengthMm, parseMassKg } from '@/lib/units/parse-quantity.ts';

/**
 * A mass or a length typed in the shown units, or with a unit of its own ("1.2 m", "47 in", "2400 lb"). Tells the kg or
 * mm, or null for nothing or for what cannot be read; what cannot be read says so and is never guessed.
 */
export function QuantityField({
  label,
  of,
  value,
  onChange,
  required = true,
}: {
  label: string;
  of: 'mass' | 'length';
  value: number | null;
  onChange: (value: number | null) => void;
  required?: boolean;
}) {
  const units = useUnits();
  const field = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const unit = of === 'mass' ? (units === 'metric' ? 'kg' : 'lb') : units === 'metric' ? 'mm' : 'in';
  const fault = typed === null ? null : faultOf(typed, of, units, required);
  return (
    <div className="field">
      <label htmlFor={field}>
        {label} <span className="soft">{unit}</span>
      </label>
      <input
        id={field}
        inputMode="decimal"
        autoComplete="off"
        value={typed ?? shown(value, of, units)}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `${field}-fault`}
        onChange={(event) => {
          setTyped(event.target.value);
          onChange(read(event.target.value, of, units));
        }}
        onBlur={() => fault === null && setTyped(null)}
      />
      {fault === null ? null : (
        <span id={`${field}-fault`} className="fault">
          {fault}
        </span>
      )}
    </div>
  );
}

function read(text: string, of: 'mass' | 'length', units: DisplayUnits): number | null {
  const value = of === 'mass' ? parseMassKg(text, units) : parseLengthMm(text, units);
  return value !== null && value > 0 && value <= LARGEST_NUMBER ? value : null;
}

function faultOf(text: string, of: 'mass' | 'length', units: DisplayUnits, required: boolean): string | null {
  if (text.trim() === '') return required ? 'Needed' : null;
  if (read(text, of, units) !== null) return null;
  const example = of === 'mass' ? '980, 980 kg or 2160 lb' : '1200, 1.2 m or 47 in';
  return `Not read. Write a number above 0, such as ${example}`;
}

function shown(value: number | null, of: 'mass' | 'length', units: DisplayUnits): string {
  if (value === null) return '';
  const text = of === 'mass' ? formatMass(value, units, 'up') : formatLength(value, units, 'up');
  return text.replace(/\D+$/, ''); // the unit stands in the label
}
