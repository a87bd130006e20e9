import { type Endpoint, proxy, type Remote, wrap } from 'comlink';
import type { MappingGuess } from '../lib/import/guess-mapping.ts';
import type { ListName } from '../lib/import/lists.ts';
import type { Mapping } from '../lib/import/mapping.ts';
import type { ImportMode, ImportPlan } from '../lib/import/plan-import.ts';
import type { Table } from '../lib/import/table.ts';
import type { Site } from '../lib/model/site.ts';
import type { ImportDesk, ImportProgress, OpenChoice, OpenReply } from './import-desk.ts';

/** A result; or word that the work was stopped before it came. */
export type ImportReply<T> = { kind: 'done'; result: T } | { kind: 'stopped' };

/** What the client needs of a worker; a test may hand it a message port. */
export type ImportWorker = Endpoint & {
  terminate(): void;
  addEventListener(type: 'error', listener: (event: Event) => void): void;
};

type Pending = { stop(): void; fail(error: Error): void };
type Opened = { bytes: Uint8Array; file: string; choice: OpenChoice };

function startWorker(): ImportWorker {
  return new Worker(new URL('./import.worker.ts', import.meta.url), { type: 'module' });
}

/**
 * The page's side of the import worker. `stop` ends the worker, and with it whatever it was doing; the next call starts
 * a new one and has it read the open file again.
 */
export class ImportClient {
  readonly #start: () => ImportWorker;
  #worker: ImportWorker | null = null;
  #desk: Remote<ImportDesk> | null = null;
  #opened: Opened | null = null;
  readonly #pending = new Set<Pending>();

  constructor(start: () => ImportWorker = startWorker) {
    this.#start = start;
  }

  /** Reads a file; it takes the place of the one before, whose work is stopped. */
  async open(
    bytes: Uint8Array,
    file: string,
    choice: OpenChoice = {},
    onProgress?: ImportProgress,
  ): Promise<ImportReply<OpenReply>> {
    if (this.#pending.size > 0) this.stop();
    const opened: Opened = { bytes, file, choice };
    const reply = await this.#watch(this.#read(this.#ready(), opened, onProgress));
    this.#opened = reply.kind === 'done' && reply.result.ok ? opened : null;
    return reply;
  }

  /** Which column of the open file gives which fact of a list? */
  guess(list: ListName): Promise<ImportReply<MappingGuess>> {
    return this.#ask((desk) => desk.guess(list) as Promise<MappingGuess>);
  }

  /** The dry run of the open file. */
  plan(
    site: Site,
    mapping: Mapping,
    mode: ImportMode,
    onProgress?: ImportProgress,
  ): Promise<ImportReply<ImportPlan>> {
    const heard = proxy((...progress: Parameters<ImportProgress>) => onProgress?.(...progress));
    return this.#ask((desk) => desk.plan(site, mapping, mode, heard) as Promise<ImportPlan>);
  }

  /** The open file with these rows only. */
  rowsOf(rows: readonly number[]): Promise<ImportReply<Table>> {
    return this.#ask((desk) => desk.rowsOf(rows) as Promise<Table>);
  }

  /** Stops what is being done; the file stays open. What is awaited resolves as stopped. */
  stop(): void {
    const pending = [...this.#pending];
    this.#worker?.terminate();
    this.#forget();
    for (const request of pending) request.stop();
  }

  /** Ends the worker and closes the file. */
  dispose(): void {
    this.stop();
    this.#opened = null;
  }

  #ask<T>(call: (desk: Remote<ImportDesk>) => Promise<T>): Promise<ImportReply<T>> {
    const fresh = this.#desk === null;
    const desk = this.#ready();
    const opened = this.#opened;
    if (!fresh || opened === null) return this.#watch(call(desk));
    return this.#watch(this.#read(desk, opened).then(() => call(desk)));
  }

  #read(desk: Remote<ImportDesk>, { bytes, file, choice }: Opened, onProgress?: ImportProgress) {
    const heard = proxy((...progress: Parameters<ImportProgress>) => onProgress?.(...progress));
    return desk.open(bytes, file, choice, heard) as Promise<OpenReply>;
  }

  #ready(): Remote<ImportDesk> {
    if (this.#desk !== null) return this.#desk;
    const worker = this.#start();
    worker.addEventListener('error', (event) => {
      if (worker !== this.#worker) return;
      const pending = [...this.#pending];
      this.#forget();
      const why = (event as Partial<ErrorEvent>).message ?? 'it could not be loaded';
      for (const request of pending) request.fail(new Error(`The import worker stopped: ${why}`));
    });
    this.#worker = worker;
    this.#desk = wrap<ImportDesk>(worker);
    return this.#desk;
  }

  #watch<T>(call: Promise<T>): Promise<ImportReply<T>> {
    return new Promise((resolve, reject) => {
      const pending: Pending = { stop: () => resolve({ kind: 'stopped' }), fail: reject };
      this.#pending.add(pending);
      call
        .then((result) => resolve({ kind: 'done', result }), reject)
        .finally(() => this.#pending.delete(pending));
    });
  }

  #forget(): void {
    this.#worker = null;
    this.#desk = null;
    this.#pending.clear();
  }
}
