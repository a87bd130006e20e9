import { strToU8, type Zippable, zipSync } from 'fflate';

const RELATION = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

export type SheetParts = {
  /** What stands between <sheetData> and </sheetData>. */
  sheet: string;
  strings?: string[];
  /** Number formats of the cell styles in order: a built-in id or a format code. */
  styles?: (number | string)[];
  date1904?: boolean;
  /** Further sheets, in the book before the one that `sheet` fills. */
  before?: { name: string; state: 'visible' | 'hidden' }[];
  others?: Zippable;
};

/** A spreadsheet file as ECMA-376 part 1 describes it, as small as it can be. */
export function makeSpreadsheet(parts: SheetParts): Uint8Array {
  const before = parts.before ?? [];
  const names = [...before, { name: 'List', state: 'visible' as const }];
  const sheets = names
    .map(
      ({ name, state }, at) => `<sheet name="${name}" sheetId="${at + 1}" state="${state}" r:id="s${at}"/>`,
    )
    .join('');
  const sheetRelations = names
    .map(
      (_, at) =>
        `<Relationship Id="s${at}" Type="${RELATION}/worksheet" Target="worksheets/sheet${at}.xml"/>`,
    )
    .join('');
  const custom = (parts.styles ?? []).filter((style) => typeof style === 'string');
  const formatId = (style: number | string) =>
    typeof style === 'number' ? style : 164 + custom.indexOf(style);
  const sheetXml = (data: string) =>
    `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="${MAIN}"><sheetData>${data}</sheetData></worksheet>`;
  const files: Zippable = {
    '_rels/.rels': xml(
      `<Relationships><Relationship Id="r" Type="${RELATION}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    'xl/workbook.xml': xml(
      `<workbook xmlns="${MAIN}" xmlns:r="${RELATION}"><workbookPr date1904="${parts.date1904 ? 1 : 0}"/><sheets>${sheets}</sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': xml(
      `<Relationships>${sheetRelations}<Relationship Id="t" Type="${RELATION}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="f" Type="${RELATION}/styles" Target="/xl/styles.xml"/></Relationships>`,
    ),
    'xl/sharedStrings.xml': xml(
      `<sst xmlns="${MAIN}">${(parts.strings ?? []).map((text) => `<si>${text}</si>`).join('')}</sst>`,
    ),
    'xl/styles.xml': xml(
      `<styleSheet xmlns="${MAIN}"><numFmts>${custom.map((code, at) => `<numFmt numFmtId="${164 + at}" formatCode="${code.replaceAll('"', '&quot;')}"/>`).join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>${(parts.styles ?? [0]).map((style) => `<xf numFmtId="${formatId(style)}"/>`).join('')}</cellXfs></styleSheet>`,
    ),
    ...parts.others,
  };
  for (const [at] of before.entries()) files[`xl/worksheets/sheet${at}.xml`] = xml(sheetXml(''));
  files[`xl/worksheets/sheet${before.length}.xml`] = strToU8(sheetXml(parts.sheet));
  return zipSync(files);
}

function xml(text: string): Uint8Array {
  return strToU8(text);
}

/** The same file with the unzipped size of one part forged in the zip's directory and in the part's own header. */
export function withForgedSize(bytes: Uint8Array, part: string, size: number): Uint8Array {
  const forged = bytes.slice();
  const view = new DataView(forged.buffer);
  const name = strToU8(part);
  for (let at = 0; at + 46 < forged.length; at++) {
    const signature = view.getUint32(at, true);
    const [sizeAt, nameAt] =
      signature === 0x02014b50 ? [24, 46] : signature === 0x04034b50 ? [22, 30] : [0, 0];
    if (nameAt === 0 || !name.every((byte, i) => forged[at + nameAt + i] === byte)) continue;
    view.setUint32(at + sizeAt, size, true);
  }
  return forged;
}
