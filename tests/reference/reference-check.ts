/** How far a published figure is known. `derived`: reckoned here from a stated formula, a guard against change only. */
export type Confidence = 'seen' | 'secondary source' | 'from memory' | 'common practice' | 'derived';

/** One figure that the program computes, held against a published one. */
export type ReferenceCheck = {
  id: string;
  quantity: string;
  inputs: string;
  unit: string;
  ours: () => number | string;
  published: number | string;
  /** Largest difference accepted, in `unit`; 0: equal to a billionth part (or, for words, the same). */
  tolerance: number;
  source: string;
  confidence: Confidence;
  /** Why the tolerance is what it is, where that needs saying. */
  note?: string;
};

/** A limit held from both sides: what the program says just below it, at it and just above it. */
export type LimitCheck = {
  id: string;
  quantity: string;
  unit: string;
  limit: number;
  /** How far from the limit the outer rows stand. */
  apart: number;
  answerAt: (value: number) => string;
  expected: readonly [below: string, at: string, above: string];
  source: string;
  confidence: Confidence;
};

/** How far ours is from the published figure: a number, or null for words. */
export function differenceOf(check: ReferenceCheck): number | null {
  const ours = check.ours();
  return typeof ours === 'number' && typeof check.published === 'number' ? ours - check.published : null;
}

/** Does ours agree with what is published, within the tolerance stated? */
export function agrees(check: ReferenceCheck): boolean {
  const difference = differenceOf(check);
  if (difference === null) return check.ours() === check.published;
  const rounding = 1e-9 * Math.max(1, Math.abs(Number(check.published)));
  return Math.abs(difference) <= check.tolerance + rounding;
}

/** The three answers around a limit. */
export function answersAround(limit: LimitCheck): [string, string, string] {
  return [
    limit.answerAt(limit.limit - limit.apart),
    limit.answerAt(limit.limit),
    limit.answerAt(limit.limit + limit.apart),
  ];
}
