import { BLANK_FILL, VERDICT_COLOURS } from '@/app/_parts/verdict-colours.ts';
import { VERDICT_STROKES } from '@/app/_parts/verdict-strokes.ts';
import { boxOf } from '@/app/racks/cell-cursor.ts';
import { drawScale, drawSteel } from '@/app/racks/draw-steel.ts';
import type { Elevation } from '@/app/racks/elevation.ts';
import { type ColourRun, paintCells } from '@/app/racks/paint-cells.ts';
import { MARGIN_PX, pxX, pxY, type Viewport } from '@/app/racks/viewport.ts';
import { VERDICTS, type Verdict } from '@/lib/check/step.ts';

export type Drawing = {
  elevation: Elevation;
  row: 1 | 2;
  codes: Uint8Array;
  view: Viewport;
  /** Site-order index of the cell under the cursor, or null. */
  cursor: number | null;
  /** What a cell says besides its mark, or null. */
  figureOf: (cell: number) => string | null;
  /** The standing load's size, to be drawn to scale, or null where nothing stands. */
  standingAt: (cell: number) => { widthMm: number; heightMm: number } | null;
  heightLabel: (mm: number) => string;
  patterns: Patterns;
};

export type Patterns = Record<'unproven' | 'refuse', CanvasPattern | null>;

const MARK_PX = 14;
const FIGURE_FROM_PX = 38;
/** Below this height of a cell mark and figure stand in its middle, above it on its lower edge: within most loads. */
const LOW_CELL_PX = 52;
const FIGURE_FONT = '600 12px "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif';
const STROKES = Object.fromEntries(
  VERDICTS.map((verdict) => [verdict, { ...VERDICT_STROKES[verdict], path2d: null as Path2D | null }]),
);

/** Draws a run: the thin effect after paintCells has said which rectangles have which colour. */
export function drawElevation2d(ctx: CanvasRenderingContext2D, drawing: Drawing): void {
  const { view, elevation, row, codes } = drawing;
  ctx.clearRect(0, 0, view.widthPx, view.heightPx);
  ctx.save();
  ctx.beginPath();
  ctx.rect(MARGIN_PX.left - 8, 0, view.widthPx - MARGIN_PX.left + 8, view.heightPx - MARGIN_PX.bottom + 6);
  ctx.clip();
  for (const run of paintCells(elevation, row, codes, view)) drawRun(ctx, run, drawing);
  drawSteel(ctx, elevation, view);
  if (drawing.cursor !== null) drawCursor(ctx, drawing, drawing.cursor);
  ctx.restore();
  drawScale(ctx, elevation, view, drawing.heightLabel);
}

function drawRun(ctx: CanvasRenderingContext2D, run: ColourRun, drawing: Drawing): void {
  const verdict = VERDICTS[run.code];
  const gap = run.width > 8 ? 1 : 0;
  const [x, y, width, height] = [run.x + gap, run.y + gap, run.width - 2 * gap, run.height - gap];
  ctx.fillStyle = verdict === undefined ? BLANK_FILL : VERDICT_COLOURS[verdict].fill;
  ctx.fillRect(x, y, width, height);
  if (verdict !== undefined && isHatched(verdict)) {
    const pattern = drawing.patterns[verdict];
    if (pattern !== null && height > 5) {
      ctx.fillStyle = pattern;
      ctx.fillRect(x, y, width, height);
    }
  }
  if (run.cell === -1) return;
  if (width >= 18) drawStanding(ctx, run, drawing);
  if (verdict === undefined || width < MARK_PX || height < MARK_PX) return;
  const figure = width >= FIGURE_FROM_PX && height >= 34 ? drawing.figureOf(run.cell) : null;
  drawPlate(ctx, verdict, figure, { x, y, width, height });
}

