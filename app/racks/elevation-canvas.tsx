'use client';

import { type KeyboardEvent, type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { bandOf, boxOf, endCell, firstCell, moveCursor, otherRow } from '@/app/racks/cell-cursor.ts';
import { type Drawing, drawElevation2d, makePatterns, type Patterns } from '@/app/racks/draw-elevation.ts';
import type { Elevation } from '@/app/racks/elevation.ts';
import styles from '@/app/racks/elevation-canvas.module.css';
import { cellAt } from '@/app/racks/paint-cells.ts';
import { usePointers } from '@/app/racks/use-pointers.ts';
import {
  heightToReadPx,
  middleOf,
  panBy,
  resizeView,
  reveal,
  type Viewport,
  viewHeight,
  viewToBegin,
  viewWhole,
  zoomAbout,
} from '@/app/racks/viewport.ts';

const ZOOM_STEP = 1.4;

type Props = Pick<Drawing, 'figureOf' | 'standingAt' | 'heightLabel' | 'codes' | 'row'> & {
  elevation: Elevation;
  cursor: number | null;
  /** Words for a cell, said as the cursor moves and shown as the pointer passes. */
  wordsOf: (cell: number) => string;
  onMove: (cell: number) => void;
  onOpen: (cell: number) => void;
  onRow: (row: 1 | 2, cell: number | null) => void;
  figureChoice: ReactNode;
};

/** A run drawn to scale: pan and zoom by pointer, touch, wheel and keys; a cursor that keys move; a tap opens the working. */
export function ElevationCanvas(props: Props) {
  const { elevation, cursor, onMove, onOpen, onRow, row } = props;
  const frame = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const patterns = useRef<Patterns | null>(null);
  const [seen, setSeen] = useState<{ of: Elevation; view: Viewport } | null>(null);
  const [hovered, setHovered] = useState<number | null>(null);
  const view = seen !== null && seen.of === elevation ? seen.view : null;

  useLayoutEffect(() => {
    const box = frame.current;
    if (box === null) return;
    const measure = () => {
      const size = { widthPx: box.clientWidth, heightPx: box.clientHeight };
      if (size.widthPx === 0 || size.heightPx === 0) return;
      setSeen((before) => {
        if (before !== null && before.of === elevation)
          return { of: elevation, view: resizeView(elevation, before.view, size) };
        return { of: elevation, view: viewToBegin(elevation, size) };
      });
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, [elevation]);

  const change = (to: (view: Viewport) => Viewport) =>
    setSeen((before) => before && { of: before.of, view: to(before.view) });

  // the cursor is brought into view when it moves, not when the view does
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    const box = cursor === null ? null : boxOf(elevation, cursor);
    if (box !== null) change((now) => reveal(elevation, now, box));
  }, [cursor, elevation, view === null]);

  useLayoutEffect(() => {
    const on = canvas.current;
    const ctx = on?.getContext('2d');
    if (!on || !ctx || view === null) return;
    const dense = window.devicePixelRatio || 1;
    const [width, height] = [Math.round(view.widthPx * dense), Math.round(view.heightPx * dense)];
    if (on.width !== width || on.height !== height) {
      on.width = width;
      on.height = height;
    }
    patterns.current ??= makePatterns(ctx);
    ctx.setTransform(dense, 0, 0, dense, 0, 0);
    drawElevation2d(ctx, { ...props, view, patterns: patterns.current });
  });

  const cellUnder = (at: { x: number; y: number }) =>
    view === null ? null : cellAt(elevation, row, view, at);
  const pointers = usePointers(frame, {
    onPan: (by) => change((now) => panBy(elevation, now, by)),
    onZoom: (factor, at) => change((now) => zoomAbout(elevation, now, factor, at)),
    onTap: (at) => {
      const cell = cellUnder(at);
      if (cell !== null) onOpen(cell);
    },
    onHover: (at) => setHovered(at === null ? null : cellUnder(at)),
  });

  const zoom = (factor: number) =>
    change((now) =>
      zoomAbout(elevation, now, factor, middleOf(now, cursor === null ? null : boxOf(elevation, cursor))),
    );
  const whole = () => change((now) => viewWhole(elevation, now));
  const tall = () => change((now) => viewHeight(elevation, now));

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const at = cursor ?? firstCell(elevation, row);
    if (at === null) return;
    const direction = ARROWS[event.key];
    if (direction !== undefined) onMove(cursor === null ? at : moveCursor(elevation, row, at, direction));
    else if (event.key === 'Home') onMove(endCell(elevation, row, at, 'first'));
    else if (event.key === 'End') onMove(endCell(elevation, row, at, 'last'));
    else if (event.key === 'Enter') onOpen(at);
    else if (event.key === '+' || event.key === '=') zoom(ZOOM_STEP);
    else if (event.key === '-') zoom(1 / ZOOM_STEP);
    else if (event.key === '0') whole();
    else if (event.key === 'r' && elevation.doubleDeep) onRow(row === 1 ? 2 : 1, otherRow(elevation, at));
    else return;
    event.preventDefault();
  };

  const said = cursor === null || bandOf(elevation, cursor) === null ? null : props.wordsOf(cursor);
  return (
    <div className={styles.whole}>
      <div className={`${styles.tools} no-print`}>
        {elevation.doubleDeep ? (
          <fieldset className={styles.rows}>
            <legend className="unseen">Row of the double-deep levels</legend>
            <button type="button" aria-pressed={row === 1} onClick={() => onRow(1, cursor)}>
              Front row
            </button>
            <button type="button" aria-pressed={row === 2} onClick={() => onRow(2, cursor)}>
              Rear row
            </button>
          </fieldset>
        ) : null}
        <span className={styles.zoom}>
          <button type="button" onClick={() => zoom(1 / ZOOM_STEP)} aria-label="Zoom out">
            −
          </button>
          <button type="button" onClick={() => zoom(ZOOM_STEP)} aria-label="Zoom in">
            +
          </button>
          <button type="button" onClick={whole}>
            Whole run
          </button>
          <button type="button" onClick={tall}>
            Full height
          </button>
        </span>
        {props.figureChoice}
      </div>
      <div
        ref={frame}
        className={styles.frame}
        style={{ maxHeight: heightToReadPx(elevation) }}
        role="application"
        aria-label={`Elevation of run ${elevation.runId}`}
        aria-describedby="elevation-keys"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys
        tabIndex={0}
        onKeyDown={onKeyDown}
        {...pointers}
      >
        <canvas ref={canvas} className={styles.canvas} />
      </div>
      <p className={styles.said}>
        <span aria-live="polite" className={hovered === null ? '' : 'unseen'}>
          {said ?? 'Tap a location, or move there with the arrow keys.'}
        </span>
        {hovered === null ? null : <span aria-hidden="true">{props.wordsOf(hovered)}</span>}
      </p>
      <p id="elevation-keys" className={`${styles.keys} soft dense no-print`}>
        <kbd>←</kbd> <kbd>→</kbd> <kbd>↑</kbd> <kbd>↓</kbd> move · <kbd>Enter</kbd> opens the working ·{' '}
        <kbd>+</kbd> <kbd>−</kbd> zoom · <kbd>0</kbd> whole run · <kbd>Home</kbd> <kbd>End</kbd> ends of the
        run
        {elevation.doubleDeep ? (
          <>
            {' '}
            · <kbd>r</kbd> front or rear row
          </>
        ) : null}
      </p>
    </div>
  );
}

const ARROWS: Record<string, 'left' | 'right' | 'up' | 'down' | undefined> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};
