'use client';

import { useState } from 'react';
import { FindingItem } from '@/app/findings/finding-item.tsx';
import type { findingLinks } from '@/app/findings/finding-links.ts';
import type { FindingGroup } from '@/app/findings/group-findings.ts';
import { SeverityMark } from '@/app/findings/severity-mark.tsx';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { findingTitle } from '@/lib/words/finding-kind.ts';
import styles from './findings.module.css';

const SHOWN = 20;

/** The findings of one kind: the first of them, and the rest when asked for or when all goes to paper. */
export function FindingGroupPart({
  group,
  whole,
  on,
}: {
  group: FindingGroup;
  whole: boolean;
  on: Parameters<typeof findingLinks>[2];
}) {
  const [isAll, setAll] = useState(false);
  const { kind, things } = group;
  const shown = isAll || whole ? things : things.slice(0, SHOWN);
  const heading = `kind-${kind}`;
  return (
    <section className={`sheet ${styles.group}`} aria-labelledby={heading}>
      <h2 id={heading}>
        {findingTitle(kind)} <span className="soft">{groupDigits(things.length)}</span>{' '}
        <SeverityMark severity={group.severity} />
      </h2>
      <ul>
        {shown.map((thing) => (
          <FindingItem key={thing.finding.id} thing={thing} on={on} />
        ))}
      </ul>
      {shown.length < things.length ? (
        <button type="button" onClick={() => setAll(true)}>
          Show all {groupDigits(things.length)}
        </button>
      ) : null}
    </section>
  );
}
