import { type CompiledSite, EMPTY } from './compiled-site.ts';
import type { LoadShape } from './load-columns.ts';

/** A class of locations with a shape of load: what a truck's geometry is decided for. */
export type LiftKind = { classRow: number; shape: LoadShape };

/** In `kindOf`: nothing stands here, nothing is asked. */
export const NO_KIND = 0xffffffff;

/** The kinds of lift that a question meets, and the kind at each location. */
export type LiftKinds = {
  list: LiftKind[];
  /** The row of each kind in the list, by classRow + 65536 x shape row. */
  rows: Map<number, number>;
  kindOf: Uint32Array;
};

export function noKinds(locationCount: number): LiftKinds {
  return { list: [], rows: new Map(), kindOf: new Uint32Array(locationCount).fill(NO_KIND) };
}

/** Finds the kind of lift at each location of a range: of one shape everywhere, or (null) of what stands there. */
export function findKinds(
  site: CompiledSite,
  kinds: LiftKinds,
  asked: LoadShape | null,
  first: number,
  end: number,
): void {
  const { list, rows, kindOf } = kinds;
  const { shapeOf, shapes } = site.loads;
  let lastKey = -1;
  let row = NO_KIND;
  for (let location = first; location < end; location += 1) {
    const standing = site.standing[location]!;
    if (asked === null && standing === EMPTY) continue;
    const classRow = site.classOf[location]!;
    const shapeRow = asked === null ? shapeOf[standing]! : 0;
    const key = classRow + 0x10000 * shapeRow;
    if (key !== lastKey) {
      lastKey = key;
      row = rows.get(key) ?? NO_KIND;
      if (row === NO_KIND) {
        row = list.push({ classRow, shape: asked ?? shapes[shapeRow]! }) - 1;
        rows.set(key, row);
      }
    }
    kindOf[location] = row;
  }
}
