import type { Run } from '../model/racking.ts';
import type { BayRange, RunChange } from '../rack-shape/run-change.ts';
import type { ShapeFault } from '../rack-shape/shape-fault.ts';
import { type DisplayUnits, formatLength, formatMass } from '../units/format-quantity.ts';
import { counted } from './plain-words.ts';

/** What is wrong with a described run or a change of one, and what to do about it: one sentence at its field. */
export function shapeFaultSentence(fault: ShapeFault, units: DisplayUnits): string {
  switch (fault.is) {
    case 'missing':
      return 'Needed.';
    case 'not-read':
      return 'This could not be read.';
    case 'out-of-range':
      return fault.of === 'count'
        ? `A whole number from ${fault.from} to ${fault.to} is needed.`
        : `A ${fault.of} above 0 and of a size that a rack can have is needed.`;
    case 'wrong-count':
      return `One width for all bays, or ${fault.expected}: one for each. ${fault.came} came.`;
    case 'no-opening':
      return fault.belowMm === 0
        ? 'This beam would stand in the floor: its top must be higher than the beam is.'
        : `No opening is left: the underside of this beam must be above ${formatLength(fault.belowMm, units, 'up')}, the top of the beam below.`;
    case 'no-opening-above':
      return `No opening is left above: the underside of the next beam is at ${formatLength(fault.aboveMm, units, 'down')}.`;
    case 'unfit-id':
      return 'An id is 1 to 120 characters on one line, with no blank at either end.';
    case 'run-known':
      return 'There is a run of this id already.';
    case 'bay-known':
      return `There is a bay ${fault.bay} in this run already.`;
    case 'no-such':
      return `There is no such ${fault.what === 'frame-type' ? 'frame type' : fault.what}.`;
    case 'no-levels':
      return 'Nothing could stand here: use the floor, or add a beam level.';
    case 'last-bay':
      return 'No bay would be left. Delete the run instead.';
    case 'wider-than-bay':
      return `Both halves together may be no wider than the bay, ${formatLength(fault.bayMm, units, 'down')}.`;
    case 'too-many-locations':
      return `A run has at most ${fault.most} locations. Make it of two runs.`;
    case 'open-brace':
      return 'A brace stands alone. Parts are written {bay} or {bay:00}.';
    case 'unknown-part':
      return `{${fault.came}} is not a part of a label${fault.nearest === null ? '.' : `; did you mean {${fault.nearest}}?`}`;
    case 'unknown-style':
      return `":${fault.came}" is not a way to write a number. Write :00 for two digits, or :A for letters.`;
    case 'letters-below-one':
      return `Letters begin at 1 (A), and the ${fault.part} starts below that. Start it at 1, or write it in digits.`;
    case 'label-twice':
      return `${fault.label} would be given twice${fault.count > 1 ? `, and ${fault.count - 1} more labels` : ''}. The pattern must tell every location apart.`;
    case 'label-elsewhere':
      return `${fault.label} stands in run ${fault.run} already${fault.count > 1 ? `, and ${fault.count - 1} more labels stand elsewhere` : ''}.`;
    default:
      return fault satisfies never;
  }
}

/** A change as a line of a list: "Beam level 2 of all bays to 3 200 mm". */
export function runChangeWords(change: RunChange, run: Run, units: DisplayUnits): string {
  switch (change.kind) {
    case 'move-beam':
      return `Beam level ${change.level} of ${bays(change.range, run)} to ${formatLength(change.beamTopMm, units, 'up')}`;
    case 'level-facts':
      return `Beam level ${change.level} of ${bays(change.range, run)}: ${levelFacts(change.facts, units)}`;
    case 'add-level':
      return `A beam level more on ${bays(change.range, run)}, at ${formatLength(change.beamTopMm, units, 'up')}`;
    case 'remove-level':
      return `Beam level ${change.level} of ${bays(change.range, run)} taken out`;
    case 'bay-facts':
      return `${capital(bays(change.range, run))}: ${bayFacts(change.facts, units)}`;
    case 'level-condition':
      return `Level ${change.level} of ${bays(change.range, run)} marked ${change.condition}`;
    case 'frame-condition':
      return `${capital(frames(change.range, run))} marked ${change.condition}`;
    case 'frame-type':
      return `${capital(frames(change.range, run))} of type ${change.typeId}`;
    case 'insert-bay':
      return `A new bay ${change.name} ${change.before === run.bays.length ? 'at the end' : `before ${run.bays[change.before]?.id ?? 'the first'}`}`;
    case 'split-bay':
      return `Bay ${run.bays[change.bay]?.id ?? ''} split in two`;
    case 'remove-bays':
      return `${capital(bays(change.range, run))} taken away`;
    case 'renumber':
      return `New ids: run ${change.id}, locations ${change.labels.pattern}`;
    default:
      return change satisfies never;
  }
}

