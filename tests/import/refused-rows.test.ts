import { describe, expect, it } from 'vitest';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import { planImport } from '../../lib/import/plan-import.ts';
import { refusedRowsCsv } from '../../lib/import/refused-rows.ts';
import type { Table } from '../../lib/import/table.ts';
import { importRefusalSentence, rowReason } from '../../lib/words/import-refusal.ts';
import { makeSite } from '../site-builder.ts';
import { mappingOf, tableOf } from './list-of.ts';

const site = makeSite();
const HEAD = 'Owner;Load;Name;Gross lb;Mass basis;Depth in;Width in;Height in';

describe('the refused rows as a file', () => {
  const table = tableOf(
    `${HEAD}\r\nme;bags;"=Bags; ""big""";1.000,5;declared;48;40;35\r\nyou;tins;Tins;heavy;guessed;48;40;35\r\nhim;pots;+Pots;500;declared;x;40;35\r\n`,
  );
  const mapping = mappingOf('loads', table);
  const plan = planImport(site, 'loads', table, mapping, { mode: 'good-rows-only' });
  const csv = refusedRowsCsv(table, mapping, plan.refused, rowReason);

  it('holds them as they came, with all their columns, their numbers and the reasons', () => {
    const again = tableOf(csv);
    expect(again.header).toEqual([...HEAD.split(';'), 'Refused row', 'Refused because']);
    expect(again.rows).toEqual([
      [
        'you',
        'tins',
        'Tins',
        'heavy',
        'guessed',
        '48',
        '40',
        '35',
        '3',
        '"heavy" came, a number with a decimal comma and . between thousands was expected. "guessed" came, one of "weighed", "calculated", "declared" was expected.',
      ],
      [
        'him',
        'pots',
        "'+Pots",
        '500',
        'declared',
        'x',
        '40',
        '35',
        '4',
        '"x" came, a number with a decimal point and no mark between thousands was expected.',
      ],
    ]);
  });

  it('is parted as the file was', () => {
    expect(csv.split('\r\n')[0]).toBe(`\ufeff${HEAD};Refused row;Refused because`);
  });

  it('comes in by the same mapping once it is mended', () => {
    const mended = tableOf(
      csv.replace('heavy', '2.000,5').replace('guessed', 'weighed').replace(';x;', ';47.5;'),
    );
    const second = planImport(plan.site, 'loads', mended, mapping);
    expect(second.refused).toEqual([]);
    expect(second.site.loads.map(({ id, name }) => [id, name])).toEqual([
      ['crates', 'Crates'],
      ['drums', 'Drums'],
      ['bags', '=Bags; "big"'],
      ['tins', 'Tins'],
      ['pots', '+Pots'],
    ]);
    // 2000.5 lb x 0.45359237 by hand.
    expect(second.site.loads[3]!.grossKg).toBe(907.411536185);
  });

  it('writes the numbers of a spreadsheet as the column writes its others', () => {
    const sheet: Table = {
      ...table,
      rows: [
        ['me', 'bags', 'Bags', 1000.5, 'x', 48, 40, 35],
        ['you', 'tins', 'Tins', '1.000,5', 'x', 48.5, 40, null],
      ],
      rowNumbers: [2, 3],
    };
    const all = planImport(site, 'loads', sheet, mapping);
    const again = tableOf(refusedRowsCsv(sheet, mapping, all.refused, rowReason));
    expect(again.rows.map((cells) => cells.slice(3, 8))).toEqual([
      ['1000,5', 'x', '48', '40', '35'],
      ['1.000,5', 'x', '48.5', '40', ''],
    ]);
  });

  it('of our own export is still known as ours', () => {
    const own = tableOf('Location,Load,Refused row,Refused because\na1-1-1,-,2,x\n');
    expect(guessMapping('stock', own).mapping).toMatchObject({ trim: false, nullWords: [''] });
  });

  it('is said to a person with file, row and column', () => {
    expect(importRefusalSentence(plan.refused[2]!)).toBe(
      'list.csv, row 4, column Depth in: "x" came, a number with a decimal point and no mark between thousands was expected.',
    );
  });
});
