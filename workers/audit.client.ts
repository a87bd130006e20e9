import { type Endpoint, wrap } from 'comlink';
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
  #idle: AuditWorker | null = null;
  #running: Running | null = null;

  constructor(start: () => AuditWorker = startWorker) {
    this.#start = start;
  }

  /** Audits a site. Rejects when the worker could not be loaded or the audit broke down. */
  audit(site: Site, asked: AuditAsked): Promise<AuditReply> {
    this.#stopRunning();
    const worker = this.#idle ?? this.#start();
    this.#idle = null;
    return new Promise((resolve, reject) => {
      const running: Running = { worker, supersede: () => resolve({ kind: 'superseded' }) };
      this.#running = running;
      const done = (keep: boolean): boolean => {
        if (this.#running !== running) return false;
        this.#running = null;
        if (keep) this.#idle = worker;
        else worker.terminate();
        return true;
      };
      worker.addEventListener('error', (event) => {
        const why = (event as Partial<ErrorEvent>).message ?? 'it could not be loaded';
        if (done(false)) reject(new Error(`The audit worker stopped: ${why}`));
      });
      wrap<AuditDesk>(worker)
        .audit(site, asked)
        .then(
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
    this.#idle?.terminate();
    this.#idle = null;
  }

  #stopRunning(): void {
    const running = this.#running;
    if (running === null) return;
    this.#running = null;
    running.worker.terminate();
    running.supersede();
  }
}