/**
 * What a person must know who changes beams, frames or bays. EN 15635: a change of configuration is made by agreement
 * with the supplier, and the load notice is renewed; SEMA advice: contact the supplier when first beam height or pitch
 * is exceeded. Both from memory; common practice everywhere.
 */
export const NOTICE_WARNING =
  "A load notice printed before this change no longer holds: it states the maker's configuration. Ask the rack's supplier before loading, above all where the first beam height or the distance between beams grows, and put up a new notice (EN 15635, SEMA advice; common practice).";

/** What a person must know who gives locations new ids. */
export const SIGNS_WARNING =
  'The signs on the racks must change with the ids: until then people read one thing and the program says another.';

/** Does a change alter what a load notice states? */
export function touchesNotice({ kind }: RunChange): boolean {
  return kind !== 'level-condition' && kind !== 'frame-condition' && kind !== 'renumber';
}

function bays({ first, last }: BayRange, run: Run): string {
  if (first === 0 && last === run.bays.length - 1) return run.bays.length === 1 ? 'the bay' : 'all bays';
  const [from, to] = [run.bays[first]?.id ?? '', run.bays[last]?.id ?? ''];
  return first === last ? `bay ${from}` : `bays ${from} to ${to}`;
}

function frames({ first, last }: BayRange, run: Run): string {
  if (first === 0 && last === run.frames.length - 1) return 'all frames';
  const [from, to] = [run.frames[first]?.id ?? '', run.frames[last]?.id ?? ''];
  return first === last ? `frame ${from}` : `frames ${from} to ${to}`;
}

type FactsOf<K extends RunChange['kind']> = Extract<RunChange, { kind: K; facts: unknown }>['facts'];

function levelFacts(facts: FactsOf<'level-facts'>, units: DisplayUnits): string {
  const parts: string[] = [];
  if (facts.beamHeightMm !== undefined)
    parts.push(`beams ${formatLength(facts.beamHeightMm, units, 'up')} high`);
  if (facts.pairCapacityKg !== undefined)
    parts.push(
      `pair capacity ${facts.pairCapacityKg === null ? 'not known' : formatMass(facts.pairCapacityKg, units, 'down')}`,
    );
  if (facts.maxUnitKg !== undefined)
    parts.push(
      `unit limit ${facts.maxUnitKg === null ? 'none stated' : formatMass(facts.maxUnitKg, units, 'down')}`,
    );
  if (facts.decked !== undefined) parts.push(facts.decked ? 'decked' : 'not decked');
  return parts.join(', ');
}

function bayFacts(facts: FactsOf<'bay-facts'>, units: DisplayUnits): string {
  const parts: string[] = [];
  if (facts.clearWidthMm !== undefined)
    parts.push(`clear width ${formatLength(facts.clearWidthMm, units, 'down')}`);
  if (facts.maxBayLoadKg !== undefined)
    parts.push(
      `bay load ${facts.maxBayLoadKg === null ? 'none stated' : formatMass(facts.maxBayLoadKg, units, 'down')}`,
    );
  return parts.join(', ');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "12 bays, 13 frames, 4 beam levels, 144 locations". */
export function runInWords(run: Run): string {
  const levels = Math.max(...run.bays.map((bay) => bay.levels.filter((level) => level.level > 0).length));
  const places = run.bays.reduce(
    (sum, bay) => sum + bay.levels.reduce((own, level) => own + level.locations.length, 0),
    0,
  );
  return [
    counted(run.bays.length, 'bay'),
    counted(run.frames.length, 'frame'),
    counted(levels, 'beam level'),
    counted(places, 'location'),
  ].join(', ');
}
