import { type CompiledSite, EMPTY } from './compiled-site.ts';
import { type GridSheet, openSheet } from './grid-sheet.ts';
import { joinSides } from './join-sides.ts';
import type { GridAnswer, GridQuestion } from './question.ts';
import { judgeLevel, type RackLoad, type RackSide } from './rack-side.ts';
import { NOTHING, REFUSE, RULE, type Tally } from './tally.ts';

/** Locations answered between two reports of progress. */
const SLICE = 8192;

/**
 * May each truck lift the load (or what stands there) at each location, which rule decides, and how much could it be?
 *
 * The same verdict, governing rule and mostKg as checkLift of lib/check gives for each cell, to the last bit.
 * `onProgress` hears the share that is done, from 0 to 1.
 */
export function answerGrid(
  site: CompiledSite,
  question: GridQuestion,
  onProgress?: (done: number) => void,
): GridAnswer {
  const sheet = openSheet(site, question);
  for (const done of answerInSlices(sheet)) onProgress?.(done);
  return sheet.answer;
}

/** Answers a sheet from end to end, and yields the share that is done after each slice. */
export function* answerInSlices(sheet: GridSheet): Generator<number, void> {
  const { locationCount } = sheet.answer;
  for (let first = 0; first < locationCount; first += SLICE) {
    const end = Math.min(first + SLICE, locationCount);
    answerLocations(sheet, first, end);
    yield end / locationCount;
  }
}

/** Answers a range of locations for every truck. */
export function answerLocations(sheet: GridSheet, first: number, end: number): void {
  fillRackSide(sheet, first, end);
  joinSides(sheet, first, end, 0, sheet.trucks.length);
}

/** Judges the racks' side of a range of locations. */
function fillRackSide(sheet: GridSheet, first: number, end: number): void {
  if (sheet.asked === null) judgeStored(sheet, first, end);
  else judgeOne(sheet, sheet.asked, first, end);
}

/** One load: a level's rules are the same for all its locations, but for whether each is free. */
function judgeOne(sheet: GridSheet, load: RackLoad, first: number, end: number): void {
  const { site, tally, from, rackSide } = sheet;
  const { context } = sheet.question;
  const asksFree = context.operation === 'place' && context.stock === 'as-is';
  let level = -1;
  for (let location = first; location < end; location += 1) {
    if (site.levelOf[location] !== level) {
      level = site.levelOf[location]!;
      tally.start();
      if (asksFree) tally.state(RULE['slot-free'], true);
      judgeLevel(tally, site, level, load, context, from);
    }
    writeRackSide(rackSide, location, tally);
    if (asksFree && site.standing[location] !== EMPTY && location !== from) writeOccupied(rackSide, location);
  }
}

/** A failed slot-free decides alone: its use is infinite and it is the first rule of the racks' side. */
function writeOccupied(side: RackSide, location: number): void {
  side.verdict[location] = REFUSE;
  side.use[location] = Number.POSITIVE_INFINITY;
  side.rule[location] = RULE['slot-free'];
  side.mostKg[location] = NOTHING;
}

function writeRackSide(side: RackSide, location: number, tally: Tally): void {
  side.verdict[location] = tally.verdict;
  side.use[location] = tally.use;
  side.rule[location] = tally.rule;
  side.mostKg[location] = tally.mostKg;
}

/** What stands in each location: taken down, or placed back where it came from. */
function judgeStored(sheet: GridSheet, first: number, end: number): void {
  const { site, tally, answer } = sheet;
  const { context } = sheet.question;
  const { assessedKg, shapeOf, shapes } = site.loads;
  const asksFree = context.operation === 'place' && context.stock === 'as-is';
  for (let location = first; location < end; location += 1) {
    const load = site.standing[location]!;
    if (load === EMPTY) continue;
    const rackLoad = { shape: shapes[shapeOf[load]!]!, assessedKg: assessedKg[load]! };
    answer.assessedKg[location] = rackLoad.assessedKg;
    tally.start();
    if (asksFree) tally.state(RULE['slot-free'], true);
    judgeLevel(tally, site, site.levelOf[location]!, rackLoad, context, location);
    writeRackSide(sheet.rackSide, location, tally);
  }
}
