'use client';

import { useEffect, useMemo, useState } from 'react';
import { flushSync } from 'react-dom';
import { downloadText } from '@/app/_parts/download-text.ts';
import { PrintButton } from '@/app/_parts/print-button.tsx';
import { StaleChecksStrip } from '@/app/_parts/stale-checks-strip.tsx';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { WorkStrip, type WorkWords } from '@/app/_parts/work-strip.tsx';
import { FindingGroupPart } from '@/app/findings/finding-group.tsx';
import { findingsCsv } from '@/app/findings/findings-csv.ts';
import { FindingsFilter } from '@/app/findings/findings-filter.tsx';
import type { FindingsQuery } from '@/app/findings/findings-query.ts';
import { countSeverities, findWords, groupFindings, keepFindings } from '@/app/findings/group-findings.ts';
import { SeverityCounts } from '@/app/findings/severity-counts.tsx';
import { useAudit } from '@/app/findings/use-audit.ts';
import { whereaboutsIn } from '@/app/findings/where-found.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { auditedWords } from '@/lib/words/audit.ts';
import styles from './findings.module.css';

const AUDITING: WorkWords = {
  share: 'Share of the audit done',
  busy: 'Looking through the site',
  stopped: 'Stopped. What is shown may not be what was asked.',
  failed: 'The findings did not come',
};

/** Counts by severity, what narrows the list, and the findings by kind, the gravest first. */
export function FindingsDesk({
  index,
  query,
  onChange,
}: {
  index: SiteIndex;
  query: FindingsQuery;
  onChange: (part: Partial<FindingsQuery>) => void;
}) {
  const units = useUnits();
  const [now, setNow] = useState(() => new Date().toISOString());
  const { time } = query;
  const asOf = time.kind === 'now' ? now : time.kind === 'at' ? time.instant : null;
  const run = useAudit(index, asOf);
  const { audit } = run;
  const things = useMemo(() => {
    const whereabouts = whereaboutsIn(index);
    return (audit?.findings ?? []).map((finding) => {
      const where = whereabouts(finding);
      return { finding, where, words: findWords(finding, where, units) };
    });
  }, [index, audit, units]);
  const kept = useMemo(() => keepFindings(things, query, index), [things, query, index]);
  const groups = useMemo(() => groupFindings(kept, query.order), [kept, query.order]);
  const counts = useMemo(
    () =>
      audit === null ? null : countSeverities(keepFindings(things, { ...query, severity: null }, index)),
    [audit, things, query, index],
  );
  const isPrinting = usePrinting();
  return (
    <>
      <StaleChecksStrip index={index} time={time} now={now} onTime={(asked) => onChange({ time: asked })} />
      <WorkStrip run={run} words={AUDITING} className={styles.strip}>
        <span className="soft">{audit === null ? '' : auditedWords(audit, units)}</span>
        {time.kind === 'now' ? (
          <button type="button" onClick={() => setNow(new Date().toISOString())}>
            Again, as of now
          </button>
        ) : null}
      </WorkStrip>
      {audit === null ? null : <p className={styles.printed}>{auditedWords(audit, units)}</p>}
      <SeverityCounts
        counts={counts}
        chosen={query.severity}
        onChoose={(severity) => onChange({ severity })}
      />
      <FindingsFilter index={index} kinds={audit?.counts.kinds ?? {}} query={query} onChange={onChange} />
      {audit === null ? null : (
        <div className={styles.listed}>
          <p aria-live="polite">
            {kept.length === things.length
              ? `${groupDigits(things.length)} in all`
              : `${groupDigits(kept.length)} of ${groupDigits(things.length)}`}
          </p>
          <div className="row no-print">
            <button
              type="button"
              onClick={() =>
                downloadText(
                  'findings.csv',
                  'text/csv;charset=utf-8',
                  findingsCsv(groups.flatMap((group) => group.things)),
                )
              }
            >
              Download CSV
            </button>
            <PrintButton />
          </div>
        </div>
      )}
      {groups.map((group) => (
        <FindingGroupPart
          key={group.kind}
          group={group}
          whole={isPrinting}
          on={{ time, reference: audit!.reference }}
        />
      ))}
      {audit !== null && things.length === 0 ? (
        <p className="sheet">Nothing was found that a person should act on.</p>
      ) : null}
      {things.length > 0 && kept.length === 0 ? (
        <p className="sheet">No finding matches. Ask for less at once.</p>
      ) : null}
    </>
  );
}

/** True while the page is being printed: everything listed is then on paper, not only what is unfolded. */
function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
    };
  }, []);
  return isPrinting;
}