/** Mark and figure on a ground of their own, which no outline and no hatching runs through. */
function drawPlate(
  ctx: CanvasRenderingContext2D,
  verdict: Verdict,
  figure: string | null,
  cell: { x: number; y: number; width: number; height: number },
): void {
  ctx.font = FIGURE_FONT;
  const mark = Math.min(cell.width, 20);
  const wide = figure === null ? 0 : ctx.measureText(figure).width;
  const shown = figure !== null && wide <= cell.width - 4 ? figure : null;
  const height = Math.min(cell.height, shown === null ? mark + 2 : mark + 14);
  const width = Math.min(cell.width, Math.max(mark, shown === null ? 0 : wide) + 4);
  const middle = cell.x + cell.width / 2;
  const top =
    cell.height < LOW_CELL_PX ? cell.y + (cell.height - height) / 2 : cell.y + cell.height - height - 4;
  ctx.fillStyle = VERDICT_COLOURS[verdict].fill;
  ctx.fillRect(middle - width / 2, top, width, height);
  drawMark(ctx, verdict, middle, top + (shown === null ? height : mark) / 2, mark);
  if (shown === null) return;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.fillStyle = VERDICT_COLOURS[verdict].ink;
  ctx.fillText(shown, middle, top + height - 7);
}

function drawMark(ctx: CanvasRenderingContext2D, verdict: Verdict, x: number, y: number, size: number): void {
  const stroke = STROKES[verdict]!;
  stroke.path2d ??= new Path2D(stroke.path);
  ctx.save();
  ctx.translate(x - size / 2, y - size / 2);
  ctx.scale(size / 16, size / 16);
  ctx.lineCap = 'square';
  ctx.lineWidth = stroke.width;
  ctx.strokeStyle = VERDICT_COLOURS[verdict].ink;
  ctx.stroke(stroke.path2d);
  ctx.restore();
}

/** The pallet that stands there, to scale, as an outline on its beam. */
function drawStanding(ctx: CanvasRenderingContext2D, run: ColourRun, drawing: Drawing): void {
  const load = drawing.standingAt(run.cell);
  if (load === null) return;
  const width = load.widthMm * drawing.view.pxPerMm;
  const height = load.heightMm * drawing.view.pxPerMm;
  ctx.strokeStyle = '#5d6b75';
  ctx.lineWidth = 1;
  ctx.strokeRect(run.x + (run.width - width) / 2, run.y + run.height - height, width, height - 1);
}

function drawCursor(ctx: CanvasRenderingContext2D, { elevation, view }: Drawing, cell: number): void {
  const box = boxOf(elevation, cell);
  if (box === null) return;
  const x = pxX(view, box.xMm);
  const y = pxY(view, box.yMm + box.heightMm);
  const width = Math.max(box.widthMm * view.pxPerMm, 6);
  const height = Math.max(box.heightMm * view.pxPerMm, 6);
  ctx.lineWidth = 6;
  ctx.strokeStyle = '#ffffff';
  ctx.strokeRect(x, y, width, height);
  ctx.lineWidth = 3;
  ctx.strokeStyle = '#0b5a8f';
  ctx.strokeRect(x, y, width, height);
}

function isHatched(verdict: Verdict): verdict is keyof Patterns {
  return verdict === 'unproven' || verdict === 'refuse';
}

/** Hatching that survives grey printing: strokes one way for unproven, both ways for refuse. */
export function makePatterns(ctx: CanvasRenderingContext2D): Patterns {
  return { unproven: hatch(ctx, 'unproven', false), refuse: hatch(ctx, 'refuse', true) };
}

function hatch(ctx: CanvasRenderingContext2D, verdict: 'unproven' | 'refuse', both: boolean) {
  const tile = document.createElement('canvas');
  tile.width = 8;
  tile.height = 8;
  const on = tile.getContext('2d');
  if (on === null) return null;
  on.strokeStyle = VERDICT_COLOURS[verdict].ink;
  on.globalAlpha = 0.42;
  on.lineWidth = 1;
  on.beginPath();
  for (const shift of [-8, 0, 8]) {
    on.moveTo(shift, 8);
    on.lineTo(shift + 8, 0);
    if (!both) continue;
    on.moveTo(shift, 0);
    on.lineTo(shift + 8, 8);
  }
  on.stroke();
  return ctx.createPattern(tile, 'repeat');
}
