import type { Run } from '../model/racking.ts';
import { bayNumber, type LabelPattern, PLAIN_PATTERN } from './label-pattern.ts';
import { labelBay, lowestLevel, readLabels } from './label-run.ts';

const BAYS = ['{bay:00}', '{bay}', '{bay:000}'];
const LEVELS = ['{level}', '{level:00}', '{level:A}'];
const POSITIONS = ['{position}', '{position:00}', '{position:A}'];

/**
 * Which pattern gave a run the ids that it has? One that writes every location of it again, or null when none of the
 * usual ones does. Aisle and side are read from the ids of the aisle and the run.
 */
export function guessLabels(run: Run): LabelPattern | null {
  const { bays } = run;
  if (bays.length === 0) return null;
  for (const labels of candidates(run)) {
    const pieces = readLabels(labels, lowestLevel(bays));
    if (!pieces.ok) continue;
    const fits = (bay: Run['bays'][number], at: number) =>
      sameLocations(bay, labelBay(run.id, bay, labels, pieces.value, bayNumber(labels, at, bays.length)));
    // the ends tell most patterns apart
    if (fits(bays[0]!, 0) && fits(bays.at(-1)!, bays.length - 1) && bays.every(fits)) return labels;
  }
  return null;
}

/** The pattern of a run, or the plain one with its aisle and side where its ids follow none. */
export function labelsOf(run: Run): LabelPattern {
  return guessLabels(run) ?? plainLabels(run.aisleId, sideOf(run));
}

export function plainLabels(aisle: string, side: string): LabelPattern {
  return {
    pattern: PLAIN_PATTERN,
    aisle,
    side,
    bayStart: 1,
    bayStep: 1,
    bayFrom: 'left',
    levelStart: 0,
    positionStart: 1,
    positionFrom: 'left',
  };
}

function sideOf(run: Run): string {
  const rest = run.id.startsWith(run.aisleId) ? run.id.slice(run.aisleId.length) : run.id;
  return rest.replace(/^[^\p{L}\p{N}]+/u, '');
}

function* candidates(run: Run): Generator<LabelPattern> {
  const [aisle, side] = [run.aisleId, sideOf(run)];
  const heads = side === '' ? ['{aisle}-'] : ['{aisle}-{side}-', '{aisle}{side}-'];
  for (const head of heads) {
    for (const bay of BAYS) {
      for (const level of LEVELS) {
        for (const position of POSITIONS) {
          for (const bayFrom of ['left', 'right'] as const) {
            for (const bayStart of [1, 2]) {
              for (const bayStep of [1, 2] as const) {
                const pattern = `${head}${bay}-${level}-${position}`;
                const levelStart = level === '{level:A}' ? 1 : 0;
                yield { ...plainLabels(aisle, side), pattern, bayFrom, bayStart, bayStep, levelStart };
              }
            }
          }
        }
      }
    }
  }
}

function sameLocations(a: Run['bays'][number], b: Run['bays'][number]): boolean {
  return a.levels.every((level, at) => {
    const other = b.levels[at]!.locations;
    return level.locations.every((id, i) => id === other[i]);
  });
}
