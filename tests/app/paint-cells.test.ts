import { describe, expect, it } from 'vitest';
import { firstPlaces } from '../../app/_parts/first-places.ts';
import { moveCursor, otherRow } from '../../app/racks/cell-cursor.ts';
import { drawElevation, type Elevation, firstBayBeyond } from '../../app/racks/elevation.ts';
import { cellAt, NO_CODE, paintCells } from '../../app/racks/paint-cells.ts';
import {
  mmAt,
  panBy,
  pxX,
  pxY,
  reveal,
  viewHeight,
  viewWhole,
  wholeZoom,
  zoomAbout,
} from '../../app/racks/viewport.ts';
import { makeBay, makeFrame, makeIndex, makeLevel, makeRun } from '../site-builder.ts';

const size = { widthPx: 1280, heightPx: 600 };

function longRun(bays: number, firstPlace = 0): Elevation {
  const run = makeRun({
    frames: Array.from({ length: bays + 1 }, (_, at) => makeFrame({ id: `f${at}` })),
    bays: Array.from({ length: bays }, (_, at) => makeBay(`b${at}`)),
  });
  return drawElevation(run, firstPlace);
}

const doubleDeep = drawElevation(
  makeRun({
    bays: [
      makeBay('a1', {
        levels: [
          makeLevel('a1', 0),
          makeLevel('a1', 1, { depthPositions: 2, locations: ['f1', 'f2', 'r1', 'r2'] }),
        ],
      }),
      makeBay('a2'),
    ],
  }),
  0,
);

describe('drawElevation', () => {
  it('stands two 2700 mm bays between three 100 mm uprights', () => {
    // 100 + 2700 + 100 + 2700 + 100
    const elevation = longRun(2);
    expect(elevation.widthMm).toBe(5700);
    expect(elevation.frames.map((frame) => frame.xMm)).toEqual([0, 2800, 5600]);
    expect(elevation.bays.map((bay) => bay.xMm)).toEqual([100, 2900]);
  });

  it('makes a cell as high as the opening under the next beam, and on the top level as high as the one below', () => {
    // beams at 1500 and 3000 mm, 120 mm high: openings of 1500 - 120 = 1380
    const heights = longRun(1).bays[0]!.bands.map((band) => [band.yMm, band.heightMm]);
    expect(heights).toEqual([
      [0, 1380],
      [1500, 1380],
      [3000, 1380],
    ]);
    expect(longRun(1).heightMm).toBe(4380);
  });

  it('numbers locations in site order, the rear row after the front row of its level', () => {
    expect(doubleDeep.bays[0]!.bands.map(({ row, firstPlace, count }) => [row, firstPlace, count])).toEqual([
      [1, 0, 2],
      [1, 2, 2],
      [2, 4, 2],
    ]);
    expect(doubleDeep.bays[1]!.bands[0]!.firstPlace).toBe(6);
    expect([longRun(2).doubleDeep, doubleDeep.doubleDeep]).toEqual([false, true]);
  });

  it('agrees with the site index on which location has which number', () => {
    const index = makeIndex({
      runs: [makeRun(), makeRun({ id: 'b', bays: [makeBay('b1'), makeBay('b2')] })],
    });
    const start = firstPlaces(index).get('b')!;
    const ids = [...index.places.keys()];
    const elevation = drawElevation(index.site.runs[1]!, start);
    const band = elevation.bays[1]!.bands[2]!;
    expect(ids[band.firstPlace + 1]).toBe('b2-2-2');
    expect(elevation.placeCount + start).toBe(ids.length);
  });

  it('draws a run whose bays hold no level at all', () => {
    const bare = drawElevation(
      makeRun({ bays: [makeBay('a1', { levels: [] }), makeBay('a2', { levels: [] })] }),
      0,
    );
    expect(bare.placeCount).toBe(0);
    expect(paintCells(bare, 1, new Uint8Array(), viewWhole(bare, size))).toEqual([]);
  });
});

describe('firstBayBeyond', () => {
  const bays = longRun(2).bays; // 100..2800 and 2900..5600
  it.each([
    { xMm: 2799, bay: 0 },
    { xMm: 2800, bay: 1 },
    { xMm: 2801, bay: 1 },
    { xMm: 5600, bay: 2 },
  ])('says bay $bay for a drawing that starts at $xMm mm', ({ xMm, bay }) => {
    expect(firstBayBeyond(bays, xMm)).toBe(bay);
  });
});

