import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptMeasure, NO_MEASURE, typedMeasure } from '../../lib/entry/measure.ts';
import { cellsOfText, pasteBlock } from '../../lib/entry/paste-block.ts';
import { blankBlock, type PlateBlock, plateDraftOf, readPlate } from '../../lib/entry/plate-draft.ts';
import { MASTS, type PlateRating } from '../../lib/model/truck.ts';

const rating = (
  liftHeightMm: number,
  loadCentreMm: number,
  capacityKg: number,
  more: Partial<PlateRating> = {},
) => ({
  mast: 'vertical' as const,
  attachment: null,
  liftHeightMm,
  loadCentreMm,
  capacityKg,
  ...more,
});

/** Few heights and centres, so that points are stated twice; awkward masses, so that rounding would show. */
const anyRatings = fc.array(
  fc.record({
    mast: fc.constantFrom(...MASTS),
    attachment: fc.constantFrom(null, 'side shift', ' clamp '),
    liftHeightMm: fc.constantFrom(3000, 3048.0000000001, 4572, 6000),
    loadCentreMm: fc.constantFrom(500, 600, 609.6),
    capacityKg: fc.double({ min: 1e-3, max: 1e7, noNaN: true }),
  }),
  { maxLength: 24 },
);

describe('the lines of a plate as grids', () => {
  it('and back are the same lines in the same order, to the last bit, stated twice or not', () => {
    fc.assert(
      fc.property(anyRatings, (ratings) => {
        const reading = readPlate(plateDraftOf(ratings));
        expect(reading.ratings).toEqual(ratings);
        expect(reading.faults).toEqual([]);
        expect(reading.idle).toEqual([]);
      }),
      { seed: 20260302, numRuns: 300 },
    );
  });

  it('stand highest first and shortest centre first, one grid for each mast position and attachment', () => {
    const blocks = plateDraftOf([
      rating(3000, 700, 1400),
      rating(6000, 600, 1000),
      rating(3000, 600, 1600),
      rating(3000, 600, 1300, { mast: 'forward-tilt' }),
    ]);
    expect(blocks.map(({ mast, attachment }) => [mast, attachment])).toEqual([
      ['vertical', null],
      ['forward-tilt', null],
    ]);
    expect(blocks[0]!.loadCentres.map(({ value }) => value)).toEqual([600, 700]);
    expect(blocks[0]!.rows.map(({ liftHeight }) => liftHeight.value)).toEqual([6000, 3000]);
    expect(blocks[0]!.rows.map(({ cells }) => cells.map(({ value }) => value))).toEqual([
      [1000, null],
      [1600, 1400],
    ]);
  });

  it('show a second line for the same point in a row of its own', () => {
    const [block] = plateDraftOf([rating(3000, 600, 1600), rating(3000, 600, 1500)]);
    expect(block!.rows.map(({ liftHeight, cells }) => [liftHeight.value, cells[0]!.value])).toEqual([
      [3000, 1600],
      [3000, 1500],
    ]);
  });
});

describe('the grids of a plate as lines', () => {
  const block = (rows: [number | null, (number | null)[]][], centres: (number | null)[]): PlateBlock => ({
    key: 1,
    mast: 'vertical',
    attachment: null,
    loadCentres: centres.map(keptMeasure),
    rows: rows.map(([height, cells]) => ({
      liftHeight: keptMeasure(height),
      cells: cells.map((value) => ({ ...keptMeasure(value), at: null })),
    })),
  });

  it('leave out an empty cell: the plate states nothing there, never zero', () => {
    expect(readPlate([block([[3000, [1600, null]]], [500, 600])]).ratings).toEqual([rating(3000, 500, 1600)]);
  });

  it('read from the top and from the left where all is new', () => {
    const { ratings } = readPlate([
      block(
        [
          [6000, [1000, 900]],
          [3000, [1600, 1400]],
        ],
        [500, 600],
      ),
    ]);
    expect(ratings.map(({ capacityKg }) => capacityKg)).toEqual([1000, 900, 1600, 1400]);
  });

  it('want a heading wherever a capacity is stated', () => {
    const { ratings, faults } = readPlate([
      block(
        [
          [null, [1600]],
          [3000, [null]],
        ],
        [null],
      ),
    ]);
    expect(ratings).toEqual([]);
    expect(faults).toEqual([
      { place: { block: 0, row: -1, column: 0 }, fault: 'heading-needed' },
      { place: { block: 0, row: 0, column: -1 }, fault: 'heading-needed' },
    ]);
  });

  it('tell which headings state nothing and are not kept', () => {
    const { idle } = readPlate([
      block(
        [
          [6000, [null, null]],
          [3000, [1600, null]],
        ],
        [500, 600],
      ),
    ]);
    expect(idle).toEqual([
      { block: 0, row: -1, column: 1 },
      { block: 0, row: 0, column: -1 },
    ]);
  });

  it('name the cell that cannot be read', () => {
    const one = block([[3000, [1600]]], [500]);
    const cell = { ...typedMeasure(NO_MEASURE, '1,600', 'mass', 'metric'), at: null };
    const { ratings, faults } = readPlate([{ ...one, rows: [{ ...one.rows[0]!, cells: [cell] }] }]);
    expect(ratings).toEqual([]);
    expect(faults).toEqual([{ place: { block: 0, row: 0, column: 0 }, fault: 'unread' }]);
  });
});

