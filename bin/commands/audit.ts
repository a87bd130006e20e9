import { readdir, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import type { Reference } from '../../lib/audit/audit-case.ts';
import type { AuditCounts } from '../../lib/audit/audit-site.ts';
import { DEFAULT_REFERENCE } from '../../lib/audit/reference-load.ts';
import { LARGEST_NUMBER } from '../../lib/model/quantities.ts';
import { STANDING_CAUTIONS } from '../../lib/words/cautions.ts';
import { counted } from '../../lib/words/plain-words.ts';
import type { AuditOutcome, AuditTask } from './audit-file.ts';
import { auditAll } from './audit-pool.ts';
import { severityLines, totalsReport } from './audit-report.ts';
import { CommandFault } from './command-fault.ts';
import { type Arguments, type OptionTypes, readArguments } from './read-arguments.ts';
import { readEarlier } from './read-earlier.ts';
import { timeOf } from './read-time.ts';
import { standardOutput, type TextSink } from './standard-output.ts';

const HELP = `tinewise audit FILE... [options]

Finds what a person should act on in one or many site files: overloads, loads that no truck can take down, damaged
steel, gaps in plates, notices and papers. A folder stands for its *.json files; "-" for standard input.

  --as-of TIME                  ISO 8601, UTC: judges holds, checks and authorisations at that time;
                                without it the fitness of trucks is not judged
  --reference MASS,DEPTH,WIDTH,HEIGHT
                                kg and mm: the load that every location is tried with;
                                default: 1000,1200,800,1000
  --against FILE.json           an earlier --json output, or one site file: what is new, worse, better or gone since
  --jobs N                      files audited at once; default: one for each core
  --json                        one JSON array, an object for each file, in the order of the files
  --progress                    a line on standard error for each file that is done

Exit code: 0 nothing to stop for, 2 a finding says stop, 1 a file could not be used (the others are audited).
`;

const OPTIONS: OptionTypes = {
  'as-of': { type: 'string' },
  reference: { type: 'string' },
  against: { type: 'string' },
  jobs: { type: 'string' },
  json: { type: 'boolean' },
  progress: { type: 'boolean' },
  help: { type: 'boolean' },
};

const BAD_INPUT = 1;
const STOP = 2;
const MOST_JOBS = 256;

/** Audits the site files that are named. Gives the exit code. */
export async function audit(args: readonly string[]): Promise<number> {
  const typed = readArguments(args, OPTIONS);
  const output = standardOutput();
  let code = 0;
  if (typed.switches.has('help')) await output.write(HELP);
  else code = await auditTyped(typed, output);
  await output.end();
  return code;
}

async function auditTyped(typed: Arguments, output: TextSink): Promise<number> {
  const as = typed.switches.has('json') ? 'json' : 'report';
  const asOf = timeOf(typed);
  const reference = referenceOf(typed);
  const jobs = jobsOf(typed);
  const files = await filesOf(typed.positionals);
  const input = files.includes('-') ? await text(process.stdin) : null;
  const against = typed.values.get('against');
  const earlier = against === undefined ? null : await readEarlier(against, files, { asOf, reference });
  const tasks = files.map((file): AuditTask => {
    return { file, text: file === '-' ? input : null, asOf, reference, as, before: earlier?.(file) ?? null };
  });
  const audited: AuditCounts[] = [];
  let refused = 0;
  let between = '[\n';
  for await (const outcome of auditAll(tasks, jobs, progress(typed, tasks.length))) {
    if (outcome.ok) audited.push(outcome.counts);
    else {
      refused += 1;
      process.stderr.write(`${outcome.file}: not audited, ${counted(outcome.refusals, 'fault')}.\n`);
    }
    const room = output.write(as === 'json' ? between + outcome.written : `${outcome.written}\n`);
    if (room !== null) await room;
    between = ',\n';
  }
  await output.write(as === 'json' ? '\n]\n' : ending(audited, refused, asOf));
  if (refused > 0) return BAD_INPUT;
  return audited.some(({ findings }) => findings.stop > 0) ? STOP : 0;
}

function ending(audited: readonly AuditCounts[], refused: number, asOf: string | null): string {
  const lines = [
    ...severityLines(),
    ...(asOf === null
      ? ['No time was given: checks, authorisations and who is fit for service were not judged.']
      : []),
    ...STANDING_CAUTIONS,
  ];
  const totals = audited.length + refused > 1 ? `${totalsReport(audited, refused)}\n` : '';
  return `${totals}${lines.join('\n')}\n`;
}

/** Tells standard error of each file that is done: on a terminal in one line, else only when it was asked for. */
function progress(typed: Arguments, total: number): (outcome: AuditOutcome) => void {
  const { stderr } = process;
  if (!stderr.isTTY && !typed.switches.has('progress')) return () => {};
  let done = 0;
  return ({ file }) => {
    done += 1;
    const line = `Audited ${done} of ${total}: ${file}`;
    if (!stderr.isTTY) stderr.write(`${line}\n`);
    else stderr.write(`\r\x1b[K${line}${done === total ? '\r\x1b[K' : ''}`);
  };
}

/** The files as they were typed; for a folder its *.json files in the order of their names. */
async function filesOf(typed: readonly string[]): Promise<string[]> {
  if (typed.length === 0) {
    throw new CommandFault('Site file: nothing came, paths of files or folders, or "-", were expected.');
  }
  const lists = await Promise.all(
    typed.map(async (path) => {
      if (path === '-' || !(await isFolder(path))) return [path];
      const names = (await readdir(path)).filter((name) => name.endsWith('.json')).sort();
      if (names.length > 0) return names.map((name) => join(path, name));
      throw new CommandFault(
        `Folder: ${JSON.stringify(path)} came, a folder with site files (*.json) was expected.`,
      );
    }),
  );
  return lists.flat();
}

/** What cannot be looked at is left to the reading of it, which says why. */
async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
}

function jobsOf(typed: Arguments): number {
  const came = typed.values.get('jobs');
  if (came === undefined) return availableParallelism();
  const jobs = Number(came);
  if (Number.isInteger(jobs) && jobs >= 1 && jobs <= MOST_JOBS) return jobs;
  throw new CommandFault(
    `Option --jobs: ${JSON.stringify(came)} came, a whole number from 1 to ${MOST_JOBS} was expected.`,
  );
}

function referenceOf(typed: Arguments): Reference {
  const came = typed.values.get('reference');
  if (came === undefined) return DEFAULT_REFERENCE;
  const parts = came.split(',').map((part) => (/^\s*$/.test(part) ? Number.NaN : Number(part)));
  if (parts.length === 4 && parts.every((part) => part > 0 && part <= LARGEST_NUMBER)) {
    const [massKg, depthMm, widthMm, heightMm] = parts as [number, number, number, number];
    return { massKg, depthMm, widthMm, heightMm };
  }
  throw new CommandFault(
    `Option --reference: ${JSON.stringify(came)} came, mass in kg and depth, width and height in mm, such as "1000,1200,800,1000", were expected.`,
  );
}
