import type { Verdict } from '@/lib/check/step.ts';

/** Verdict colours for a canvas, which cannot read the style sheet: the tokens of globals.css, held equal by a test. */
export const VERDICT_COLOURS: Record<Verdict, { fill: string; ink: string }> = {
  clear: { fill: '#bfe3d8', ink: '#0b5d4c' },
  thin: { fill: '#f7d88a', ink: '#6f4a00' },
  unproven: { fill: '#ddd8ee', ink: '#4a3a8c' },
  refuse: { fill: '#f0b9ae', ink: '#962015' },
};

export const BLANK_FILL = '#eef0ef';
