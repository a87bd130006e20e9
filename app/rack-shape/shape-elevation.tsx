'use client';

import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { drawElevation2d, makePatterns, type Patterns } from '@/app/racks/draw-elevation.ts';
import { drawElevation, type Elevation } from '@/app/racks/elevation.ts';
import { cellAt, paintCells } from '@/app/racks/paint-cells.ts';
import { usePointers } from '@/app/racks/use-pointers.ts';
import { panBy, type Viewport, viewHeight, viewWhole, zoomAbout } from '@/app/racks/viewport.ts';
import type { Run } from '@/lib/model/racking.ts';
import { locationsOf } from '@/lib/rack-shape/neighbours.ts';
import { formatLength } from '@/lib/units/format-quantity.ts';
import { runInWords } from '@/lib/words/rack-shape.ts';
import styles from './rack-shape.module.css';

const NO_CODES = new Uint8Array();
const ZOOM_STEP = 1.5;

/**
 * A run that is being shaped, drawn to scale in a frame that never changes its size: the whole of it until somebody
 * zooms, then the same part while it is changed. A tap on a location tells its bay and level.
 */
export function ShapeElevation({
  run,
  onPick,
}: {
  run: Run;
  onPick?: (picked: { bay: number; level: number }) => void;
}) {
  const units = useUnits();
  const box = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const patterns = useRef<Patterns | null>(null);
  const [size, setSize] = useState<{ widthPx: number; heightPx: number } | null>(null);
  const [zoomed, setZoomed] = useState<Viewport | 'to-begin' | 'whole'>('to-begin');
  const elevation = useMemo(() => drawElevation(run, 0), [run]);
  const labels = useMemo(() => locationsOf(run), [run]);
  const view = useMemo(
    () => (size === null ? null : viewOf(elevation, zoomed, size)),
    [size, zoomed, elevation],
  );

  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const measure = () => setSize({ widthPx: element.clientWidth, heightPx: element.clientHeight });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  useEffect(() => {
    const on = canvas.current;
    const ctx = on?.getContext('2d');
    if (!on || !ctx || view === null) return;
    const dense = window.devicePixelRatio || 1;
    on.width = Math.round(view.widthPx * dense);
    on.height = Math.round(view.heightPx * dense);
    patterns.current ??= makePatterns(ctx);
    ctx.setTransform(dense, 0, 0, dense, 0, 0);
    drawElevation2d(ctx, {
      elevation,
      row: 1,
      codes: NO_CODES,
      view,
      cursor: null,
      figureOf: () => null,
      standingAt: () => null,
      heightLabel: (mm) => formatLength(mm, units, 'up'),
      patterns: patterns.current,
    });
    writeLabels(ctx, elevation, view, labels);
  }, [elevation, labels, view, units]);

  const change = (to: (view: Viewport) => Viewport) => view !== null && setZoomed(to(view));
  const middle = view === null ? { x: 0, y: 0 } : { x: view.widthPx / 2, y: view.heightPx / 2 };
  const pointers = usePointers(box, {
    onPan: (by) => change((now) => panBy(elevation, now, by)),
    onZoom: (factor, at) => change((now) => zoomAbout(elevation, now, factor, at)),
    onHover: () => {},
    onTap: (at) => {
      const cell = view === null ? null : cellAt(elevation, 1, view, at);
      if (cell === null || onPick === undefined) return;
      for (const bay of elevation.bays)
        for (const band of bay.bands)
          if (cell >= band.firstPlace && cell < band.firstPlace + band.count)
            onPick({ bay: band.bay, level: run.bays[band.bay]!.levels[band.level]!.level });
    },
  });
  return (
    <div className={styles.elevation}>
      <div
        ref={box}
        className={styles.canvasBox}
        role="img"
        aria-label={`Elevation of run ${run.id}: ${runInWords(run)}`}
        {...pointers}
      >
        <canvas ref={canvas} className={styles.canvas} />
      </div>
      <div className={styles.zoom}>
        <button
          type="button"
          aria-label="Zoom out"
          onClick={() => change((now) => zoomAbout(elevation, now, 1 / ZOOM_STEP, middle))}
        >
          −
        </button>
        <button
          type="button"
          aria-label="Zoom in"
          onClick={() => change((now) => zoomAbout(elevation, now, ZOOM_STEP, middle))}
        >
          +
        </button>
        <button
          type="button"
          aria-label="Move the view left"
          onClick={() => change((now) => panBy(elevation, now, { x: middle.x, y: 0 }))}
        >
          ◂
        </button>
        <button
          type="button"
          aria-label="Move the view right"
          onClick={() => change((now) => panBy(elevation, now, { x: -middle.x, y: 0 }))}
        >
          ▸
        </button>
        <button type="button" onClick={() => setZoomed('whole')}>
          Whole run
        </button>
        <p className="soft dense">{runInWords(run)}</p>
      </div>
    </div>
  );
}

/** Narrower than this the whole of a run is too small to read: its height is shown first. */
const NARROW_PX = 600;

/** To begin with the whole run; once zoomed the same part of it, as far as a changed run still has it. */
function viewOf(
  elevation: Elevation,
  zoomed: Viewport | 'to-begin' | 'whole',
  size: { widthPx: number; heightPx: number },
): Viewport {
  const whole = viewWhole(elevation, size);
  if (zoomed === 'to-begin') return size.widthPx < NARROW_PX ? viewHeight(elevation, size) : whole;
  if (zoomed === 'whole') return whole;
  const pxPerMm = Math.max(zoomed.pxPerMm, whole.pxPerMm);
  return panBy(elevation, { ...zoomed, ...size, pxPerMm }, { x: 0, y: 0 });
}

/** The id of each location that is large enough to read it in. */
function writeLabels(
  ctx: CanvasRenderingContext2D,
  elevation: Elevation,
  view: Viewport,
  labels: readonly string[],
) {
  ctx.font = '500 11px "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif';
  ctx.fillStyle = '#46545f';
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  for (const { cell, x, y, width, height } of paintCells(elevation, 1, NO_CODES, view)) {
    const label = cell === -1 ? undefined : labels[cell];
    if (label === undefined || height < 16 || ctx.measureText(label).width > width - 4) continue;
    ctx.fillText(label, x + width / 2, y + height / 2);
  }
}
