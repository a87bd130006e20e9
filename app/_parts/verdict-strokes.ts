import type { Verdict } from '@/lib/check/step.ts';

/**
 * The four marks as strokes on a 16 grid, for SVG and canvas alike: two level bars, one thin bar, a question, a cross.
 * Drawn by us after the marks of lib/words, so that they are the same on every machine whatever its fonts.
 */
export const VERDICT_STROKES: Record<Verdict, { path: string; width: number }> = {
  clear: { path: 'M4 6h8M4 10h8', width: 2.2 },
  thin: { path: 'M3.5 8h9', width: 1.5 },
  unproven: { path: 'M5.6 6.2c0-3.2 4.8-3.2 4.8-.3 0 1.9-2.4 1.7-2.4 3.8M8 12v.4', width: 2.2 },
  refuse: { path: 'M4.5 4.5l7 7M11.5 4.5l-7 7', width: 2.2 },
};
