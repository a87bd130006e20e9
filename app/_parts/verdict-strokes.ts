import type { Verdict } from '@/lib/check/step.ts';

/**
 * The four marks as strokes on a 16 grid, for SVG and canvas alike: two level bars, one thin bar, a question, a cross.
 * Drawn by us after the marks of lib/words, so that they are the same on every machine whatever its fonts.
 */
export const VERDICT_STROKES: Record<Verdict, { path: string; width: number }> = {
  clear: { path: 'M4 6h8M4 10h8', width: 2.2 },
  thin: { path: 'M3.5 8h9', width: 1.5 },
  unproven: { path: 'M5.4 5.4c0-3.4 5.2-3.4 5.2-.3 0 1.9-2.6 1.8-2.6 3.6M8 13v.1', width: 2.2 },
  refuse: { path: 'M4.5 4.5l7 7M11.5 4.5l-7 7', width: 2.2 },
};
