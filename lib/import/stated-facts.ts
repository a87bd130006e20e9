import type { FactValue } from './read-cell.ts';
import type { RowFacts } from './read-rows.ts';
import type { RefusalBook } from './refusal-book.ts';

/** What the rows of a file say of one thing, and which row said it first. A blank in one row leaves it to the others. */
export type StatedFacts = Map<string, { value: FactValue; row: number }>;

/** Takes in what a row says of a thing; a row that says otherwise than an earlier one goes into the book. */
export function takeIn(
  stated: StatedFacts,
  row: RowFacts,
  facts: readonly string[],
  book: RefusalBook,
): void {
  for (const fact of facts) {
    const value = row.get(fact);
    if (value === undefined) continue;
    const before = stated.get(fact);
    if (before === undefined || (before.value === null && value !== null))
      stated.set(fact, { value, row: row.row });
    else if (value !== null && value !== before.value) {
      book.refuse(row.row, fact, { is: 'same-as-row', row: before.row, value: String(before.value) });
    }
  }
}

/** The stated value; where no row speaks of the fact, what stood there; undefined where the fact is not known. */
export function statedOr(stated: StatedFacts, fact: string, standing: unknown): unknown {
  const here = stated.get(fact);
  return (here === undefined ? standing : here.value) ?? undefined;
}
