import type { Refusal } from '@/lib/model/refusal.ts';
import { expectedWords } from '@/lib/words/refusal.ts';
import styles from './asked-refusals.module.css';

/** What the parameters of an address are called on the screens. */
export const PARAMETER_WORDS: Record<string, string> = {
  location: 'Location',
  truck: 'Truck',
  load: 'Load',
  mass: 'Mass',
  basis: 'Basis of the mass',
  depth: 'Depth',
  width: 'Width',
  height: 'Height',
  pallet: 'Pallet type',
  operation: 'Operation',
  asOf: 'Time',
  stock: 'Stock',
  from: 'Comes from',
  operator: 'Operator',
  find: 'Find',
  standing: 'Stands',
  sort: 'Order',
  direction: 'Direction',
  page: 'Page',
};

/** The parameter that a refusal of an address is about. */
export function refusedParameter(refusal: Refusal): string {
  return refusal.path.replace(/^\$\.?/, '');
}

/** What came and what was expected, to stand at its field. */
export function refusalAtField({ came, expected }: Refusal): string {
  return `${came} came, ${expectedWords(expected)} was expected.`;
}

/** What kept a question from being asked, parameter by parameter. */
export function AskedRefusals({ title, refused }: { title: string; refused: readonly Refusal[] }) {
  if (refused.length === 0) return null;
  return (
    <div className={styles.refused} role="alert">
      <strong>{title}</strong>
      <ul>
        {refused.map((refusal) => (
          <li key={`${refusal.path} ${refusal.came}`}>
            <strong>{PARAMETER_WORDS[refusedParameter(refusal)] ?? refusedParameter(refusal)}:</strong>{' '}
            {refusalAtField(refusal)}
          </li>
        ))}
      </ul>
    </div>
  );
}
