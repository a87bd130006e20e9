import type { Audit, AuditCounts } from '../../lib/audit/audit-site.ts';
import type { Comparison, Earlier } from '../../lib/audit/compare.ts';
import { FINDING_KINDS, type Finding, SEVERITIES, type Severity } from '../../lib/audit/finding.ts';
import type { Refusal } from '../../lib/model/refusal.ts';
import { groupDigits } from '../../lib/units/format-quantity.ts';
import { findingSentence, findingWithAdvice } from '../../lib/words/finding.ts';
import { findingTitle, severityMeaning, severityWord } from '../../lib/words/finding-kind.ts';
import { counted, instantWords } from '../../lib/words/plain-words.ts';
import { refusalSentence, refusalsAdvice } from '../../lib/words/refusal.ts';
import { printable } from './question-lines.ts';

const MOST_OF_A_KIND = 3;
const MOST_SENTENCES = 15;

/** One site for people: what it holds, who can take it down, findings by severity and kind, the worst in sentences. */
export function auditReport(
  file: string,
  site: string,
  audit: Audit,
  since: Comparison<Earlier> | null,
): string {
  const { counts, findings, asOf } = audit;
  const when = asOf === null ? 'no time given' : `judged at ${instantWords(asOf)}`;
  const worst = worstOf(findings);
  const left = findings.length - worst.length;
  return text([
    `${file}: ${site}`,
    `  ${amount(counts.locations, 'location')}, ${amount(counts.trucks, 'truck')}, ${amount(counts.storedLoads, 'stored load')}; ${when}`,
    `  ${takeDownLine(counts)}`,
    `  ${findingsLine(counts.findings)}`,
    ...(since === null ? [] : sinceLines(since)),
    ...kindLines(findings),
    ...(worst.length === 0 ? [] : ['']),
    ...worst.map((finding) => `  ${severityWord(finding.severity)}: ${findingWithAdvice(finding, 'metric')}`),
    ...(left > 0 ? [`  ${amount(left, 'more finding')}: --json lists every one.`] : []),
  ]);
}

/** What has changed since an earlier audit: how many, then what is new and what is worse. */
function sinceLines({ fresh, gone, worse, better, unchanged }: Comparison<Earlier>): string[] {
  const changed = [
    ...fresh.map((finding) => ['New', finding] as const),
    ...worse.map(({ now }) => ['Worse', now] as const),
  ];
  const left = changed.length - MOST_SENTENCES;
  return [
    `  Since the earlier audit: ${fresh.length} new, ${worse.length} worse, ${better.length} better, ${gone.length} gone, ${unchanged.length} as before`,
    ...changed
      .slice(0, MOST_SENTENCES)
      .map(([word, finding]) => `    ${word}: ${findingSentence(finding, 'metric')}`),
    ...(left > 0 ? [`    ${amount(left, 'more change')}: --json lists every one.`] : []),
  ];
}

/** A file that could not be used, with every reason. */
export function refusedReport(file: string, refusals: readonly Refusal[]): string {
  return text([
    `${file}: not audited`,
    ...refusals.map((refusal) => `  ${refusalSentence(refusal)}`),
    `  ${refusalsAdvice(refusals.length)}`,
  ]);
}

/** All files together. */
export function totalsReport(all: readonly AuditCounts[], refused: number): string {
  const findings: Record<Severity, number> = { stop: 0, plan: 0, note: 0 };
  const sum = {
    locations: 0,
    trucks: 0,
    storedLoads: 0,
    takeDown: { none: 0, one: 0, more: 0, unweighed: 0 },
  };
  for (const counts of all) {
    sum.locations += counts.locations;
    sum.trucks += counts.trucks;
    sum.storedLoads += counts.storedLoads;
    for (const key of ['none', 'one', 'more', 'unweighed'] as const)
      sum.takeDown[key] += counts.takeDown[key];
    for (const severity of SEVERITIES) findings[severity] += counts.findings[severity];
  }
  return text([
    `All files: ${amount(all.length, 'site')} audited${refused === 0 ? '' : `, ${amount(refused, 'file')} not`}`,
    `  ${amount(sum.locations, 'location')}, ${amount(sum.trucks, 'truck')}, ${amount(sum.storedLoads, 'stored load')}`,
    `  ${takeDownLine(sum)}`,
    `  ${findingsLine(findings)}`,
  ]);
}

/** What the severities mean, once, at the end. */
export function severityLines(): string[] {
  return SEVERITIES.map((severity) => `${severityWord(severity)}: ${severityMeaning(severity)}`);
}

function takeDownLine({ takeDown }: Pick<AuditCounts, 'takeDown'>): string {
  const { none, one, more, unweighed } = takeDown;
  const parts = [
    `${groupDigits(more)} by two trucks or more`,
    `${groupDigits(one)} by one alone`,
    `${groupDigits(none)} by none`,
    ...(unweighed === 0 ? [] : [`${groupDigits(unweighed)} must be weighed first`]),
  ];
  return `Stored loads that can be taken down: ${parts.join(', ')}`;
}

function findingsLine(findings: Record<Severity, number>): string {
  const parts = SEVERITIES.map((severity) => `${groupDigits(findings[severity])} ${severity}`);
  return `Findings: ${parts.join(', ')}`;
}

function kindLines(findings: readonly Finding[]): string[] {
  return SEVERITIES.flatMap((severity) =>
    FINDING_KINDS.flatMap((kind) => {
      const count = findings.filter(
        (finding) => finding.severity === severity && finding.kind === kind,
      ).length;
      return count === 0
        ? []
        : [`    ${severityWord(severity)} ${groupDigits(count).padStart(7)}  ${findingTitle(kind)}`];
    }),
  );
}

/** The gravest, a few of each kind so that one kind does not hide the others. */
function worstOf(findings: readonly Finding[]): Finding[] {
  const shown = new Map<string, number>();
  const worst: Finding[] = [];
  for (const finding of findings) {
    if (worst.length === MOST_SENTENCES) break;
    const count = shown.get(finding.kind) ?? 0;
    if (count === MOST_OF_A_KIND) continue;
    shown.set(finding.kind, count + 1);
    worst.push(finding);
  }
  return worst;
}

function amount(count: number, noun: string): string {
  return count === 0 ? counted(0, noun) : `${groupDigits(count)} ${noun}${count === 1 ? '' : 's'}`;
}

function text(lines: readonly string[]): string {
  return lines.map((line) => `${printable(line)}\n`).join('');
}
