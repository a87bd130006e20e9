import type { DisplayUnits } from '../units/format-quantity.ts';
import { type Measure, typedMeasure } from './measure.ts';
import { blankRow, NO_CELL, type PlateBlock } from './plate-draft.ts';

/** What a spreadsheet shows for "nothing stated"; it leaves a cell empty. */
const DASHES = /^[-\u2013\u2014\u2212]+$/;

/**
 * The cells of a block as it is copied from a spreadsheet: tabs between cells, a line for each row. null for a single
 * value, which is pasted as any text.
 */
export function cellsOfText(text: string): string[][] | null {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n');
  const cells = lines.map((line) => line.split('\t').map(cleaned));
  return cells.length === 1 && cells[0]!.length === 1 ? null : cells;
}

/**
 * A grid after a block was pasted at a place; row -1 and column -1 are the headings. The grid grows as needed. A block
 * whose first cell is no number, with lines and columns besides, is a whole plate: its first line are the load centres,
 * its first column the lift heights, wherever it was pasted.
 */
export function pasteBlock(
  block: PlateBlock,
  cells: readonly (readonly string[])[],
  at: { row: number; column: number },
  units: DisplayUnits,
): PlateBlock {
  const isWhole = cells.length > 1 && (cells[0]?.length ?? 0) > 1 && !/^\d/.test(cells[0]![0]!);
  const first = isWhole ? { row: -1, column: -1 } : at;
  const lastRow = first.row + cells.length - 1;
  const lastColumn = first.column + Math.max(...cells.map((line) => line.length)) - 1;
  const columns = Math.max(block.loadCentres.length, lastColumn + 1);
  const loadCentres = [...block.loadCentres];
  while (loadCentres.length < columns) loadCentres.push(NO_CELL);
  const rows = block.rows.map((row) => ({ ...row, cells: [...row.cells] }));
  for (const row of rows) while (row.cells.length < columns) row.cells.push(NO_CELL);
  while (rows.length <= lastRow) rows.push({ ...blankRow(columns), cells: [...blankRow(columns).cells] });
  for (const [down, line] of cells.entries()) {
    for (const [right, text] of line.entries()) {
      const [row, column] = [first.row + down, first.column + right];
      if (row < 0 && column < 0) continue;
      if (row < 0) loadCentres[column] = typedMeasure(loadCentres[column]!, text, 'length', units);
      else if (column < 0)
        rows[row]!.liftHeight = typedMeasure(rows[row]!.liftHeight as Measure, text, 'length', units);
      else {
        const cell = rows[row]!.cells[column]!;
        rows[row]!.cells[column] = { ...typedMeasure(cell, text, 'mass', units), at: cell.at };
      }
    }
  }
  return { ...block, loadCentres, rows };
}

/** A cell of a spreadsheet with a line break in it comes in quotes; a dash means that nothing is stated. */
function cleaned(cell: string): string {
  const text = cell.trim();
  return DASHES.test(text) ? '' : text;
}
