import { jsonPath, type Refusal } from './refusal.ts';

/** An object or a list that is being walked through, and the key or index at which the walk stands. */
type Open = { keys: string[] | null; at: string | number };

const [QUOTE, COMMA, BACKSLASH] = ['"', ',', '\\'].map((sign) => sign.charCodeAt(0));
const [OBJECT, LIST, OBJECT_END, LIST_END] = ['{', '[', '}', ']'].map((sign) => sign.charCodeAt(0));

/**
 * Which keys stand more than once in one object of this JSON text?
 *
 * A parser keeps the last of them without a word, so that of two capacities that contradict each other one would count
 * as the fact. One refusal for each repetition. The text must have parsed as JSON: only keys are looked at.
 */
export function repeatedKeys(text: string): Refusal[] {
  const refusals: Refusal[] = [];
  const open: Open[] = [];
  let isKey = false;
  for (let i = 0; i < text.length; i += 1) {
    const sign = text.charCodeAt(i);
    const here = open.at(-1);
    if (sign === QUOTE) {
      const end = endOfText(text, i);
      if (isKey && here?.keys) {
        const key = keyOf(text.slice(i, end + 1));
        here.at = key;
        if (here.keys.includes(key)) {
          const path = jsonPath(open.map(({ at }) => at));
          refusals.push({ path, came: 'a second value', expected: { is: 'once' } });
        } else here.keys.push(key);
        isKey = false;
      }
      i = end;
    } else if (sign === OBJECT) {
      open.push({ keys: [], at: '' });
      isKey = true;
    } else if (sign === LIST) {
      open.push({ keys: null, at: 0 });
      isKey = false;
    } else if (sign === OBJECT_END || sign === LIST_END) {
      open.pop();
      isKey = false;
    } else if (sign === COMMA && here) {
      isKey = here.keys !== null;
      if (typeof here.at === 'number') here.at += 1;
    }
  }
  return refusals;
}

/** Where the text that begins at `start` ends: the next quote that no odd number of backslashes stands before. */
function endOfText(text: string, start: number): number {
  let end = start;
  do {
    end = text.indexOf('"', end + 1);
  } while (isEscaped(text, end));
  return end;
}

function isEscaped(text: string, at: number): boolean {
  let before = at - 1;
  while (text.charCodeAt(before) === BACKSLASH) before -= 1;
  return (at - 1 - before) % 2 === 1;
}

function keyOf(quoted: string): string {
  return quoted.includes('\\') ? (JSON.parse(quoted) as string) : quoted.slice(1, -1);
}
