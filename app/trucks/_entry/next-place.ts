type Place = { row: number; column: number };

/**
 * Where a key leads from a cell of a plate's grid: the next cell, `new-row` behind the last, or null where the key keeps
 * its own meaning. Row -1 are the load centres, column -1 the lift heights; there is no cell in the corner. Left and
 * right move within the text first.
 */
export function nextPlace(
  key: string,
  isShift: boolean,
  { row, column }: Place,
  { rows, columns }: { rows: number; columns: number },
  caret: { isAtStart: boolean; isAtEnd: boolean },
): Place | 'new-row' | null {
  const first = (at: number) => (at < 0 ? 0 : -1);
  switch (key) {
    case 'ArrowUp':
      return row - 1 >= first(column) ? { row: row - 1, column } : null;
    case 'ArrowDown':
      return row + 1 < rows ? { row: row + 1, column } : null;
    case 'ArrowLeft':
      return caret.isAtStart && column - 1 >= first(row) ? { row, column: column - 1 } : null;
    case 'ArrowRight':
      return caret.isAtEnd && column + 1 < columns ? { row, column: column + 1 } : null;
    case 'Enter':
      if (isShift) return row - 1 >= first(column) ? { row: row - 1, column } : { row, column };
      return row + 1 < rows ? { row: row + 1, column } : 'new-row';
    default:
      return null;
  }
}
