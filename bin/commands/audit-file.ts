import { readFile } from 'node:fs/promises';
import type { Reference } from '../../lib/audit/audit-case.ts';
import { type AuditCounts, auditSite } from '../../lib/audit/audit-site.ts';
import { type Comparison, compareAudits, type Earlier } from '../../lib/audit/compare.ts';
import type { Refusal } from '../../lib/model/refusal.ts';
import { readSiteText } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { auditReport, refusedReport } from './audit-report.ts';

/** One site file to audit, as plain data that may cross to another thread. `text`: already read (standard input). */
export type AuditTask = {
  file: string;
  text: string | null;
  asOf: string | null;
  reference: Reference;
  as: 'json' | 'report';
  /** Findings of an earlier audit to hold this one against; null: none. */
  before: readonly Earlier[] | null;
};

/** What is written for one file, whole, and what the end of the command needs to know of it. */
export type AuditOutcome = { file: string; written: string } & (
  | { ok: true; counts: AuditCounts }
  | { ok: false; refusals: number }
);

/** Reads one site file, audits it and writes it up. Never throws: a fault of the file or of the audit is an outcome. */
export async function auditFile(task: AuditTask): Promise<AuditOutcome> {
  try {
    const reading = readSiteText(task.text ?? (await textOf(task.file)));
    return reading.ok ? audited(task, reading.site) : refused(task, reading.refusals);
  } catch (error) {
    if (error instanceof UnreadableFile) return refused(task, [error.refusal]);
    return stopped(task, error as Error);
  }
}

function audited(task: AuditTask, site: Parameters<typeof indexSite>[0]): AuditOutcome {
  const { file, asOf, reference } = task;
  const audit = auditSite(indexSite(site), { asOf, reference });
  const { counts, findings } = audit;
  const since = task.before === null ? null : compareAudits(task.before, findings);
  const named = { file, ok: true, site: site.site.name } as const;
  const written =
    task.as === 'json'
      ? JSON.stringify({ ...named, asOf, reference, counts, findings, ...changes(since) })
      : auditReport(file, site.site.name, audit, since);
  return { file, ok: true, counts, written };
}

/** The comparison by ids: the findings themselves stand beside it, or in the earlier output. */
function changes(since: Comparison<Earlier> | null) {
  if (since === null) return {};
  const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
  const paired = (list: readonly { now: { id: string } }[]) => list.map(({ now }) => now.id);
  const { fresh, gone, worse, better, unchanged } = since;
  return {
    since: {
      fresh: ids(fresh),
      gone: ids(gone),
      worse: paired(worse),
      better: paired(better),
      unchanged: unchanged.length,
    },
  };
}

function refused(task: AuditTask, refusals: readonly Refusal[]): AuditOutcome {
  const { file } = task;
  const written =
    task.as === 'json'
      ? JSON.stringify({ file, ok: false, site: null, counts: null, refusals })
      : refusedReport(file, refusals);
  return { file, ok: false, refusals: refusals.length, written };
}

/** The outcome of a file on which the audit itself broke down: a bug of ours, told where it happened. */
export function stopped(task: AuditTask, error: Error): AuditOutcome {
  process.stderr.write(`${task.file}: ${error.stack ?? error.message}\n`);
  const rule = 'a site that the audit can finish';
  return refused(task, [
    { path: '$', came: `a site on which it stopped (${error.message})`, expected: { is: 'text', rule } },
  ]);
}

class UnreadableFile extends Error {
  readonly refusal: Refusal;

  constructor(reason: string) {
    super(reason);
    const expected = { is: 'text', rule: 'a file that can be read' } as const;
    this.refusal = { path: '$', came: `nothing (${reason})`, expected };
  }
}

async function textOf(path: string): Promise<string> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    throw new UnreadableFile((error as Error).message);
  }
}
