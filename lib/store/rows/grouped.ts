/** Rows by their owner, each group in the order in which the rows came, with the owner's key left behind. */
export function grouped<Row, Value>(
  rows: readonly Row[],
  ownerOf: (row: Row) => string,
  partOf: (row: Row) => Value,
): Map<string, Value[]> {
  const groups = new Map<string, Value[]>();
  for (const row of rows) {
    const owner = ownerOf(row);
    const group = groups.get(owner);
    if (group) group.push(partOf(row));
    else groups.set(owner, [partOf(row)]);
  }
  return groups;
}

/** The key of something that belongs to a numbered part of something with an id. */
export function keyOf(id: string, ...numbers: number[]): string {
  return JSON.stringify([id, ...numbers]);
}
