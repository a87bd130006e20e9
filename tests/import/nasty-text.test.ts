import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardCell, unguardCell } from '../../lib/import/cell-guard.ts';
import { joinTexts, splitTexts } from '../../lib/import/cell-list.ts';
import { exportList } from '../../lib/import/export-lists.ts';
import { LIST_NAMES } from '../../lib/import/lists.ts';
import { planImport } from '../../lib/import/plan-import.ts';
import { planImports } from '../../lib/import/plan-imports.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { drawSite } from '../properties/arbitrary-site.ts';
import { makeLoad, makeSite, makeTruck } from '../site-builder.ts';
import { mappingOf, tableOf } from './list-of.ts';

const NASTY = [
  '=1+1',
  "'=1+1",
  "''@x",
  '+4',
  '-4',
  '@sum',
  '\t=x',
  '\r',
  'two\nlines',
  'two\r\nlines',
  '"quoted"',
  '"',
  'a;b,c\td',
  '\ufeffmark',
  'unknown',
  '-',
  'n/a',
  'none',
  'yes',
  '1,5',
  '1.200',
  'Größe',
  '日本',
  '👷‍♀️',
  'é',
  '_x000D_',
  '\\',
  '\\;',
  '\\n',
  '; ',
  '＝１',
  "'",
  ' x ',
  '\u00a0',
  'sep=;',
];
const fragment = fc.oneof(
  fc.constantFrom(...NASTY),
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc.string({ maxLength: 8 }),
);
const nasty = fc
  .array(fragment, { minLength: 1, maxLength: 4 })
  .map((parts) => parts.join('').replaceAll('\0', '').slice(0, 200));
// Half a surrogate pair is no text: UTF-8 cannot hold it.
const text = nasty.filter(
  (value) =>
    /\S/.test(value) &&
    value.isWellFormed() &&
    !/^\s*#(ref!|n\/a|value!|div\/0!|name\?|null!|num!|spill!|calc!)\s*$/i.test(value),
);
const id = text.filter((value) => /^\S(?:.*\S)?$/.test(value) && value.length <= 120);

describe('the guard against formulas', () => {
  it.each(['=1', '+1', '-1', '@a', '\t=1', '\r=1', '\n=1', '＝1'])('stands before %j', (value) => {
    expect(guardCell(value)).toBe(`'${value}`);
    expect(unguardCell(`'${value}`)).toBe(value);
  });

  it.each(['a=1', ' =1', "it's", "'", "'quoted'", '1-2', ''])('leaves %j alone, both ways', (value) => {
    expect(guardCell(value)).toBe(value);
    expect(unguardCell(value)).toBe(value);
  });

  it('comes off exactly as it was put on, and no guarded text starts a formula', () => {
    fc.assert(
      fc.property(nasty, (value) => {
        expect(unguardCell(guardCell(value))).toBe(value);
        expect(guardCell(value)).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

describe('several texts in a cell', () => {
  it('come back as they were', () => {
    fc.assert(
      fc.property(fc.array(text, { maxLength: 4 }), (texts) => {
        expect(splitTexts(joinTexts(texts))).toEqual(texts);
      }),
    );
  });

  it('are parted by semicolons or line breaks where another program wrote them', () => {
    expect(splitTexts('horn;brake; \nworn tyre')).toEqual(['horn', 'brake', 'worn tyre']);
    expect(splitTexts('C:\\photos')).toEqual(['C:\\photos']);
  });
});

describe('nasty texts', () => {
  it('go out and come back to the letter, into the same site and into an empty one', () => {
    const facts = fc.record({
      ids: fc.uniqueArray(id, { minLength: 3, maxLength: 3 }),
      texts: fc.array(text, { minLength: 8, maxLength: 8 }),
      mass: fc.double({ min: 1e-6, max: 1e7, noNaN: true }),
    });
    fc.assert(
      fc.property(facts, ({ ids, texts, mass }) => {
        const [a, b, c] = ids as [string, string, string];
        const site = makeSite({
          loads: [
            makeLoad({
              id: a,
              name: texts[0],
              group: texts[1],
              grossKg: mass,
              heightMm: mass,
              items: [{ name: texts[2]!, massKg: mass, count: 3 }],
            }),
          ],
          trucks: [
            makeTruck({
              id: b,
              name: texts[3],
              fittedAttachment: texts[4],
              hold: { since: '2026-03-02', reason: texts[5]! },
            }),
          ],
          operators: [{ id: c, name: texts[6]!, authorisations: [] }],
          stock: [{ location: 'a1-1-1', load: a }],
          checks: [{ truck: b, at: '2026-03-02T06:00:00.5Z', by: texts[7]!, result: 'fail', defects: texts }],
        });
        const lists = LIST_NAMES.map((list) => {
          const table = tableOf(exportList(site, list));
          return { list, table, mapping: mappingOf(list, table) };
        });
        for (const { list, table, mapping } of lists) {
          const plan = planImport(site, list, table, mapping);
          expect([plan.refused, plan.added, plan.changed]).toEqual([[], [], []]);
        }
        const empty = makeSite({
          palletTypes: [],
          frameTypes: [],
          aisles: [],
          runs: [],
          docks: [],
          trucks: [],
          operators: [],
          loads: [],
          stock: [],
          checks: [],
        });
        expect(planImports(empty, lists).site).toEqual(site);
      }),
      { numRuns: 80 },
    );
  });

  it('never make an exported cell that starts a formula', () => {
    fc.assert(
      fc.property(id, text, (loadId, name) => {
        const table = tableOf(
          exportList(makeSite({ loads: [makeLoad({ id: loadId, name, group: name })], stock: [] }), 'loads'),
        );
        for (const cell of table.rows.flat()) expect(String(cell)).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

describe('random sites', () => {
  it('go out list by list and come back without a change, and whole from nothing', () => {
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const drawn = drawSite(g);
        const seen = new Set<string>();
        // Two checks of one truck by one person at one moment are one check to the import.
        const checks = drawn.checks.filter(({ truck, at, by }) => {
          const key = JSON.stringify([truck, at, by]);
          return !seen.has(key) && seen.add(key);
        });
        const reading = readSite({ ...drawn, checks });
        if (!reading.ok) throw new Error('the drawn site is one');
        const { site } = reading;
        const lists = LIST_NAMES.map((list) => {
          const table = tableOf(exportList(site, list));
          return { list, table, mapping: mappingOf(list, table) };
        });
        for (const { list, table, mapping } of lists) {
          const plan = planImport(site, list, table, mapping);
          expect([list, plan.refused, plan.added, plan.changed]).toEqual([list, [], [], []]);
        }
        const empty = {
          ...site,
          palletTypes: [],
          frameTypes: [],
          aisles: [],
          runs: [],
          docks: [],
          trucks: [],
          operators: [],
          loads: [],
          stock: [],
          checks: [],
        };
        const all = planImports(empty, lists);
        expect(all.plans.flatMap(({ refused }) => refused)).toEqual([]);
        expect(all.site).toEqual(site);
      }),
      { numRuns: 40 },
    );
  });
});
