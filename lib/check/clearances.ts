import type { ClearanceClass } from '../model/policy.ts';

/** X3 load to upright, X4 load to load, Y load to the beam above, all mm. */
export type Clearances = { x3Mm: number; x4Mm: number; yMm: number };

type Row = { upToMm: number } & Clearances;

// EN 15620:2008, from memory.
const CLASS_400: readonly Row[] = [
  { upToMm: 3000, x3Mm: 75, x4Mm: 75, yMm: 75 },
  { upToMm: 6000, x3Mm: 75, x4Mm: 75, yMm: 100 },
  { upToMm: 9000, x3Mm: 75, x4Mm: 75, yMm: 125 },
  { upToMm: 13000, x3Mm: 100, x4Mm: 100, yMm: 150 },
];

// EN 15620:2008, from memory; the safer of two printings above 9000 mm.
const CLASS_300A: readonly Row[] = [
  { upToMm: 9000, x3Mm: 75, x4Mm: 75, yMm: 75 },
  { upToMm: 13000, x3Mm: 100, x4Mm: 100, yMm: 100 },
];

/**
 * What clearances does a load need in its opening?
 *
 * EN 15620 classes by the level's beam top: the first row with beamTopMm <= upToMm (equality keeps the lower row),
 * past the last row the last; no interpolation. AS 4084: X3 75, X4 100, Y 100 where beamTopMm + loadHeightMm < 6000,
 * else 125 (equality takes 125).
 */
export function clearancesFor(
  policyClass: ClearanceClass,
  beamTopMm: number,
  loadHeightMm: number,
): Clearances {
  switch (policyClass) {
    case '400':
    case '300B':
      return rowFor(CLASS_400, beamTopMm);
    case '300A':
      return rowFor(CLASS_300A, beamTopMm);
    case 'AS4084':
      return { x3Mm: 75, x4Mm: 100, yMm: beamTopMm + loadHeightMm < 6000 ? 100 : 125 };
  }
}

/** The name of the table that a clearance class is read from. */
export function clearanceSource(policyClass: ClearanceClass): string {
  return policyClass === 'AS4084' ? 'AS 4084' : `EN 15620:2008 class ${policyClass}`;
}

function rowFor(rows: readonly Row[], beamTopMm: number): Clearances {
  return rows.find((row) => beamTopMm <= row.upToMm) ?? rows.at(-1)!;
}
