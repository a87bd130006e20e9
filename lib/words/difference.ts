import type { Difference } from '../model/differences.ts';
import {
  type DisplayUnits,
  formatLength,
  formatMass,
  groupDigits,
  THIN_SPACE,
} from '../units/format-quantity.ts';
import { fieldWords } from './field.ts';

/** "line 3, capacity: 1 600 kg became 1 400 kg" */
export function differenceSentence(difference: Difference, units: DisplayUnits): string {
  const field = differenceField(difference);
  const [before, after] = differenceValues(difference, units);
  const place = field === '' ? '' : `${field}: `;
  if (before === NOTHING) return `${place}${after} came`;
  if (after === NOTHING) return `${place}${before} went`;
  return `${place}${before} became ${after}`;
}

/** What a list calls one of its entries; the entry's own name stands behind. */
const ENTRY_WORDS: Record<string, string> = {
  ratings: 'line',
  frames: 'frame',
  bays: 'bay',
  levels: 'level',
  items: 'item',
  authorisations: 'authorisation',
  checks: 'check',
};

/** Where the difference is: "bay a1, level 2, condition". Empty for a fact that is one value. */
export function differenceField({ path }: Pick<Difference, 'path'>): string {
  const words: string[] = [];
  for (let at = 0; at < path.length; at += 1) {
    const key = path[at]!;
    const entry = ENTRY_WORDS[key];
    if (entry !== undefined && at + 1 < path.length) {
      words.push(`${entry} ${path[at + 1]}`);
      at += 1;
    } else words.push(FIELD_WORDS[key] ?? fieldWords(key));
  }
  return words.join(', ');
}

const FIELD_WORDS: Record<string, string> = {
  aisleId: 'aisle',
  at: 'where it stands',
  typeId: 'type',
  palletType: 'pallet type',
  maxLiftMm: 'largest lift',
  pairCapacityKg: 'capacity of the pair of beams',
  picksPerWeek: 'picks a week',
  handPick: 'pick by hand',
  massKg: 'mass',
  xMm: 'across',
  yMm: 'along',
  headingDeg: 'heading',
  depthPositions: 'rows of depth',
  travelMps: 'travel speed',
  liftMps: 'lifting speed',
  palletTypes: 'pallet types',
  frameTypes: 'frame types',
};

const NOTHING = 'nothing';

/**
 * Both sides, for reading in these units; "nothing" where there is none. Two numbers that differ never read the same:
 * then both are shown as they are stored.
 */
export function differenceValues({ path, before, after }: Difference, units: DisplayUnits): [string, string] {
  const key = path.at(-1) ?? '';
  const shown = [valueWords(key, before, units), valueWords(key, after, units)] as [string, string];
  if (shown[0] !== shown[1]) return shown;
  return [storedWords(key, before), storedWords(key, after)];
}

function valueWords(key: string, value: unknown, units: DisplayUnits): string {
  if (typeof value === 'number' && key.endsWith('Kg')) return formatMass(value, units, 'down');
  if (typeof value === 'number' && key.endsWith('Mm')) return formatLength(value, units, 'down');
  return storedWords(key, value);
}

const UNITS: readonly [ending: string, unit: string][] = [
  ['Kg', 'kg'],
  ['Mm', 'mm'],
  ['Mps', 'm/s'],
  ['Percent', '%'],
  ['Hours', 'h'],
  ['Deg', '°'],
];

function storedWords(key: string, value: unknown): string {
  if (value === null || value === undefined || (Array.isArray(value) && value.length === 0)) return NOTHING;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') {
    const unit = UNITS.find(([ending]) => key.endsWith(ending))?.[1];
    return unit === undefined ? groupDigits(value) : `${groupDigits(value)}${THIN_SPACE}${unit}`;
  }
  if (Array.isArray(value)) return value.map((entry) => storedWords('', entry)).join(', ');
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}
