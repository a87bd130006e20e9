import type { Strip } from './strip.ts';

export type CellSize = { widthPx: number; heightPx: number };
type Rgb = readonly [number, number, number];

/**
 * Strong colours, for cells of a few px: what is in order recedes, what is not stands out; each darker than the one
 * before, so that grey keeps the order. Index: clear, thin, unproven, refuse.
 */
const FILLS: readonly Rgb[] = [
  [191, 227, 216],
  [233, 176, 48],
  [140, 126, 196],
  [186, 52, 36],
];
const BLANK: Rgb = [222, 226, 225];
const GAP: Rgb = [255, 255, 255];
/** Lines on the fills, so that cells large enough tell the verdicts apart without colour. */
const LINE: Rgb = [255, 255, 255];

/** Cells of this width and more are kept apart by a line and hatched. */
const APART_FROM_PX = 4;

/**
 * The pixels (RGBA) of a strip: one byte of code per location in site order, 255 for nothing asked. Cells may be 1 px
 * small; a code is read for each cell, never for each pixel.
 */
export function paintStrip(strip: Strip, codes: Uint8Array, cell: CellSize): Uint8ClampedArray<ArrayBuffer> {
  const width = strip.columns * cell.widthPx;
  const pixels = new Uint8ClampedArray(width * strip.lines * cell.heightPx * 4);
  const apart = cell.widthPx >= APART_FROM_PX && cell.heightPx >= APART_FROM_PX;
  for (let line = 0; line < strip.lines; line++) {
    for (let column = 0; column < strip.columns; column++) {
      const place = strip.placeAt[line * strip.columns + column]!;
      const code = place < 0 ? null : (codes[place] ?? 255);
      for (let y = 0; y < cell.heightPx; y++) {
        let at = ((line * cell.heightPx + y) * width + column * cell.widthPx) * 4;
        for (let x = 0; x < cell.widthPx; x++, at += 4) {
          const edge = apart && (x === cell.widthPx - 1 || y === cell.heightPx - 1);
          const [red, green, blue] = code === null || edge ? GAP : colourOf(code, apart, x, y);
          pixels[at] = red;
          pixels[at + 1] = green;
          pixels[at + 2] = blue;
          pixels[at + 3] = code === null ? 0 : 255;
        }
      }
    }
  }
  return pixels;
}

function colourOf(code: number, hatched: boolean, x: number, y: number): Rgb {
  const fill = FILLS[code];
  if (fill === undefined) return BLANK;
  if (!hatched) return fill;
  if (code === 2 && (x + y) % 4 === 0) return LINE;
  if (code === 3 && (x === y || x + y === 6)) return LINE;
  return fill;
}
