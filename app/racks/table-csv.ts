import Papa from 'papaparse';
import {
  assessedAt,
  mostAt,
  type RacksAnswer,
  ruleAt,
  spareAt,
  truckAt,
  verdictAt,
} from '@/app/_parts/racks-answer.ts';

/**
 * The listed locations as CSV: masses in kg, heights in mm, whatever is shown on the screen; blank where a value cannot
 * be said. Text that a spreadsheet would take for a formula is made harmless.
 */
export function locationsCsv(answer: RacksAnswer, rows: readonly number[]): string {
  const lines = rows.map((at) => {
    const place = answer.places[at]!;
    const verdict = verdictAt(answer, at);
    return {
      location: place.id,
      run: place.run.id,
      bay: place.bay.id,
      level: place.level.level,
      row: place.row,
      beamTopMm: place.level.beamTopMm,
      standing: answer.index.stockAt.get(place.id)?.id ?? '',
      verdict: verdict ?? '',
      decidedBy: ruleAt(answer, at) ?? '',
      truck: truckAt(answer, at) ?? '',
      ableTrucks: verdict === null ? '' : answer.summary.clear[at]! + answer.summary.thin[at]!,
      assessedKg: verdict === null ? '' : (assessedAt(answer, at) ?? ''),
      mostKg: mostAt(answer, at) ?? '',
      spareKg: verdict === null ? '' : (spareAt(answer, at) ?? ''),
    };
  });
  return Papa.unparse(lines, { escapeFormulae: true, columns: COLUMNS, newline: '\r\n' });
}

const COLUMNS = [
  'location',
  'run',
  'bay',
  'level',
  'row',
  'beamTopMm',
  'standing',
  'verdict',
  'decidedBy',
  'truck',
  'ableTrucks',
  'assessedKg',
  'mostKg',
  'spareKg',
];
