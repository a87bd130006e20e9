import { type Elevation, firstBayBeyond, UPRIGHT_DRAWN_MM } from '@/app/racks/elevation.ts';
import { MARGIN_PX, mmAt, pxX, pxY, type Viewport } from '@/app/racks/viewport.ts';
import type { Condition } from '@/lib/model/racking.ts';

const STEEL = '#33434f';
const BEAM = '#54656f';
const LABEL = '600 12px "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif';
/** Damage: a colour, a letter and a flag's shape, so that none is needed alone. */
const DAMAGE: Record<Exclude<Condition, 'sound'>, { paint: string; ink: string; letter: string }> = {
  amber: { paint: '#e39a00', ink: '#16212b', letter: 'A' },
  red: { paint: '#b3241a', ink: '#ffffff', letter: 'R' },
};

/** Frames, beams and the floor, with what an inspection found on them. */
export function drawSteel(ctx: CanvasRenderingContext2D, elevation: Elevation, view: Viewport): void {
  const left = mmAt(view, { x: 0, y: 0 }).xMm;
  const right = mmAt(view, { x: view.widthPx, y: 0 }).xMm;
  const flags: { x: number; y: number; condition: Condition }[] = [];
  for (const beam of elevation.beams) {
    if (beam.xMm + beam.widthMm < left || beam.xMm > right) continue;
    const x = pxX(view, beam.xMm);
    const y = pxY(view, beam.topMm);
    ctx.fillStyle = beam.condition === 'sound' ? BEAM : DAMAGE[beam.condition].paint;
    const height = Math.max(beam.heightMm * view.pxPerMm, 1);
    ctx.fillRect(x, y, beam.widthMm * view.pxPerMm, height);
    if (beam.condition !== 'sound')
      flags.push({ x: x + 12, y: y + Math.min(height / 2, 8), condition: beam.condition });
  }
  for (const frame of elevation.frames) {
    if (frame.xMm + UPRIGHT_DRAWN_MM < left || frame.xMm > right) continue;
    const x = pxX(view, frame.xMm);
    const top = pxY(view, frame.heightMm);
    const width = Math.max(UPRIGHT_DRAWN_MM * view.pxPerMm, 1.5);
    ctx.fillStyle = frame.condition === 'sound' ? STEEL : DAMAGE[frame.condition].paint;
    ctx.fillRect(x, top, width, pxY(view, 0) - top);
    if (frame.condition !== 'sound')
      flags.push({ x: x + width / 2, y: Math.max(top, 12), condition: frame.condition });
  }
  for (const flag of flags) drawFlag(ctx, flag);
  const floor = pxY(view, 0);
  ctx.fillStyle = '#8b979d';
  ctx.fillRect(0, floor, view.widthPx, 3);
}

function drawFlag(
  ctx: CanvasRenderingContext2D,
  { x, y, condition }: { x: number; y: number; condition: Condition },
): void {
  if (condition === 'sound') return;
  const { paint, ink, letter } = DAMAGE[condition];
  ctx.beginPath();
  if (condition === 'amber') {
    ctx.moveTo(x, y - 11);
    ctx.lineTo(x + 11, y + 8);
    ctx.lineTo(x - 11, y + 8);
  } else {
    ctx.rect(x - 8, y - 8, 16, 16);
  }
  ctx.closePath();
  ctx.fillStyle = paint;
  ctx.fill();
  ctx.strokeStyle = '#ffffff';
  ctx.lineWidth = 1.5;
  ctx.stroke();
  ctx.font = LABEL;
  ctx.fillStyle = ink;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.fillText(letter, x, y + 1.5);
}

/** Beam heights of the leftmost bay in view at the left, bay names below. */
export function drawScale(
  ctx: CanvasRenderingContext2D,
  elevation: Elevation,
  view: Viewport,
  heightLabel: (mm: number) => string,
): void {
  ctx.font = LABEL;
  ctx.fillStyle = '#33434f';
  ctx.textBaseline = 'middle';
  const first = Math.min(firstBayBeyond(elevation.bays, view.xMm), elevation.bays.length - 1);
  ctx.textAlign = 'right';
  let lastY = Number.POSITIVE_INFINITY;
  const floorY = pxY(view, 0);
  if (floorY < view.heightPx) {
    ctx.fillText('floor', MARGIN_PX.left - 12, floorY - 6);
    lastY = floorY - 6;
  }
  for (const beam of elevation.beams) {
    if (beam.bay !== first || beam.topMm === 0) continue;
    const y = pxY(view, beam.topMm);
    if (y < 4 || lastY - y < 13) continue;
    ctx.fillText(heightLabel(beam.topMm), MARGIN_PX.left - 12, y);
    ctx.fillRect(MARGIN_PX.left - 9, y - 0.5, 6, 1);
    lastY = y;
  }
  ctx.textAlign = 'center';
  let freeFrom = 0;
  for (let at = Math.max(first, 0); at < elevation.bays.length; at++) {
    const bay = elevation.bays[at]!;
    const from = Math.max(pxX(view, bay.xMm), MARGIN_PX.left);
    if (from > view.widthPx) break;
    const to = Math.min(pxX(view, bay.xMm + bay.widthMm), view.widthPx);
    const wide = ctx.measureText(bay.id).width;
    const middle = (from + to) / 2;
    if (middle - wide / 2 < freeFrom || (wide > to - from && to - from > 90)) continue;
    if (middle + wide / 2 > view.widthPx) continue;
    ctx.fillText(bay.id, middle, view.heightPx - MARGIN_PX.bottom / 2 + 4);
    freeFrom = middle + wide / 2 + 10;
  }
}
