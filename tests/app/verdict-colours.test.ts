import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BLANK_FILL, VERDICT_COLOURS } from '../../app/_parts/verdict-colours.ts';
import { VERDICTS } from '../../lib/check/step.ts';

const css = readFileSync(new URL('../../app/globals.css', import.meta.url), 'utf8');
const token = (name: string) => new RegExp(`--${name}:\\s*(#[0-9a-f]{6})`).exec(css)?.[1];

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}

describe('verdict colours', () => {
  it.each(VERDICTS)('are the same on the canvas and in the style sheet for %s', (verdict) => {
    expect(VERDICT_COLOURS[verdict]).toEqual({
      fill: token(`${verdict}-fill`),
      ink: token(`${verdict}-ink`),
    });
  });

  it('share the colour of a place without an answer', () => {
    expect(BLANK_FILL).toBe(token('blank-fill'));
  });

  it.each(VERDICTS)('let %s be read on its fill and on white (4.5:1, WCAG 2.2 SC 1.4.3)', (verdict) => {
    const { fill, ink } = VERDICT_COLOURS[verdict];
    expect(contrast(fill, ink)).toBeGreaterThanOrEqual(4.5);
    expect(contrast('#ffffff', ink)).toBeGreaterThanOrEqual(4.5);
  });
});
