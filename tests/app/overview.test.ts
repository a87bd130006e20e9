import { describe, expect, it } from 'vitest';
import type { RacksAnswer } from '../../app/_parts/racks-answer.ts';
import { cellSize } from '../../app/(overview)/cell-size.ts';
import { readOverviewQuery, writeOverviewQuery } from '../../app/(overview)/overview-query.ts';
import { paintStrip } from '../../app/(overview)/paint-strip.ts';
import { placeUnder, stripOf } from '../../app/(overview)/strip.ts';
import { codesOf, countCodes, worstPlaces } from '../../app/(overview)/trouble.ts';
import { NO_ANSWER } from '../../lib/grid/question.ts';
import { makeBay, makeFrame, makeIndex, makeLevel, makeRun } from '../site-builder.ts';

const run = makeRun();
const lines = (strip: ReturnType<typeof stripOf>) =>
  Array.from({ length: strip.lines }, (_, line) => [
    ...strip.placeAt.slice(line * strip.columns, (line + 1) * strip.columns),
  ]);

describe('stripOf', () => {
  it('lays the floor at the bottom and the bays side by side', () => {
    expect(lines(stripOf(run, 100))).toEqual([
      [104, 105, 110, 111],
      [102, 103, 108, 109],
      [100, 101, 106, 107],
    ]);
  });

  it('spreads a level with fewer positions over the width of its bay', () => {
    const wide = makeBay('a1', {
      levels: [makeLevel('a1', 0), makeLevel('a1', 1, { locations: ['x', 'y', 'z', 'w'] })],
    });
    expect(
      lines(stripOf(makeRun({ bays: [wide], frames: [makeFrame(), makeFrame({ id: 'f2' })] }), 0)),
    ).toEqual([
      [2, 3, 4, 5],
      [0, 0, 1, 1],
    ]);
  });

  it('lays the rear row of a level two deep above its front row', () => {
    const deep = makeBay('a1', {
      levels: [
        makeLevel('a1', 0),
        makeLevel('a1', 1, { depthPositions: 2, locations: ['f1', 'f2', 'r1', 'r2'] }),
      ],
    });
    expect(
      lines(stripOf(makeRun({ bays: [deep], frames: [makeFrame(), makeFrame({ id: 'f2' })] }), 0)),
    ).toEqual([
      [4, 5],
      [2, 3],
      [0, 1],
      [0, 1],
    ]);
  });

  it('leaves gaps where a bay has fewer levels than its neighbours', () => {
    const low = makeBay('a2', { levels: [makeLevel('a2', 0)] });
    expect(lines(stripOf(makeRun({ bays: [makeBay('a1'), low] }), 0))[0]).toEqual([4, 5, -1, -1]);
  });
});

describe('placeUnder', () => {
  const strip = stripOf(run, 0);
  const cell = { widthPx: 10, heightPx: 5 };
  it.each([
    { x: 0, y: 14, place: 0 },
    { x: 9, y: 10, place: 0 },
    { x: 10, y: 10, place: 1 },
    { x: 39, y: 0, place: 11 },
    { x: 40, y: 0, place: null },
    { x: 0, y: 15, place: null },
    { x: -1, y: 0, place: null },
  ])('finds $place at $x, $y', ({ x, y, place }) => expect(placeUnder(strip, cell, { x, y })).toBe(place));
});

describe('paintStrip', () => {
  const strip = stripOf(run, 0);
  const codes = new Uint8Array(12);
  codes[0] = 3;
  const pixel = (pixels: Uint8ClampedArray, width: number, x: number, y: number) =>
    [...pixels.slice((y * width + x) * 4, (y * width + x) * 4 + 4)].join();

  it('gives one pixel a cell at the smallest size, and trouble its own colour', () => {
    const pixels = paintStrip(strip, codes, { widthPx: 1, heightPx: 1 });
    expect(pixels).toHaveLength(4 * 3 * 4);
    const seen = new Set(Array.from({ length: 12 }, (_, at) => pixel(pixels, 4, at % 4, Math.floor(at / 4))));
    expect(seen.size).toBe(2);
    expect(pixel(pixels, 4, 0, 2)).not.toBe(pixel(pixels, 4, 1, 2));
  });

  it('hatches refuse cells once they are large enough, so that they differ without colour', () => {
    const pixels = paintStrip(strip, codes, { widthPx: 8, heightPx: 8 });
    const inCell = new Set([0, 1, 2, 3].map((x) => pixel(pixels, 32, x, 17)));
    expect(inCell.size).toBe(2);
  });

  it('draws each verdict darker than the one before, so that grey keeps the order', () => {
    const codesInOrder = Uint8Array.from({ length: 12 }, (_, at) => at);
    const pixels = paintStrip(strip, codesInOrder, { widthPx: 1, heightPx: 1 });
    const light = [0, 1, 2, 3].map((code) => {
      const at = strip.placeAt.indexOf(code) * 4;
      return 0.299 * pixels[at]! + 0.587 * pixels[at + 1]! + 0.114 * pixels[at + 2]!;
    });
    expect(light).toEqual(light.toSorted((a, b) => b - a));
    for (let at = 1; at < light.length; at++) expect(light[at - 1]! - light[at]!).toBeGreaterThan(20);
  });
});

