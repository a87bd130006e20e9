import type { FieldValue } from '@/lib/import/draft.ts';
import { type Fact, LIST_FACTS, type ListName } from '@/lib/import/lists.ts';
import { groupDigits, THIN_SPACE } from '@/lib/units/format-quantity.ts';
import { counted } from '@/lib/words/plain-words.ts';

/** What the lists are called on the screens. */
export const LIST_WORDS: Record<ListName, string> = {
  palletTypes: 'Pallet types',
  frameTypes: 'Frame types',
  aisles: 'Aisles',
  docks: 'Docks',
  locations: 'Racks and locations',
  trucks: 'Trucks',
  plateRatings: 'Capacity plates',
  operators: 'Operators',
  loads: 'Loads',
  items: 'Items of loads',
  stock: 'Stock',
  checks: 'Walk-rounds',
};

/** Parts of a change that are not columns of a list: facts of frames, and the rows of an entry taken together. */
const PART_WORDS: Record<string, string> = {
  frame: 'Frame',
  frameType: 'Frame type',
  frameCondition: 'Frame condition',
  ratings: 'Ratings',
  'plate.ratings': 'Ratings',
  items: 'Items',
  authorisations: 'Authorisations',
};

/** "Beam top" for the fact of a list, or of a part of its entries. */
export function factLabel(list: ListName, fact: string): string {
  return PART_WORDS[fact] ?? factIn(list, fact)?.label ?? fact;
}

/** A value as it would be stored: lengths in mm, masses in kg, to the last digit. */
export function valueWords(list: ListName, fact: string, value: FieldValue): string {
  if (value === null || value === undefined) return 'not known';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return `${groupDigits(value)}${unitBehind(factIn(list, fact), fact)}`;
  if (typeof value === 'string') return value === '' ? 'blank' : value;
  if (value.length === 0) return 'none';
  if (typeof value[0] === 'string') return value.join('; ');
  const rows = (value as readonly Readonly<Record<string, unknown>>[]).map((row) => rowWords(list, row));
  return `${counted(rows.length, 'row')}: ${rows.join('; ')}`;
}

function rowWords(list: ListName, row: Readonly<Record<string, unknown>>): string {
  return Object.entries(row)
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([fact, value]) => valueWords(list, fact, value as FieldValue))
    .join(', ');
}

/** Facts of the rows of an entry are columns of another list; their names tell their unit. */
function unitBehind(fact: Fact | undefined, name: string): string {
  if (name.endsWith('Mm')) return `${THIN_SPACE}mm`;
  if (name.endsWith('Kg')) return `${THIN_SPACE}kg`;
  return fact?.fixedUnit === undefined ? '' : `${THIN_SPACE}${fact.fixedUnit}`;
}

function factIn(list: ListName, name: string): Fact | undefined {
  return LIST_FACTS[list].find(({ fact }) => fact === name);
}
