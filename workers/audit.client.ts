import { type Endpoint, proxy, type Remote, wrap } from 'comlink';
import type { Audit } from '../lib/audit/audit-site.ts';
import type { Site } from '../lib/model/site.ts';
import type { AuditAsked, AuditDesk } from './audit-desk.ts';

/** An audit; or word that a newer request, or the end of the client, has taken its place. */
export type AuditReply = { kind: 'answered'; audit: Audit } | { kind: 'superseded' };

/** What the client needs of a worker; a test may hand it a message port. */
export type AuditWorker = Endpoint & {
  terminate(): void;
  addEventListener(type: 'error', listener: (event: Event) => void): void;
};

/** A worker with the one handle to it: were the handle dropped for another, its end would close the worker's ears. */
type Desk = { worker: AuditWorker; remote: Remote<AuditDesk> };
type Running = { worker: AuditWorker; supersede(): void };

function startWorker(): AuditWorker {
  return new Worker(new URL('./audit.worker.ts', import.meta.url), { type: 'module' });
}

/**
 * The page's side of the audit worker. One audit runs at a time: a newer one ends the worker of the one before, which
 * resolves as superseded. A worker that has answered stays warm for the next.
 */
export class AuditClient {
  readonly #start: () => AuditWorker;
  #idle: Desk | null = null;
  #running: Running | null = null;

  constructor(start: () => AuditWorker = startWorker) {
    this.#start = start;
  }

  /**
   * Audits a site. Rejects when the worker could not be loaded or the audit broke down. `onProgress` hears the share
   * that is done, while it is the newest.
   */
  audit(site: Site, asked: AuditAsked, onProgress?: (done: number) => void): Promise<AuditReply> {
    this.#stopRunning();
    const desk = this.#idle ?? this.#open();
    const { worker } = desk;
    this.#idle = null;
    return new Promise((resolve, reject) => {
      const running: Running = { worker, supersede: () => resolve({ kind: 'superseded' }) };
      this.#running = running;
      const done = (keep: boolean): boolean => {
        if (this.#running !== running) return false;
        this.#running = null;
        if (keep) this.#idle = desk;
        else worker.terminate();
        return true;
      };
      worker.addEventListener('error', (event) => {
        const why = (event as Partial<ErrorEvent>).message ?? 'it could not be loaded';
        if (done(false)) reject(new Error(`The audit worker stopped: ${why}`));
      });
      const heard = proxy((share: number) => {
        if (this.#running === running) onProgress?.(share);
      });
      desk.remote.audit(site, asked, heard).then(
        (audit) => {
          if (done(true)) resolve({ kind: 'answered', audit });
        },
        (error: Error) => {
          if (done(true)) reject(error);
        },
      );
    });
  }

  /** Ends the worker. An audit that is running resolves as superseded. */
  dispose(): void {
    this.#stopRunning();
    this.#idle?.worker.terminate();
    this.#idle = null;
  }

  #open(): Desk {
    const worker = this.#start();
    return { worker, remote: wrap<AuditDesk>(worker) };
  }

  #stopRunning(): void {
    const running = this.#running;
    if (running === null) return;
    this.#running = null;
    running.worker.terminate();
    running.supersede();
  }
}