describe('paintCells', () => {
  it('gives each cell a rectangle of its own while cells can be told apart', () => {
    const run = longRun(2);
    const codes = Uint8Array.from({ length: 12 }, (_, at) => at % 4);
    const runs = paintCells(run, 1, codes, viewHeight(run, size));
    expect(runs.map(({ cell, code }) => [cell, code])).toEqual([...codes].map((code, cell) => [cell, code]));
  });

  it('draws only what the window shows', () => {
    const run = longRun(200);
    const seen = paintCells(run, 1, new Uint8Array(run.placeCount), viewHeight(run, size));
    expect(seen.length).toBeGreaterThan(6);
    expect(seen.length).toBeLessThan(200);
    expect(seen.every((entry) => entry.x < size.widthPx && entry.x + entry.width > 0)).toBe(true);
  });

  it('merges equal neighbours once a cell is narrower than 4 px', () => {
    const run = longRun(100); // 2800 mm a bay: whole run of 280 100 mm in 1200 px, a cell of 1350 mm is 5.8 px
    const narrow = { ...viewWhole(run, size), pxPerMm: 3.9 / 1350 };
    const wide = { ...narrow, pxPerMm: 4.1 / 1350 };
    const codes = new Uint8Array(run.placeCount);
    expect(paintCells(run, 1, codes, wide)).toHaveLength(600);
    expect(paintCells(run, 1, codes, narrow)).toHaveLength(300);
  });

  it('never draws over trouble: one refuse among 50 000 cells is still a rectangle', () => {
    const run = longRun(8334); // 50 004 locations
    const codes = new Uint8Array(run.placeCount);
    codes[31_337] = 3;
    const runs = paintCells(run, 1, codes, viewWhole(run, size));
    expect(runs.filter((entry) => entry.code === 3)).toHaveLength(1);
    expect(runs.length).toBeLessThanOrEqual(3 * size.widthPx);
  });

  it('does not let a location without an answer hide one that has one', () => {
    const run = longRun(8334);
    const codes = new Uint8Array(run.placeCount).fill(NO_CODE);
    codes[12] = 0;
    const runs = paintCells(run, 1, codes, viewWhole(run, size));
    expect(runs.filter((entry) => entry.code === 0)).toHaveLength(1);
  });

  it('shows the rear row only where a level is two deep', () => {
    const codes = new Uint8Array(12);
    const rear = paintCells(doubleDeep, 2, codes, viewHeight(doubleDeep, size));
    expect(rear.map((entry) => entry.cell)).toEqual([4, 5]);
  });

  it('leaves cells whose codes have not come yet without an answer', () => {
    const run = longRun(1);
    const runs = paintCells(run, 1, new Uint8Array(), viewHeight(run, size));
    expect(runs.every((entry) => entry.code === NO_CODE)).toBe(true);
  });
});

describe('cellAt', () => {
  const run = longRun(2);
  const view = viewHeight(run, size);
  const at = (xMm: number, yMm: number) => cellAt(run, 1, view, { x: pxX(view, xMm), y: pxY(view, yMm) });

  it('finds every cell at its middle', () => {
    for (const bay of run.bays)
      for (const band of bay.bands)
        for (let column = 0; column < band.count; column++)
          expect(at(band.xMm + (column + 0.5) * band.cellMm, band.yMm + band.heightMm / 2)).toBe(
            band.firstPlace + column,
          );
  });

  it.each([
    { where: 'an upright', xMm: 2850, yMm: 500 },
    { where: 'a beam', xMm: 500, yMm: 1440 },
    { where: 'the air above', xMm: 500, yMm: 4400 },
    { where: 'the floor before the run', xMm: 50, yMm: 100 },
    { where: 'the floor behind the run', xMm: 5650, yMm: 100 },
  ])('finds none on $where', ({ xMm, yMm }) => {
    expect(at(xMm, yMm)).toBeNull();
  });
});

describe('moveCursor', () => {
  const run = longRun(2); // per bay: floor 0 1, first beam 2 3, second beam 4 5; then 6..11
  it.each([
    { from: 0, direction: 'right' as const, to: 1 },
    { from: 1, direction: 'right' as const, to: 6 },
    { from: 7, direction: 'right' as const, to: 7 },
    { from: 8, direction: 'left' as const, to: 3 },
    { from: 0, direction: 'left' as const, to: 0 },
    { from: 1, direction: 'up' as const, to: 3 },
    { from: 5, direction: 'up' as const, to: 5 },
    { from: 9, direction: 'down' as const, to: 7 },
    { from: 6, direction: 'down' as const, to: 6 },
  ])('leads from $from $direction to $to', ({ from, direction, to }) => {
    expect(moveCursor(run, 1, from, direction)).toBe(to);
  });

  it('changes between the front and the rear location of a level, and stays on a level one deep', () => {
    expect([otherRow(doubleDeep, 3), otherRow(doubleDeep, 5), otherRow(doubleDeep, 0)]).toEqual([5, 3, 0]);
  });
});

describe('the viewport', () => {
  const run = longRun(40);
  it('keeps the point under the finger where it is while zooming', () => {
    const view = panBy(run, zoomAbout(run, viewWhole(run, size), 60, { x: 640, y: 300 }), { x: -10, y: 25 });
    const finger = { x: 500, y: 320 };
    const before = mmAt(view, finger);
    const after = mmAt(zoomAbout(run, view, 1.25, finger), finger);
    expect(after.xMm).toBeCloseTo(before.xMm, 6);
    expect(after.yMm).toBeCloseTo(before.yMm, 6);
  });

  it('zooms out no further than the whole run', () => {
    const whole = viewWhole(run, size);
    expect(zoomAbout(run, whole, 0.5, { x: 0, y: 0 }).pxPerMm).toBe(wholeZoom(run, size));
  });

  it('does not pan past the ends of the run', () => {
    const view = viewHeight(run, size);
    expect(panBy(run, view, { x: 1e9, y: 0 }).xMm).toBe(0);
    const end = panBy(run, view, { x: -1e9, y: 0 });
    expect(pxX(end, run.widthMm)).toBeCloseTo(size.widthPx - 16, 6);
  });

  it('pans just far enough to reveal a cell', () => {
    const view = viewHeight(run, size);
    const far = { xMm: 100_000, yMm: 0, widthMm: 1350, heightMm: 1380 };
    const seen = reveal(run, view, far);
    expect(pxX(seen, far.xMm + far.widthMm)).toBeCloseTo(size.widthPx - 16, 6);
    expect(reveal(run, seen, far)).toEqual(seen);
  });
});