describe('cellSize', () => {
  const strips = [{ ...stripOf(run, 0), columns: 150 }];
  it('lets two of the longest runs stand side by side', () => {
    expect(cellSize(strips, 1024, 2, 24)).toEqual({ widthPx: 3, heightPx: 4 }); // (1024 - 24) / 2 / 150 = 3.3
  });
  it('never draws less than a pixel', () => expect(cellSize(strips, 100, 2, 24).widthPx).toBe(1));
  it('does not blow up a short run', () => expect(cellSize([stripOf(run, 0)], 2000, 2, 24).widthPx).toBe(13));
});

/** Five stocked places: two trucks, one truck, none proven, none, none; then an empty one. */
const index = makeIndex();
const answer: RacksAnswer = {
  index,
  places: [...index.places.values()],
  summary: {
    best: Uint8Array.from([0, 1, 2, 3, 3, NO_ANSWER]),
    bestTruck: Int16Array.from([0, 1, 0, 0, 0, -1]),
    bestMostKg: Float64Array.from([2000, 1000, -1, 700, 900, -1]),
    bestRule: Uint8Array.from([0, 0, 0, 0, 0, NO_ANSWER]),
    clear: Uint16Array.from([2, 0, 0, 0, 0, 0]),
    thin: Uint16Array.from([0, 1, 0, 0, 0, 0]),
  },
  trucks: ['reach-1', 'counter-1'],
  assessedKg: Float64Array.from([800, 950, 800, 800, 1200, -1]),
};

describe('codesOf', () => {
  it('counts trucks that are clear or thin: none, none proven, one, two or more', () => {
    expect([...codesOf(answer, 'trucks')]).toEqual([0, 1, 2, 3, 3, NO_ANSWER]);
  });
  it('calls a place that one truck is clear for a place of one truck only', () => {
    const one = { ...answer, summary: { ...answer.summary, clear: Uint16Array.from([1, 0, 0, 0, 0, 0]) } };
    expect(codesOf(one, 'trucks')[0]).toBe(1);
    expect(codesOf(one, 'take-down')[0]).toBe(0);
  });
  it('is counted with the places that nothing is asked of', () => {
    expect(countCodes(codesOf(answer, 'trucks'), 0, 6)).toEqual({ each: [1, 1, 1, 2], none: 1 });
  });
});

describe('worstPlaces', () => {
  it('puts the worst first, and of those the one that is furthest over', () => {
    // spare: 700 - 800 = -100 and 900 - 1200 = -300
    expect(worstPlaces(answer, codesOf(answer, 'trucks'), 9)).toEqual({ places: [4, 3, 2, 1], inAll: 4 });
  });
  it('says how many there are in all when it lists fewer', () => {
    expect(worstPlaces(answer, codesOf(answer, 'trucks'), 1)).toEqual({ places: [4], inAll: 4 });
  });
});

describe('the address of the overview', () => {
  it.each([
    { look: 'trucks' as const, time: { kind: 'now' as const } },
    { look: 'put-back' as const, time: { kind: 'at' as const, instant: '2026-03-02T06:30:00Z' } },
    { look: 'take-down' as const, time: { kind: 'not-judged' as const } },
  ])('is read back as what was written (%#)', (query) => {
    const raw = Object.fromEntries(new URLSearchParams(writeOverviewQuery(query)));
    expect(readOverviewQuery(raw)).toEqual({ query, refused: [] });
  });
});
