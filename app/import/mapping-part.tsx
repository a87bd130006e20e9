'use client';

import { useState } from 'react';
import { sourceOf, unusedColumns } from '@/app/import/edit-mapping.ts';
import { FactRow } from '@/app/import/fact-row.tsx';
import type { ReadyFile } from '@/app/import/import-file.ts';
import { factLabel, LIST_WORDS } from '@/app/import/list-words.ts';
import { neededFacts } from '@/lib/import/guess-mapping.ts';
import { LIST_FACTS } from '@/lib/import/lists.ts';
import type { Mapping } from '@/lib/import/mapping.ts';
import styles from './import.module.css';

/** Which column gives which fact, each re-read as it is changed. Remount for another list or another file. */
export function MappingPart({ file, onMapping }: { file: ReadyFile; onMapping: (mapping: Mapping) => void }) {
  const { mapping, opened, guesses, isKeptUsed } = file.state;
  const facts = LIST_FACTS[mapping.list];
  const needed = new Set(neededFacts(mapping));
  // Decided once: a row must not move away under the hand that gives it a column.
  const [first] = useState(
    () => new Set(facts.filter(({ fact }) => needed.has(fact) || sourceOf(mapping, fact).from !== 'nothing')),
  );
  const rest = facts.filter((fact) => !first.has(fact));
  const unused = unusedColumns(mapping, opened.header);
  const row = (fact: (typeof facts)[number]) => (
    <FactRow
      key={fact.fact}
      fact={fact}
      mapping={mapping}
      opened={opened}
      fileKey={file.key}
      isNeeded={needed.has(fact.fact)}
      guess={isKeptUsed ? null : guesses[mapping.list]}
      onMapping={onMapping}
    />
  );
  return (
    <section className="stack" aria-labelledby={`mapping-${file.key}`}>
      <h3 id={`mapping-${file.key}`}>Which column gives which fact</h3>
      {needed.size === 0 ? null : (
        <p className={styles.needed} role="status">
          <strong>Not given yet: </strong>
          {[...needed].map((fact) => factLabel(mapping.list, fact)).join(', ')}. A new entry needs{' '}
          {needed.size === 1 ? 'it' : 'them'}: choose a column, or one value for every row. Rows about what
          stands in {LIST_WORDS[mapping.list].toLowerCase()} already can do without.
        </p>
      )}
      <ul className={styles.facts}>{[...first].map(row)}</ul>
      {rest.length === 0 ? null : (
        <details>
          <summary>
            {rest.length} more {rest.length === 1 ? 'fact' : 'facts'} that the file could give
          </summary>
          <ul className={styles.facts}>{rest.map(row)}</ul>
        </details>
      )}
      {unused.length === 0 ? null : (
        <p className="soft">
          Passed over, since no fact comes from {unused.length === 1 ? 'it' : 'them'}: {unused.join(', ')}.
        </p>
      )}
    </section>
  );
}
