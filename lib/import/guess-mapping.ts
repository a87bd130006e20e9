import { cutHeader, headerFits } from './guess-column.ts';
import { guessNumberStyle } from './guess-numbers.ts';
import { exportHeader, factOf, LIST_FACTS, type ListName } from './lists.ts';
import { type ColumnUse, type Mapping, type Unit, USUAL_NULL_WORDS } from './mapping.ts';
import { unitFits } from './read-number.ts';
import { guessTimeStyle } from './read-time.ts';
import { REFUSED_HEADERS } from './refused-rows.ts';
import { cellText, type Table } from './table.ts';

/** What was guessed of one column, for a person to confirm. */
export type ColumnGuess = {
  header: string;
  nth: number;
  /** The fact, or null where no fact is named well enough. */
  fact: string | null;
  /** How sure the header makes it, 0 to 1. */
  confidence: number;
  /** Whether the header states the unit, or it was taken to be mm or kg; null where the fact has none. */
  unit: 'stated' | 'assumed' | null;
  /** Whether numbers, or dates, could be read in two ways. */
  ambiguous: boolean;
};

export type MappingGuess = {
  mapping: Mapping;
  columns: ColumnGuess[];
  /** Facts that a new entry needs and no column gives: to be given by a constant. */
  needed: string[];
};

/** Below this a header is left to the person. */
const SURE_ENOUGH = 0.6;
const SAMPLED_ROWS = 2000;

/** Which column gives which fact, in which unit and style? From the headers and the first rows; each fact once. */
export function guessMapping(list: ListName, table: Table): MappingGuess {
  const claims = table.header
    .flatMap((header, at) =>
      headerFits(list, header).map(({ fact, fit }) => ({
        at,
        fact,
        fit: fit * unitMatters(list, fact, header),
      })),
    )
    .filter(({ fit }) => fit >= SURE_ENOUGH)
    .sort((a, b) => b.fit - a.fit || a.at - b.at);
  const factAt = new Map<number, { fact: string; fit: number }>();
  const taken = new Set<string>();
  for (const { at, fact, fit } of claims) {
    if (factAt.has(at) || taken.has(fact)) continue;
    factAt.set(at, { fact, fit });
    taken.add(fact);
  }
  const own = isOwnExport(list, table.header);
  const lean = decimalLean(table);
  const seen = new Map<string, number>();
  const uses: ColumnUse[] = [];
  const columns = table.header.map((header, at): ColumnGuess => {
    const nth = seen.get(header) ?? 0;
    seen.set(header, nth + 1);
    const claim = factAt.get(at);
    if (claim === undefined) return { header, nth, fact: null, confidence: 0, unit: null, ambiguous: false };
    const texts = sample(table, at);
    const { use, unit, ambiguous } = columnReading(list, header, nth, claim.fact, texts, lean);
    uses.push(use);
    return { header, nth, fact: claim.fact, confidence: claim.fit, unit, ambiguous };
  });
  const mapping: Mapping = {
    list,
    columns: uses,
    constants: {},
    nullWords: own ? [''] : [...USUAL_NULL_WORDS],
    trim: !own,
  };
  return { mapping, columns, needed: neededFacts(mapping) };
}

/** Facts that a new entry needs and a mapping does not give. */
export function neededFacts(mapping: Mapping): string[] {
  const given = new Set([...mapping.columns.map((use) => use.fact), ...Object.keys(mapping.constants)]);
  const covered = (fact: string) =>
    given.has(fact) ||
    (/^(left|right)FrameType$/.test(fact) && given.has('frameType')) ||
    (/^(left|right)FrameCondition$/.test(fact) && given.has('frameCondition'));
  return LIST_FACTS[mapping.list]
    .filter((entry) => entry.needed && !covered(entry.fact))
    .map((entry) => entry.fact);
}

/** Whether these are the headers of our own export, whose texts come back to the letter. */
function isOwnExport(list: ListName, header: readonly string[]): boolean {
  const own = new Set([...LIST_FACTS[list].map(exportHeader), ...REFUSED_HEADERS]);
  return header.length > 0 && header.every((name) => own.has(name));
}

/** A header that states kg names no length, one that states mm no mass. */
function unitMatters(list: ListName, fact: string, header: string): number {
  const { unit } = cutHeader(header);
  const { kind } = factOf(list, fact);
  if (unit === null) return 1;
  if (kind === 'mass') return unitFits(unit, 'mass') ? 1 : 0;
  if (kind === 'length' || kind === 'surveyed') return unitFits(unit, 'length') ? 1 : 0;
  return 0.5;
}

function columnReading(
  list: ListName,
  header: string,
  nth: number,
  fact: string,
  texts: readonly string[],
  lean: '.' | ',',
) {
  const { kind } = factOf(list, fact);
  const use: ColumnUse = { header, nth, fact };
  let unit: ColumnGuess['unit'] = null;
  let ambiguous = false;
  if (kind === 'length' || kind === 'surveyed' || kind === 'mass') {
    const stated: Unit | null = cutHeader(header).unit;
    use.unit = stated ?? (kind === 'mass' ? 'kg' : 'mm');
    unit = stated === null ? 'assumed' : 'stated';
  }
  if (unit !== null || kind === 'number') {
    const guess = guessNumberStyle(texts, lean);
    use.numbers = guess.style;
    ambiguous = guess.ambiguous;
  }
  if (kind === 'time') {
    const guess = guessTimeStyle(texts);
    use.times = guess.style;
    ambiguous = guess.ambiguous;
  }
  return { use, unit, ambiguous };
}

/** The decimal mark that the file shows beyond doubt somewhere, else the one that goes with its delimiter. */
function decimalLean(table: Table): '.' | ',' {
  for (let at = 0; at < table.header.length; at++) {
    const texts = sample(table, at).filter((text) => /^\d/.test(text));
    const point = guessNumberStyle(texts, '.');
    if (
      !point.ambiguous &&
      texts.some((text) => /[.,]/.test(text)) &&
      texts.every((text) => /^[\d.,' \u00a0\u202f]+$/.test(text))
    ) {
      return point.style.decimal;
    }
  }
  return table.notes.some((note) => note.note === 'delimiter' && note.delimiter === ';') ? ',' : '.';
}

/** Texts of a column, from rows spread over the whole table; numbers of a spreadsheet have no style to guess. */
function sample(table: Table, at: number): string[] {
  const step = Math.max(1, Math.floor(table.rows.length / SAMPLED_ROWS));
  const texts: string[] = [];
  for (let i = 0; i < table.rows.length; i += step) {
    const cell = table.rows[i]![at];
    if (typeof cell === 'string' && cell.trim() !== '') texts.push(cellText(cell));
  }
  return texts;
}
