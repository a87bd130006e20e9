import { HyperFormula } from 'hyperformula';
import type { Digest, PlateQuestion } from './plate-question.ts';

/**
 * A spreadsheet as a person would build it: a table of capacities by lift and load centre (a row per kind, a column per
 * truck) and beside each pallet a count and the best margin by formula. Building includes the first calculation.
 */
export function answerBySpreadsheet({ pallets, kinds, trucks }: PlateQuestion): Digest {
  const capacities = kinds.map(({ liftMm, centreMm }) =>
    trucks.map(({ ratings }) =>
      Math.max(
        0,
        ...ratings
          .filter((rating) => rating.liftHeightMm >= liftMm && rating.loadCentreMm >= centreMm)
          .map(({ capacityKg }) => capacityKg),
      ),
    ),
  );
  const rows = pallets.map(({ kind, massKg }, at) => {
    const range = `Capacity!$A$${kind + 1}:$${columnName(trucks.length)}$${kind + 1}`;
    return [massKg, `=COUNTIF(${range},">="&A${at + 1})`, `=IF(B${at + 1}=0,0,MAX(${range})-A${at + 1})`];
  });
  const book = HyperFormula.buildFromSheets(
    { Capacity: capacities, Pallets: rows },
    { licenseKey: 'gpl-v3' },
  );
  const values = book.getSheetValues(book.getSheetId('Pallets')!);
  const digest: Digest = { able: 0, stranded: 0, marginQuarterKg: 0 };
  for (const [, able, margin] of values) {
    digest.able += Number(able);
    if (able === 0) digest.stranded += 1;
    digest.marginQuarterKg += 4 * Number(margin);
  }
  book.destroy();
  return digest;
}

function columnName(count: number): string {
  const high = Math.floor((count - 1) / 26);
  return (high > 0 ? String.fromCharCode(64 + high) : '') + String.fromCharCode(65 + ((count - 1) % 26));
}