describe('a block from a spreadsheet', () => {
  it.each([
    [
      'tabs and lines',
      '1600\t1400\n1000\t900\n',
      [
        ['1600', '1400'],
        ['1000', '900'],
      ],
    ],
    [
      'line ends of any system',
      '1\t2\r\n3\t4\r5\t6',
      [
        ['1', '2'],
        ['3', '4'],
        ['5', '6'],
      ],
    ],
    [
      'dashes for nothing stated',
      '1600\t-\n\u2013\t\u2014',
      [
        ['1600', ''],
        ['', ''],
      ],
    ],
    ['a single column', '1600\n1000', [['1600'], ['1000']]],
    ['rows of unlike length', '1\t2\n3', [['1', '2'], ['3']]],
  ])('is read: %s', (_why, text, cells) => {
    expect(cellsOfText(text)).toEqual(cells);
  });

  it('is none when it is one value', () => {
    expect(cellsOfText('1600')).toBeNull();
    expect(cellsOfText('1600\n')).toBeNull();
    expect(cellsOfText('')).toBeNull();
  });

  const blank = blankBlock([], { mast: 'vertical', attachment: null }, 1, 1);

  it('fills from the cell it is pasted at and makes the grid larger as needed', () => {
    const pasted = pasteBlock(
      blank,
      [
        ['1600', '1400'],
        ['1000', ''],
      ],
      { row: 0, column: 0 },
      'metric',
    );
    expect(pasted.rows.map(({ cells }) => cells.map(({ value }) => value))).toEqual([
      [1600, 1400],
      [1000, null],
    ]);
    expect(pasted.loadCentres).toHaveLength(2);
  });

  it('fills headings when it is pasted at a heading', () => {
    const pasted = pasteBlock(
      blank,
      [
        ['6000', '1000'],
        ['3000', '1600'],
      ],
      { row: 0, column: -1 },
      'metric',
    );
    expect(pasted.rows.map(({ liftHeight, cells }) => [liftHeight.value, cells[0]!.value])).toEqual([
      [6000, 1000],
      [3000, 1600],
    ]);
  });

  it('is a whole plate when its first cell is no number, wherever it is pasted', () => {
    const text = 'lift\t500\t600\n3000\t1600\t1400\n6000\t1000\t900';
    const pasted = pasteBlock(blank, cellsOfText(text)!, { row: 0, column: 0 }, 'metric');
    expect(readPlate([pasted]).ratings).toEqual([
      rating(3000, 500, 1600),
      rating(3000, 600, 1400),
      rating(6000, 500, 1000),
      rating(6000, 600, 900),
    ]);
  });

  it('is read in the shown units: 5000 lb at 24 in to 130 in', () => {
    const pasted = pasteBlock(
      blank,
      [
        ['', '24'],
        ['130', '5000'],
      ],
      { row: 0, column: 0 },
      'lb-in',
    );
    expect(readPlate([pasted]).ratings).toEqual([rating(3302, 609.6, 2267.96185)]);
  });

  it('keeps what cannot be read in its cell and names it', () => {
    const pasted = pasteBlock(blank, [['1,600', 'about 900']], { row: 0, column: 0 }, 'metric');
    const unread = readPlate([pasted]).faults.filter(({ fault }) => fault === 'unread');
    expect(unread.map(({ place, fault }) => [place.column, fault])).toEqual([
      [0, 'unread'],
      [1, 'unread'],
    ]);
    expect(pasted.rows[0]!.cells[1]!.typed?.text).toBe('about 900');
  });

  it('copied from a grid and pasted gives the same lines', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 12_000 }), { minLength: 1, maxLength: 6 }),
        fc.uniqueArray(fc.integer({ min: 100, max: 1500 }), { minLength: 1, maxLength: 5 }),
        fc.infiniteStream(fc.option(fc.integer({ min: 1, max: 90_000 }), { freq: 3 })),
        (heights, centres, masses) => {
          const cells = heights.map(() => centres.map(() => masses.next().value as number | null));
          const lines = [['', ...centres], ...heights.map((height, at) => [height, ...cells[at]!])];
          const text = lines.map((line) => line.map((cell) => cell ?? '').join('\t')).join('\n');
          const { ratings } = readPlate([
            pasteBlock(blank, cellsOfText(text)!, { row: 0, column: 0 }, 'metric'),
          ]);
          const wanted = heights.flatMap((height, row) =>
            centres.flatMap((centre, column) => {
              const capacity = cells[row]![column]!;
              return capacity === null ? [] : [rating(height, centre, capacity)];
            }),
          );
          expect(ratings).toEqual(wanted);
        },
      ),
      { seed: 20260302 },
    );
  });
});
