import type { Severity } from '@/lib/audit/finding.ts';
import { severityWord } from '@/lib/words/finding-kind.ts';
import styles from './findings.module.css';

/** The severity as a word in a frame that tells it without colour: full, heavy, thin. */
export function SeverityMark({ severity }: { severity: Severity }) {
  return <span className={`${styles.mark} ${styles[severity]}`}>{severityWord(severity)}</span>;
}
