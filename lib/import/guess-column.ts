import { HEADER_WORDS } from './header-words.ts';
import { exportHeader, LIST_FACTS, type ListName } from './lists.ts';
import type { Unit } from './mapping.ts';
import { unitOfWord } from './read-number.ts';

const LONGEST_HEADER = 120;

/** A header cut into what it names and the unit that it states: "Beam top (in)" -> "beam top", in. */
export function cutHeader(header: string): { words: string; unit: Unit | null } {
  const bracket = /^(.*?)\s*[([{]\s*([^)\]}]*?)\s*[)\]}]\s*$/.exec(header);
  const bracketUnit = bracket === null ? null : unitOfWord(bracket[2]!);
  if (bracketUnit !== null) return { words: plainWords(bracket![1]!), unit: bracketUnit };
  const words = plainWords(header).split(' ');
  const last = words.at(-1)!;
  const unit = words.length > 1 ? unitOfWord(last) : null;
  return unit === null
    ? { words: words.join(' '), unit }
    : { words: words.slice(0, -1).join(' ').replace(/ in$/, ''), unit };
}

/** Lower case, words parted by one blank: "beamTop_MM", "Beam-Top mm" and "BEAM TOP MM" are the same. */
function plainWords(header: string): string {
  return header
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}"'″′]+/gu, ' ')
    .trim();
}

/**
 * How well does a header name each fact of a list, 0 to 1? 1: the header that our own export writes. 0.95: its label or
 * a word of the trade, 0.85: the same words in another order, 0.6 to 0.8: most of the words.
 */
export function headerFits(list: ListName, header: string): { fact: string; fit: number }[] {
  if (header.length > LONGEST_HEADER) return [];
  const { words } = cutHeader(header);
  if (words === '') return [];
  return LIST_FACTS[list]
    .map((entry) => {
      if (header === exportHeader(entry)) return { fact: entry.fact, fit: 1 };
      const names = [
        plainWords(entry.label),
        plainWords(entry.fact),
        ...(HEADER_WORDS[list][entry.fact] ?? []),
      ];
      return {
        fact: entry.fact,
        fit: Math.max(...names.map((name) => wordsFit(words, cutHeader(name).words))),
      };
    })
    .filter(({ fit }) => fit > 0)
    .sort((a, b) => b.fit - a.fit);
}

const IDLE_WORDS = new Set(['of', 'the', 'in', 'at', 'to', 'per', 'no', 'nr', 'max', 'maximum']);

function wordsFit(came: string, known: string): number {
  if (came === known || came.replaceAll(' ', '') === known.replaceAll(' ', '')) return 0.95;
  const [a, b] = [new Set(came.split(' ')), new Set(known.split(' '))];
  const shared = [...a].filter((word) => b.has(word)).length;
  if (shared === a.size && shared === b.size) return 0.85;
  const weight = (words: Set<string>) =>
    [...words].reduce((sum, word) => sum + (IDLE_WORDS.has(word) ? 0.25 : 1), 0);
  const both = weight(new Set([...a].filter((word) => b.has(word))));
  const share = (2 * both) / (weight(a) + weight(b));
  return share >= 0.6 ? Math.min(0.8, share) : 0;
}
