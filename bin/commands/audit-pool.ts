import { Worker } from 'node:worker_threads';
import { type AuditOutcome, type AuditTask, auditFile, stopped } from './audit-file.ts';

/** Files that may be finished, per thread, before the first of them is taken: a slow reader holds the threads back. */
const AHEAD = 4;

/**
 * Audits files on several threads and gives the outcomes in the order of the tasks. With one job, or one file, no
 * thread is started: the work is done here. A thread that dies takes only its own file with it.
 */
export async function* auditAll(
  tasks: readonly AuditTask[],
  jobs: number,
  onDone: (outcome: AuditOutcome) => void,
): AsyncGenerator<AuditOutcome> {
  const threads = Math.min(jobs, tasks.length);
  if (threads <= 1) {
    for (const task of tasks) {
      const outcome = await auditFile(task);
      onDone(outcome);
      yield outcome;
    }
    return;
  }
  const idle: Worker[] = Array.from({ length: threads }, startThread);
  const alive = new Set(idle);
  const outcomes: Promise<AuditOutcome>[] = [];
  const waiting: ((thread: Worker) => void)[] = [];
  const release = (thread: Worker) => {
    const next = waiting.shift();
    if (next) next(thread);
    else idle.push(thread);
  };
  const start = async (task: AuditTask): Promise<AuditOutcome> => {
    const thread = idle.pop() ?? (await new Promise<Worker>((resolve) => waiting.push(resolve)));
    const { outcome, survivor } = await runOn(thread, task);
    if (survivor !== thread) alive.delete(thread);
    alive.add(survivor);
    release(survivor);
    onDone(outcome);
    return outcome;
  };
  try {
    for (let at = 0; at < tasks.length; at += 1) {
      while (outcomes.length < Math.min(tasks.length, at + threads * AHEAD)) {
        outcomes.push(start(tasks[outcomes.length]!));
      }
      yield await outcomes[at]!;
      outcomes[at] = NOTHING; // what was taken need not be kept
    }
  } finally {
    await Promise.all([...alive].map((thread) => thread.terminate()));
  }
}

const NOTHING: Promise<never> = new Promise(() => {});

function startThread(): Worker {
  return new Worker(new URL('./audit-thread.mjs', import.meta.url));
}

/** One file on one thread. Where the thread dies (out of memory, a broken loader) a new one takes its place. */
function runOn(thread: Worker, task: AuditTask): Promise<{ outcome: AuditOutcome; survivor: Worker }> {
  return new Promise((resolve) => {
    const settle = (outcome: AuditOutcome, survivor: Worker) => {
      thread.off('message', onMessage).off('error', onError);
      resolve({ outcome, survivor });
    };
    const onMessage = (outcome: AuditOutcome) => settle(outcome, thread);
    const onError = (error: Error) => settle(stopped(task, error), startThread());
    thread.on('message', onMessage).on('error', onError);
    thread.postMessage(task);
  });
}
