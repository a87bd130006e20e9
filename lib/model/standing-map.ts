import type { Load } from './load.ts';
import type { StockRow } from './site.ts';

/**
 * What stands in each stocked location after some changes: the map before them with the changed locations laid over it,
 * so that a pallet that moves among 100 000 copies nothing. Iterated in the order of the stock, as a map made anew is.
 */
export class StandingMap implements ReadonlyMap<string, Load> {
  readonly #base: ReadonlyMap<string, Load>;
  /** null: nothing stands there any longer. */
  readonly #over: ReadonlyMap<string, Load | null>;
  readonly #stock: readonly StockRow[];

  private constructor(
    base: ReadonlyMap<string, Load>,
    over: ReadonlyMap<string, Load | null>,
    stock: readonly StockRow[],
  ) {
    this.#base = base;
    this.#over = over;
    this.#stock = stock;
  }

  /** `former` with these locations changed; `stock` is the whole stock after that. */
  static over(
    former: ReadonlyMap<string, Load>,
    changed: ReadonlyMap<string, Load | null>,
    stock: readonly StockRow[],
  ): StandingMap {
    if (!(former instanceof StandingMap)) return new StandingMap(former, changed, stock);
    return new StandingMap(former.#base, new Map([...former.#over, ...changed]), stock);
  }

  /** How many locations are laid over: beyond some hundreds a map made anew is better. */
  get depth(): number {
    return this.#over.size;
  }

  get size(): number {
    return this.#stock.length;
  }

  get(location: string): Load | undefined {
    const over = this.#over.get(location);
    return over === undefined ? this.#base.get(location) : (over ?? undefined);
  }

  has(location: string): boolean {
    return this.get(location) !== undefined;
  }

  *keys(): MapIterator<string> {
    for (const { location } of this.#stock) yield location;
  }

  *values(): MapIterator<Load> {
    for (const { location } of this.#stock) yield this.get(location)!;
  }

  *entries(): MapIterator<[string, Load]> {
    for (const { location } of this.#stock) yield [location, this.get(location)!];
  }

  [Symbol.iterator](): MapIterator<[string, Load]> {
    return this.entries();
  }

  forEach(call: (load: Load, location: string, map: ReadonlyMap<string, Load>) => void): void {
    for (const [location, load] of this) call(load, location, this);
  }
}
