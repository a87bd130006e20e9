'use client';

import Link from 'next/link';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { findingLinks } from '@/app/findings/finding-links.ts';
import type { FoundThing } from '@/app/findings/group-findings.ts';
import { SeverityMark } from '@/app/findings/severity-mark.tsx';
import { findingSentence, findingSourceWords } from '@/lib/words/finding.ts';
import { adviceSentence } from '@/lib/words/finding-advice.ts';
import styles from './findings.module.css';

/** One finding: what was found with its figures, what to do, what it rests on, and where to look. */
export function FindingItem({
  thing: { finding, where },
  on,
}: {
  thing: FoundThing;
  on: Parameters<typeof findingLinks>[2];
}) {
  const units = useUnits();
  return (
    <li className={styles.item}>
      <SeverityMark severity={finding.severity} />
      <div>
        <p>
          <strong>{findingSentence(finding, units)}</strong>
        </p>
        <p>{adviceSentence(finding.advice)}</p>
        <p className={`${styles.links} no-print`}>
          {findingLinks(finding, where, on).map(({ href, label }) => (
            <Link key={href} href={href} prefetch={false}>
              {label}
            </Link>
          ))}
        </p>
        <p className="soft dense">{findingSourceWords(finding.source)}</p>
      </div>
    </li>
  );
}
