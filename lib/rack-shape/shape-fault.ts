/** What is wrong with a described run or with a change of one. lib/words turns it into the sentence a person reads. */
export type ShapeFault =
  | { is: 'missing' }
  | { is: 'not-read' }
  | { is: 'out-of-range'; from: number; to: number; of: 'count' | 'length' | 'mass' }
  | { is: 'wrong-count'; expected: number; came: number }
  | { is: 'no-opening'; belowMm: number }
  | { is: 'no-opening-above'; aboveMm: number }
  | { is: 'unfit-id' }
  | { is: 'run-known' }
  | { is: 'bay-known'; bay: string }
  | { is: 'no-such'; what: 'aisle' | 'frame-type' | 'level' | 'bay' }
  | { is: 'no-levels' }
  | { is: 'last-bay' }
  | { is: 'wider-than-bay'; bayMm: number }
  | { is: 'too-many-locations'; most: number }
  | { is: 'open-brace' }
  | { is: 'unknown-part'; came: string; nearest: string | null }
  | { is: 'unknown-style'; came: string }
  | { is: 'letters-below-one'; part: string }
  | { is: 'label-twice'; label: string; count: number }
  | { is: 'label-elsewhere'; label: string; run: string; count: number };

/** A fault with the field that it belongs to, such as `bayCount` or `levels[2].beamTopMm`. */
export type ShapeRefusal = { field: string; fault: ShapeFault };

export type Shaped<T> = { ok: true; value: T } | { ok: false; refusals: ShapeRefusal[] };

export function refuse<T>(field: string, fault: ShapeFault): Shaped<T> {
  return { ok: false, refusals: [{ field, fault }] };
}
