// What a spreadsheet takes as the start of a formula, with the line breaks and full-width forms that some take as well.
const STARTS_FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;
const GUARDED = /^'+[=+\-@\t\r\n＝＋－＠]/;

/**
 * A text that no spreadsheet runs as a formula: an apostrophe before what would start one. A text that already looks
 * guarded gets one more, so that taking one off always gives back the very text.
 */
export function guardCell(text: string): string {
  return STARTS_FORMULA.test(text) ? `'${text}` : text;
}

/** The text without the apostrophe that guardCell put before it. */
export function unguardCell(text: string): string {
  return GUARDED.test(text) ? text.slice(1) : text;
}
