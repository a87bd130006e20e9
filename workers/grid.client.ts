import { type Endpoint, proxy, type Remote, wrap } from 'comlink';
import type { SiteEdit } from '../lib/grid/edit-site.ts';
import type { GridAnswer, GridQuestion } from '../lib/grid/question.ts';
import type { Site } from '../lib/model/site.ts';
import type { GridDesk } from './grid-desk.ts';

/** An answer; or word that a newer request, or the end of the client, has taken its place. */
export type GridReply = { kind: 'answered'; answer: GridAnswer } | { kind: 'superseded' };

const SUPERSEDED = { kind: 'superseded' } as const;

/** What the client needs of a worker; a test may hand it a message port. */
export type GridWorker = Endpoint & {
  terminate(): void;
  addEventListener(type: 'error', listener: (event: Event) => void): void;
};

type Pending = { supersede(): void; fail(error: Error): void };

function startWorker(): GridWorker {
  return new Worker(new URL('./grid.worker.ts', import.meta.url), { type: 'module' });
}

/**
 * The page's side of the grid worker. It starts the worker when a site is opened, lets only the newest question be
 * answered (an older one resolves as `superseded`), and ends the worker when the page is done with it.
 */
export class GridClient {
  readonly #start: () => GridWorker;
  #worker: GridWorker | null = null;
  #desk: Remote<GridDesk> | null = null;
  readonly #pending = new Set<Pending>();
  #newest = 0;

  constructor(start: () => GridWorker = startWorker) {
    this.#start = start;
  }

  /**
   * Opens a site, or a newer version of it. Work on the one before is dropped by ending its worker; an idle worker
   * stays warm. False when yet another site was opened, or the client ended, meanwhile.
   */
  async open(site: Site): Promise<boolean> {
    if (this.#pending.size > 0) this.#stop();
    const desk = this.#ready();
    return (await this.#watch(desk.open(site).then(() => 'open' as const))) === 'open';
  }

  /** Answers a question of the open site. `onProgress` hears the share that is done, while it is the newest. */
  async ask(question: GridQuestion, onProgress?: (done: number) => void): Promise<GridReply> {
    this.#newest += 1;
    const mine = this.#newest;
    const heard = proxy((done: number) => {
      if (mine === this.#newest) onProgress?.(done);
    });
    const answer = await this.#watch(this.#ready().ask(question, heard) as Promise<GridAnswer | null>);
    return answer === null || mine !== this.#newest ? SUPERSEDED : { kind: 'answered', answer };
  }

  /** Puts an edit into the open site and answers the last question again. */
  async edit(edit: SiteEdit): Promise<GridReply> {
    const answer = await this.#watch(this.#ready().edit(edit) as Promise<GridAnswer>);
    return answer === null ? SUPERSEDED : { kind: 'answered', answer };
  }

  /** Ends the worker. What is still being asked resolves as superseded. */
  dispose(): void {
    this.#newest += 1;
    this.#stop();
  }

  #ready(): Remote<GridDesk> {
    if (this.#desk !== null) return this.#desk;
    const worker = this.#start();
    worker.addEventListener('error', (event) => {
      if (worker !== this.#worker) return;
      const pending = [...this.#pending];
      this.#forget();
      const why = (event as Partial<ErrorEvent>).message ?? 'it could not be loaded';
      for (const request of pending) request.fail(new Error(`The grid worker stopped: ${why}`));
    });
    this.#worker = worker;
    this.#desk = wrap<GridDesk>(worker);
    return this.#desk;
  }

  /** The result of a call; null when the worker was ended on purpose before it came. */
  #watch<T>(call: Promise<T>): Promise<T | null> {
    return new Promise((resolve, reject) => {
      const pending: Pending = { supersede: () => resolve(null), fail: reject };
      this.#pending.add(pending);
      call.then(resolve, reject).finally(() => this.#pending.delete(pending));
    });
  }

  #stop(): void {
    const pending = [...this.#pending];
    this.#worker?.terminate();
    this.#forget();
    for (const request of pending) request.supersede();
  }

  #forget(): void {
    this.#worker = null;
    this.#desk = null;
    this.#pending.clear();
  }
}
