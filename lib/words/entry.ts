import { type FieldFault, isMissing } from '../entry/field-fault.ts';
import type { LoadConsequences, PlaceTurn } from '../entry/load-consequences.ts';
import type { MeasureKind } from '../entry/measure.ts';
import type { PlateAdvice } from '../entry/plate-advice.ts';
import type { MassBasis } from '../model/policy.ts';
import { MOST_PHOTO_BYTES, type PhotoRefused } from '../photo/photo.ts';
import { type DisplayUnits, formatLength, formatMass } from '../units/format-quantity.ts';
import { findingWithAdvice } from './finding.ts';
import { asSentence, counted } from './plain-words.ts';
import { expectedWords } from './refusal.ts';
import { ruleTitle } from './rule.ts';
import { verdictWord } from './verdict.ts';

const EXAMPLES: Record<MeasureKind, string> = {
  mass: '980, 980 kg or 2160 lb',
  length: '1200, 1.2 m or 47 in',
  speed: '2, 7.2 km/h or 390 ft/min',
  number: '12 or 12.5',
};

/** What is wrong with a field, to stand at it. */
export function fieldFaultSentence(fault: FieldFault): string {
  switch (fault.is) {
    case 'unread':
      return fault.text.includes(',')
        ? `Not read: the comma in "${fault.text}" may mean a thousand or a decimal. Write 1250, 1 250 or 1.25.`
        : `Not read: "${fault.text}". Write a number such as ${EXAMPLES[fault.of]}.`;
    case 'heading-needed':
      return 'Needed: capacities are stated beside it.';
    case 'refused': {
      const { came, expected } = fault.refusal;
      if (isMissing(fault)) return 'Needed.';
      return `${came} came, ${expectedWords(expected)} was expected.`;
    }
  }
}

/** What is worth a second look at a truck's plate, and why. */
export function plateAdviceSentence(advice: PlateAdvice, units: DisplayUnits): string {
  const length = (mm: number) => formatLength(mm, units, 'down');
  const mass = (kg: number) => formatMass(kg, units, 'down');
  switch (advice.kind) {
    case 'finding':
      return findingWithAdvice(advice.finding, units);
    case 'fork-arms-below-plate':
      return `The pair of fork arms carries ${mass(advice.pairKg)} at ${length(advice.loadCentreMm)}, the plate states ${mass(advice.plateKg)} there. The lower one governs; look at the marking on the arms.`;
    case 'line-above-mast':
      return `A line of the plate is for ${length(advice.liftHeightMm)}, but the truck lifts to ${length(advice.maxLiftMm)}. Read both again.`;
    case 'load-centre-unusual':
      return `No line of the plate is for ${length(advice.usualMm)}, the usual load centre of such a truck (${mass(advice.capacityKg)}; ISO 22915-1 table, from memory); it has ${advice.statedMm.map(length).join(', ')}. Read the plate again.`;
    case 'turning-data-missing':
      return 'Without its turning figures or an aisle stated by the maker, no aisle is proven wide enough.';
    case 'stated-aisle-missing':
      return 'Such a truck is judged by the aisle that its maker states; without it no aisle is proven wide enough.';
    case 'mast-heights-missing':
      return 'Without the mast heights, lowered and extended, it is not known whether the mast clears what is overhead.';
  }
}

/** Headings of a plate beside which no capacity stands. */
export function idleHeadingsSentence(count: number): string {
  return count === 1
    ? 'One lift height or load centre has no capacity beside it: the plate states nothing there, and it is not kept.'
    : `${count} lift heights or load centres have no capacity beside them: the plate states nothing there, and they are not kept.`;
}

/** What a basis of the mass means. */
export const BASIS_MEANINGS: Record<MassBasis, string> = {
  weighed: 'Read off scales, pallet and goods together.',
  calculated: 'Added up elsewhere from known masses: a list of contents, an order.',
  declared: 'Told by somebody, such as a sender; nobody here has weighed it.',
};

export const ITEMS_MEANING =
  'Added up here: each item times its count, and the pallet. Counts as calculated.';

/** How the mass may be known, as one chooses it. */
export const MASS_FROM_WORDS: Record<MassBasis, string> = {
  weighed: 'Weighed',
  calculated: 'Calculated elsewhere',
  declared: 'Declared',
};

const PLACES_NAMED = 6;

/** Where a load stands now. */
export function standsSentence(places: readonly string[]): string {
  if (places.length === 0) return 'It stands nowhere in the racks.';
  const more = places.length - PLACES_NAMED;
  const named = places.slice(0, PLACES_NAMED).join(', ');
  const rest = more > 0 ? ` and ${counted(more, 'more location')}` : '';
  return `It stands in ${counted(places.length, 'location')}: ${named}${rest}.`;
}

/** What a change of a load comes to, in numbers. */
export function consequencesSentence({ standing, worse, better }: LoadConsequences): string {
  if (worse + better === 0) return `Nothing turns in the ${counted(standing, 'location')} where it stands.`;
  const turned = [
    worse === 0 ? null : `${worse} for the worse`,
    better === 0 ? null : `${better} for the better`,
  ].filter((part) => part !== null);
  return `Of the ${counted(standing, 'location')} where it stands, ${worse + better} turn: ${turned.join(', ')}.`;
}

/** How taking a load down from a place turns. */
export function liftTurnSentence(lift: NonNullable<PlaceTurn['lift']>): string {
  const { from, to, mayBefore, mayAfter, governing } = lift;
  const trucks = `${counted(mayAfter, 'truck')} may take it down, ${mayBefore} before`;
  const why = to === 'refuse' || to === 'unproven' ? ` (${ruleTitle(governing).toLowerCase()})` : '';
  return from === to
    ? `${asSentence(trucks)}`
    : `${asSentence(`taking it down was ${verdictWord(from).toLowerCase()}, becomes ${verdictWord(to).toLowerCase()}${why}; ${trucks}`)}`;
}

/** Why a picture was not taken in, and what to do. */
export function photoRefusedSentence(why: PhotoRefused): string {
  switch (why.is) {
    case 'empty':
      return 'The file is empty. Choose it again.';
    case 'too-large':
      return `The photo has ${megabytes(why.bytes)} MB; ${megabytes(why.most)} MB is the most. Take it with a lower resolution.`;
    case 'not-a-photo':
      return 'This is no JPEG, PNG or WebP picture, whatever its name says. Take a photo, or save the picture as JPEG.';
    case 'damaged':
      return `The ${why.type.slice(6).toUpperCase()} picture is damaged, cut off, or moves. Take it again.`;
    case 'too-many-pixels':
      return `The picture has ${why.widthPx} x ${why.heightPx} pixels, more than 64 million. Take it with a lower resolution.`;
  }
}

/** What is said beside the choice of a photo. */
export const PHOTO_ADVICE = `JPEG, PNG or WebP up to ${megabytes(MOST_PHOTO_BYTES)} MB. Where and when it was taken and by which camera is taken out before it is kept.`;

function megabytes(bytes: number): string {
  return (Math.ceil((bytes * 10) / (1024 * 1024)) / 10).toString();
}
