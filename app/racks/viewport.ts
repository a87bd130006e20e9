import type { Elevation } from '@/app/racks/elevation.ts';

/** What part of an elevation is seen: xMm at the left edge and yMm at the lower edge of a window of px. */
export type Viewport = { xMm: number; yMm: number; pxPerMm: number; widthPx: number; heightPx: number };

/** Room kept around the drawing: for beam heights at the left and bay names below, px. */
export const MARGIN_PX = { left: 76, bottom: 34, top: 22, right: 16 } as const;
/** Nearest zoom: one metre fills this many px. */
const NEAREST_PX_PER_MM = 0.4;

/** A cell of 900 mm is wide enough for mark and figure at this zoom. */
const READABLE_PX_PER_MM = 0.085;

type Size = Pick<Viewport, 'widthPx' | 'heightPx'>;

/** The zoom at which the run's whole height fills the window. */
export function heightZoom(elevation: Elevation, size: Size): number {
  const roomPx = Math.max(size.heightPx - MARGIN_PX.top - MARGIN_PX.bottom, 1);
  return roomPx / elevation.heightMm;
}

/** The zoom at which the whole run is seen. */
export function wholeZoom(elevation: Elevation, size: Size): number {
  const roomPx = Math.max(size.widthPx - MARGIN_PX.left - MARGIN_PX.right, 1);
  return Math.min(roomPx / elevation.widthMm, heightZoom(elevation, size));
}

/** The height of a window that a run fills when its figures can be read: a low run needs no taller one. */
export function heightToReadPx(elevation: Elevation): number {
  return Math.ceil(elevation.heightMm * READABLE_PX_PER_MM) + MARGIN_PX.top + MARGIN_PX.bottom;
}

/** A view of the run's whole height from its left end. */
export function viewHeight(elevation: Elevation, size: Size): Viewport {
  return inside(elevation, { xMm: 0, yMm: 0, ...size, pxPerMm: heightZoom(elevation, size) });
}

/** The view to begin with: the whole height, but a low run no larger than is needed to read its figures. */
export function viewToBegin(elevation: Elevation, size: Size): Viewport {
  const pxPerMm = Math.min(heightZoom(elevation, size), READABLE_PX_PER_MM);
  return inside(elevation, {
    xMm: 0,
    yMm: 0,
    ...size,
    pxPerMm: Math.max(pxPerMm, wholeZoom(elevation, size)),
  });
}

export function viewWhole(elevation: Elevation, size: Size): Viewport {
  return inside(elevation, { xMm: 0, yMm: 0, ...size, pxPerMm: wholeZoom(elevation, size) });
}

/** Zooms by a factor about a point of the window, which stays where it is. */
export function zoomAbout(
  elevation: Elevation,
  view: Viewport,
  factor: number,
  atPx: { x: number; y: number },
): Viewport {
  const least = wholeZoom(elevation, view);
  const pxPerMm = Math.min(Math.max(view.pxPerMm * factor, least), Math.max(NEAREST_PX_PER_MM, least));
  const at = mmAt(view, atPx);
  const up = view.heightPx - MARGIN_PX.bottom - atPx.y;
  return inside(elevation, {
    ...view,
    pxPerMm,
    xMm: at.xMm - (atPx.x - MARGIN_PX.left) / pxPerMm,
    yMm: at.yMm - up / pxPerMm,
  });
}

export function panBy(elevation: Elevation, view: Viewport, byPx: { x: number; y: number }): Viewport {
  return inside(elevation, {
    ...view,
    xMm: view.xMm - byPx.x / view.pxPerMm,
    yMm: view.yMm + byPx.y / view.pxPerMm,
  });
}

/** The same view in a window of another size, still inside the run. */
export function resizeView(elevation: Elevation, view: Viewport, size: Size): Viewport {
  const whole = wholeZoom(elevation, view);
  const atWhole = Math.abs(view.pxPerMm - whole) < whole * 1e-6;
  const atHeight = Math.abs(view.pxPerMm - heightZoom(elevation, view)) < view.pxPerMm * 1e-6;
  const pxPerMm = atWhole
    ? wholeZoom(elevation, size)
    : atHeight
      ? heightZoom(elevation, size)
      : Math.max(view.pxPerMm, wholeZoom(elevation, size));
  return inside(elevation, { ...view, ...size, pxPerMm });
}

/** Pans as little as brings a rectangle of the run wholly into view. */
export function reveal(
  elevation: Elevation,
  view: Viewport,
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number },
): Viewport {
  const spanX = (view.widthPx - MARGIN_PX.left - MARGIN_PX.right) / view.pxPerMm;
  const spanY = (view.heightPx - MARGIN_PX.top - MARGIN_PX.bottom) / view.pxPerMm;
  const xMm = Math.min(Math.max(view.xMm, box.xMm + box.widthMm - spanX), box.xMm);
  const yMm = Math.min(Math.max(view.yMm, box.yMm + box.heightMm - spanY), box.yMm);
  return inside(elevation, { ...view, xMm, yMm });
}

/** The point of the window to zoom about: the middle of a rectangle of the run if it is in view, else of the window. */
export function middleOf(
  view: Viewport,
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number } | null,
): { x: number; y: number } {
  const middle = { x: view.widthPx / 2, y: view.heightPx / 2 };
  if (box === null) return middle;
  const x = pxX(view, box.xMm + box.widthMm / 2);
  const y = pxY(view, box.yMm + box.heightMm / 2);
  const seen = x > 0 && x < view.widthPx && y > 0 && y < view.heightPx;
  return seen ? { x, y } : middle;
}

export function mmAt(view: Viewport, atPx: { x: number; y: number }): { xMm: number; yMm: number } {
  return {
    xMm: view.xMm + (atPx.x - MARGIN_PX.left) / view.pxPerMm,
    yMm: view.yMm + (view.heightPx - MARGIN_PX.bottom - atPx.y) / view.pxPerMm,
  };
}

export function pxX(view: Viewport, xMm: number): number {
  return MARGIN_PX.left + (xMm - view.xMm) * view.pxPerMm;
}

export function pxY(view: Viewport, yMm: number): number {
  return view.heightPx - MARGIN_PX.bottom - (yMm - view.yMm) * view.pxPerMm;
}

function inside(elevation: Elevation, view: Viewport): Viewport {
  const spanX = (view.widthPx - MARGIN_PX.left - MARGIN_PX.right) / view.pxPerMm;
  const spanY = (view.heightPx - MARGIN_PX.top - MARGIN_PX.bottom) / view.pxPerMm;
  return {
    ...view,
    xMm: Math.max(0, Math.min(view.xMm, elevation.widthMm - spanX)),
    yMm: Math.max(0, Math.min(view.yMm, elevation.heightMm - spanY)),
  };
}
