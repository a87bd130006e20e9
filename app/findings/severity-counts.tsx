import { SeverityMark } from '@/app/findings/severity-mark.tsx';
import { SEVERITIES, type Severity } from '@/lib/audit/finding.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import { severityMeaning } from '@/lib/words/finding-kind.ts';
import styles from './findings.module.css';

/** How many findings of each severity; each is a button that shows these alone, and once more that shows all again. */
export function SeverityCounts({
  counts,
  chosen,
  onChoose,
}: {
  counts: Record<Severity, number> | null;
  chosen: Severity | null;
  onChoose: (severity: Severity | null) => void;
}) {
  return (
    <ul className={styles.counts} aria-label="Findings by severity">
      {SEVERITIES.map((severity) => (
        <li key={severity}>
          <button
            type="button"
            aria-pressed={severity === chosen}
            onClick={() => onChoose(severity === chosen ? null : severity)}
          >
            <SeverityMark severity={severity} />
            <strong>{counts === null ? '·' : groupDigits(counts[severity])}</strong>
            <span>{severityMeaning(severity)}</span>
          </button>
          <p className={styles.printed}>
            <SeverityMark severity={severity} /> {counts === null ? '·' : groupDigits(counts[severity])}
          </p>
        </li>
      ))}
    </ul>
  );
}
