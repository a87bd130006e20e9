import { type Remote, wrap } from 'comlink';
import type { Consequences, ConsequencesAsked } from '../lib/rack-shape/consequences.ts';
import type { RackShapeDesk } from './rack-shape.worker.ts';

/**
 * The page's side of the worker that reckons what a change comes to. The newest question counts: one that is still being
 * worked on is dropped with its worker and resolves as null.
 */
export class RackShapeClient {
  #worker: Worker | null = null;
  #desk: Remote<RackShapeDesk> | null = null;
  #drop: (() => void) | null = null;

  weigh(asked: ConsequencesAsked): Promise<Consequences | null> {
    if (this.#drop !== null) this.dispose();
    if (this.#worker === null) {
      this.#worker = new Worker(new URL('./rack-shape.worker.ts', import.meta.url), { type: 'module' });
      this.#desk = wrap<RackShapeDesk>(this.#worker);
    }
    const [worker, desk] = [this.#worker, this.#desk!];
    return new Promise((resolve, reject) => {
      const done = () => {
        if (worker === this.#worker) this.#drop = null;
      };
      this.#drop = () => resolve(null);
      worker.addEventListener('error', (event) =>
        reject(new Error(event.message ?? 'it could not be loaded')),
      );
      desk.weigh(asked).then(resolve, reject).finally(done);
    });
  }

  /** Ends the worker and what it was doing. */
  dispose(): void {
    const drop = this.#drop;
    this.#worker?.terminate();
    this.#worker = null;
    this.#desk = null;
    this.#drop = null;
    drop?.();
  }
}
