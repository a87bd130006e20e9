/** Several texts in one cell, parted by "; ". A semicolon, backslash or line break inside a text is escaped. */
export function joinTexts(texts: readonly string[]): string {
  return texts
    .map((text) =>
      text.replace(/\\/g, '\\\\').replace(/;/g, '\\;').replace(/\n/g, '\\n').replace(/\r/g, '\\r'),
    )
    .join('; ');
}

/** The texts of such a cell. A line break parts texts as well; blanks after a parting are dropped, empty texts left out. */
export function splitTexts(cell: string): string[] {
  const texts: string[] = [];
  let text = '';
  for (let i = 0; i < cell.length; i++) {
    const here = cell[i]!;
    if (here === '\\' && i + 1 < cell.length) {
      const next = cell[++i]!;
      text += next === 'n' ? '\n' : next === 'r' ? '\r' : next === ';' || next === '\\' ? next : `\\${next}`;
    } else if (here === ';' || here === '\n') {
      texts.push(text);
      text = '';
      if (cell[i + 1] === ' ') i++;
    } else text += here;
  }
  texts.push(text);
  return texts.filter((entry) => /\S/.test(entry));
}
