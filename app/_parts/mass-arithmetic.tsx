import { assessedMassKg, grossMass, type Load, type PalletType } from '@/lib/model/load.ts';
import type { MassBasis, Policy } from '@/lib/model/policy.ts';
import { type DisplayUnits, formatMass } from '@/lib/units/format-quantity.ts';
import styles from './mass-arithmetic.module.css';

export const BASIS_WORDS: Record<MassBasis, string> = {
  weighed: 'weighed',
  calculated: 'calculated from its items',
  declared: 'declared, not weighed',
};

/** How the mass that a lift is judged by comes about: items and pallet, or the gross mass stated; then the allowance. */
export function MassArithmetic({
  load,
  pallet,
  policy,
  units,
}: {
  load: Load;
  pallet: PalletType | null;
  policy: Policy;
  units: DisplayUnits;
}) {
  const gross = grossMass(load, pallet);
  const assessedKg = assessedMassKg(load, pallet, policy);
  if (gross === null || assessedKg === null) {
    return (
      <p className={styles.unknown}>
        The mass of this load is not known: neither weighed nor declared, and no items listed. Weigh it.
      </p>
    );
  }
  const fromItems = load.grossKg === null;
  const percent = policy.massAllowancePercent[gross.basis];
  const mass = (kg: number) => formatMass(kg, units, 'up');
  return (
    <table className={styles.sum}>
      <caption className="unseen">How the assessed mass comes about</caption>
      <tbody>
        {fromItems
          ? (load.items ?? []).map((item) => (
              <tr key={item.name}>
                <th scope="row">
                  {item.name}, {item.count} × {mass(item.massKg)}
                </th>
                <td>{mass(item.massKg * item.count)}</td>
              </tr>
            ))
          : null}
        {fromItems && pallet !== null ? (
          <tr>
            <th scope="row">Pallet {pallet.id}</th>
            <td>+ {mass(pallet.tareKg)}</td>
          </tr>
        ) : null}
        {fromItems && load.palletType === null ? (
          <tr>
            <th scope="row">No pallet</th>
            <td>+ {mass(0)}</td>
          </tr>
        ) : null}
        <tr className={fromItems ? styles.total : undefined}>
          <th scope="row">Gross, {BASIS_WORDS[gross.basis]}</th>
          <td>{mass(gross.kg)}</td>
        </tr>
        <tr>
          <th scope="row">
            Allowance for a {gross.basis} mass, {percent}
            {'\u202f'}%
          </th>
          <td>+ {mass(assessedKg - gross.kg)}</td>
        </tr>
        <tr className={styles.total}>
          <th scope="row">Assessed: the mass the lift is judged by</th>
          <td>{mass(assessedKg)}</td>
        </tr>
      </tbody>
    </table>
  );
}
