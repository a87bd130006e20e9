import type { NumberStyle } from './mapping.ts';
import { cutUnit, PLAIN_NUMBERS } from './read-number.ts';

/** What the texts of a column show of how it writes numbers. `ambiguous`: they could be read in two ways. */
export type NumberGuess = { style: NumberStyle; ambiguous: boolean };

const STYLES: readonly NumberStyle[] = [
  { decimal: '.', group: ',' },
  { decimal: ',', group: '.' },
  { decimal: '.', group: ' ' },
  { decimal: ',', group: ' ' },
  { decimal: '.', group: "'" },
];

/**
 * How does a column write its numbers? Each text that holds a mark is tried in each style; the styles that explain all
 * of them are left. Where both a decimal point and a decimal comma are left ("1,200" alone), the file's other columns
 * and then its delimiter decide (a file parted by semicolons is written where the comma is the decimal mark), and the
 * guess says that it is one.
 */
export function guessNumberStyle(texts: readonly string[], lean: '.' | ','): NumberGuess {
  const numbers = texts.map((text) =>
    cutUnit(text.trim())
      .number.replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
      .replace(/[’‘]/g, "'"),
  );
  const marked = numbers.filter((text) => /^\d[\d.,' ]*[\d.,]$/.test(text) && /[.,' ]/.test(text));
  if (marked.length === 0) return { style: PLAIN_NUMBERS, ambiguous: false };
  const counted = STYLES.map((style) => ({
    style,
    explained: marked.filter((text) => explains(text, style)).length,
  }));
  const most = Math.max(...counted.map(({ explained }) => explained));
  const left = counted.filter(({ explained }) => explained === most).map(({ style }) => style);
  const decimals = new Set(
    left.filter((style) => readsDifferently(style, marked)).map((style) => style.decimal),
  );
  const style = left.find((entry) => entry.decimal === lean) ?? left[0]!;
  const used = {
    decimal: style.decimal,
    group: marked.some((text) => text.includes(style.group)) ? style.group : '',
  };
  return { style: used as NumberStyle, ambiguous: decimals.size > 1 };
}

function explains(text: string, style: NumberStyle): boolean {
  const decimal = style.decimal === '.' ? '\\.' : ',';
  const group = style.group === '.' ? '\\.' : style.group;
  return new RegExp(`^(\\d+|\\d{1,3}(${group}\\d{3})+)(${decimal}\\d+)?$`).test(text);
}

/** Whether the style's decimal mark or grouping is seen at all, so that another style would read other numbers. */
function readsDifferently(style: NumberStyle, texts: readonly string[]): boolean {
  return texts.some(
    (text) =>
      text.includes(style.decimal) ||
      (style.group !== ' ' && style.group !== "'" && text.includes(style.group)),
  );
}
