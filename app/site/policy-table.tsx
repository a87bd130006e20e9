import type { ReactNode } from 'react';
import { type Column, DataTable, type Row } from '@/app/_parts/data-table.tsx';
import { POLICY_FACTS, type PolicyFact } from '@/app/site/policy-facts.ts';
import styles from '@/app/site/site.module.css';
import { DEFAULT_POLICY, type Policy, policyInForce, type SitePolicy } from '@/lib/model/policy.ts';
import type { PolicyValue } from '@/lib/store/rows/policy.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

const COLUMNS: readonly Column[] = [
  { id: 'label', label: 'Policy', kind: 'words' },
  { id: 'value', label: 'In force', kind: 'words' },
  { id: 'default', label: 'Default', kind: 'words' },
  { id: 'source', label: 'Source of the default', kind: 'words' },
  { id: 'changed', label: 'Set by the site', kind: 'words' },
];

/** Every policy value in force, beside its default, the default's source, and who set it when. */
export function PolicyTable({
  own,
  authors,
  units,
  children,
}: {
  own: SitePolicy;
  authors: readonly PolicyValue[];
  units: DisplayUnits;
  /** The way to change it. */
  children: ReactNode;
}) {
  const policy = policyInForce(own);
  const authorOf = new Map(authors.map((author) => [author.key, author]));
  const keys = Object.keys(POLICY_FACTS) as (keyof Policy)[];
  return (
    <section className="stack" aria-labelledby="policy-heading">
      <h2 id="policy-heading">Policy in force</h2>
      <p className="soft">Nothing here can raise a plate or a notice.</p>
      {children}
      <DataTable
        caption="Policy in force"
        columns={COLUMNS}
        rows={keys.map((key) => rowOf(key, policy, authorOf.get(key), units))}
      />
    </section>
  );
}

function rowOf<Key extends keyof Policy>(
  key: Key,
  policy: Policy,
  author: PolicyValue | undefined,
  units: DisplayUnits,
): Row {
  const fact: PolicyFact<Key> = POLICY_FACTS[key];
  const value = fact.show(policy[key], units);
  const usual = fact.show(DEFAULT_POLICY[key], units);
  const changed = author === undefined ? '' : `${author.changedBy}, ${author.changedAt.slice(0, 10)}`;
  return {
    id: key,
    find: `${fact.label} ${value}`,
    cells: {
      label: { show: fact.label, sort: fact.label },
      value: {
        show: value === usual ? value : <strong className={styles.own}>{value}</strong>,
        sort: value,
      },
      default: { show: value === usual ? 'the same' : usual, sort: usual },
      source: { show: fact.source, sort: fact.source },
      changed: { show: changed || 'no', sort: changed === '' ? null : changed },
    },
  };
}
