import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import type { AuditQuestion } from '../../lib/audit/audit-case.ts';
import { auditSite } from '../../lib/audit/audit-site.ts';
import type { Earlier } from '../../lib/audit/compare.ts';
import { SEVERITIES } from '../../lib/audit/finding.ts';
import { readSiteText } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { refusalSentence } from '../../lib/words/refusal.ts';
import { CommandFault } from './command-fault.ts';

/** What of an earlier --json output is read: enough to hold its findings against those of today. */
const earlierOutput = z.array(
  z.object({
    file: z.string(),
    findings: z
      .array(
        z.object({
          id: z.string(),
          severity: z.enum(SEVERITIES),
          figures: z.object({ excess: z.number().nullable() }),
        }),
      )
      .optional(), // a file that could not be used had none
  }),
);

/** The earlier findings for each of the files: null where the earlier output does not have it. */
export type EarlierFindings = (file: string) => readonly Earlier[] | null;

/**
 * Reads what --against names: an earlier --json output, whose entries are matched by the name of the file (a single
 * entry goes with a single file whatever its name), or a site file, which is audited now with the same question.
 */
export async function readEarlier(
  path: string,
  files: readonly string[],
  question: AuditQuestion,
): Promise<EarlierFindings> {
  const text = await textOf(path);
  const output = earlierOutput.safeParse(jsonOf(text));
  if (output.success) {
    const entries = output.data;
    if (entries.length === 1 && files.length === 1) return () => entries[0]!.findings ?? null;
    return (file) => entries.find((entry) => entry.file === file)?.findings ?? null;
  }
  const reading = readSiteText(text);
  if (!reading.ok) {
    throw new CommandFault([
      `Option --against: ${JSON.stringify(path)} came, an earlier --json output or a site file was expected.`,
      ...reading.refusals.map(refusalSentence),
    ]);
  }
  if (files.length !== 1) {
    throw new CommandFault(
      `Option --against: a site file came with ${files.length} files to audit, one file was expected.`,
    );
  }
  const { findings } = auditSite(indexSite(reading.site), question);
  return () => findings;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null; // the reading as a site file says what is wrong with it
  }
}

async function textOf(path: string): Promise<string> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    throw new CommandFault(
      `Option --against: ${JSON.stringify(path)} came, a file that can be read was expected (${(error as Error).message}).`,
    );
  }
}
