import type { MappingGuess } from '@/lib/import/guess-mapping.ts';
import { LIST_NAMES, type ListName } from '@/lib/import/lists.ts';
import { LIST_WORDS } from './list-words.ts';

const NAMED_BY_FILE = 0.75;
const FOR_A_MISSING_FACT = 0.05;

/**
 * Which list is a file? The one whose facts its headers name best, all columns taken together; a file name that names the
 * list weighs as much as most of a column, a fact that a new entry would need and no column gives speaks a little
 * against it. Null where no header names a fact of any list.
 */
export function guessList(
  file: string,
  guesses: Readonly<Record<ListName, Pick<MappingGuess, 'columns' | 'needed'>>>,
): ListName | null {
  const name = plain(file.replace(/\.[^.]*$/, ''));
  let best: { list: ListName; score: number } | null = null;
  for (const list of LIST_NAMES) {
    const { columns, needed } = guesses[list];
    const sure = columns.reduce((sum, { confidence }) => sum + confidence, 0);
    if (sure === 0) continue;
    const named = [list, LIST_WORDS[list], list.replace(/s$/, '')].some((word) => name.includes(plain(word)));
    const score = sure + (named ? NAMED_BY_FILE : 0) - needed.length * FOR_A_MISSING_FACT;
    if (best === null || score > best.score) best = { list, score };
  }
  return best?.list ?? null;
}

function plain(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}
