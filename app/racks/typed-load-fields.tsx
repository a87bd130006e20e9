'use client';

import { useEffect, useId, useState } from 'react';
import type { AskedLoad } from '@/app/_parts/lift-query.ts';
import { QuantityField } from '@/app/_parts/quantity-field.tsx';
import type { PalletType } from '@/lib/model/load.ts';
import { MASS_BASES } from '@/lib/model/policy.ts';
import styles from './question-form.module.css';

type Typed = Extract<AskedLoad, { kind: 'typed' }>;
type Draft = Omit<Typed, 'depthMm' | 'widthMm' | 'heightMm'> & {
  depthMm: number | null;
  widthMm: number | null;
  heightMm: number | null;
};

/** How long typing must rest before it is asked. */
const REST_MS = 250;

/** A load described by hand. It is asked once its three sizes can be read; the mass may stay open. */
export function TypedLoadFields({
  load,
  palletTypes,
  onChange,
}: {
  load: Typed;
  palletTypes: readonly PalletType[];
  onChange: (load: Typed) => void;
}) {
  const ids = useId();
  const [draft, setDraft] = useState<Draft>(load);
  useEffect(() => {
    const { depthMm, widthMm, heightMm } = draft;
    if (depthMm === null || widthMm === null || heightMm === null) return;
    const typed: Typed = { ...draft, depthMm, widthMm, heightMm };
    if (sameLoad(typed, load)) return;
    const rest = setTimeout(() => onChange(typed), REST_MS);
    return () => clearTimeout(rest);
  }, [draft, load, onChange]);
  const set = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const unread = draft.depthMm === null || draft.widthMm === null || draft.heightMm === null;
  return (
    <div className={styles.typed}>
      <QuantityField
        label="Gross mass"
        of="mass"
        value={draft.massKg}
        onChange={(massKg) => set({ massKg })}
        required={false}
      />
      <div className="field">
        <label htmlFor={`${ids}-basis`}>Mass is</label>
        <select
          id={`${ids}-basis`}
          value={draft.basis}
          onChange={({ target }) => set({ basis: target.value as Typed['basis'] })}
        >
          {MASS_BASES.map((basis) => (
            <option key={basis} value={basis}>
              {basis}
            </option>
          ))}
        </select>
      </div>
      <QuantityField
        label="Depth along forks"
        of="length"
        value={draft.depthMm}
        onChange={(depthMm) => set({ depthMm })}
      />
      <QuantityField
        label="Width"
        of="length"
        value={draft.widthMm}
        onChange={(widthMm) => set({ widthMm })}
      />
      <QuantityField
        label="Height"
        of="length"
        value={draft.heightMm}
        onChange={(heightMm) => set({ heightMm })}
      />
      <div className="field">
        <label htmlFor={`${ids}-pallet`}>Pallet</label>
        <select
          id={`${ids}-pallet`}
          value={draft.palletType ?? ''}
          onChange={({ target }) => set({ palletType: target.value || null })}
        >
          <option value="">none named</option>
          {palletTypes.map(({ id }) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </div>
      {unread ? (
        <p className={`fault ${styles.wide}`} role="status">
          The answers shown are still those for the last load that could be read.
        </p>
      ) : null}
    </div>
  );
}

function sameLoad(one: Typed, other: Typed): boolean {
  return (Object.keys(one) as (keyof Typed)[]).every((key) => one[key] === other[key]);
}
