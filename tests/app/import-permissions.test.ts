import { describe, expect, it } from 'vitest';
import { exportedOf, fileName } from '../../app/export/file-name.ts';
import { listPermission, mayImport, neededPermissions } from '../../app/import/needed-permissions.ts';
import { planDigest } from '../../app/import/plan-digest.ts';
import type { Change } from '../../lib/import/draft.ts';
import { LIST_NAMES, type ListName } from '../../lib/import/lists.ts';

const field = (fact: string) => ({ fact, before: 1, after: 2 });
const level = (...facts: string[]): Change => ({ what: 'level', id: 'a 1 1', fields: facts.map(field) });
const plan = (list: ListName, changed: Change[] = [], added = 0) => ({
  list,
  changed,
  added: Array.from({ length: added }, (_, at) => ({ what: 'entry' as const, id: `n${at}` })),
});

describe('what an import must be allowed to do', () => {
  it.each([
    ['nothing where nothing changes', [plan('trucks'), plan('locations')], []],
    [
      'trucks for plates as for trucks',
      [plan('plateRatings', [], 1), plan('trucks', [], 1)],
      ['change-trucks'],
    ],
    ['racks for new locations', [plan('locations', [], 1)], ['change-racks']],
    ['racks for a beam top', [plan('locations', [level('beamTopMm')])], ['change-racks']],
    ['an inspection for a condition', [plan('locations', [level('levelCondition')])], ['record-inspection']],
    [
      'both for both',
      [plan('locations', [level('beamTopMm', 'levelCondition'), level('frameCondition')])],
      ['change-racks', 'record-inspection'],
    ],
    ['each list its own', [plan('loads', [], 1), plan('stock', [], 1)], ['change-loads', 'move-stock']],
  ])('is %s', (_what, plans, needed) => {
    expect(neededPermissions(plans)).toEqual(needed);
  });

  it('lets a planner read in racks, loads and stock, a safety officer the facts that verdicts rest on', () => {
    const lists = (role: Parameters<typeof mayImport>[0]) =>
      LIST_NAMES.filter((list) => mayImport(role, list));
    expect(lists('planner')).toEqual([
      'palletTypes',
      'aisles',
      'docks',
      'locations',
      'loads',
      'items',
      'stock',
    ]);
    expect(lists('safety-officer')).toEqual([
      ...['frameTypes', 'locations', 'trucks', 'plateRatings', 'operators', 'checks'],
    ]);
    for (const role of ['shift-lead', 'administrator', 'viewer'] as const) expect(lists(role)).toEqual([]);
    expect(listPermission('items')).toBe('change-loads');
  });
});

describe('the digest of a dry run', () => {
  const shown = {
    list: 'loads' as const,
    mode: 'all-or-nothing' as const,
    applies: true,
    added: [{ what: 'entry' as const, id: 'a' }],
    changed: [{ what: 'entry' as const, id: 'b', fields: [{ fact: 'grossKg', before: 1, after: 2 }] }],
    unchanged: 3,
    refused: [],
    notes: { baysByName: [], locationsByName: 0 },
  };

  it('is the same for the same, and sixteen hexadecimal digits', () => {
    expect(planDigest([shown])).toBe(planDigest([structuredClone(shown)]));
    expect(planDigest([shown])).toMatch(/^[0-9a-f]{16}$/);
  });

  it.each([
    [
      'another value before',
      { changed: [{ ...shown.changed[0]!, fields: [{ fact: 'grossKg', before: 1.5, after: 2 }] }] },
    ],
    ['another added', { added: [{ what: 'entry' as const, id: 'c' }] }],
    [
      'added rather than changed',
      { added: [...shown.added, { what: 'entry' as const, id: 'b' }], changed: [] },
    ],
    ['one unchanged more', { unchanged: 4 }],
    ['the other mode', { mode: 'good-rows-only' as const }],
    [
      'a refused row',
      {
        refused: [
          { file: 'f', row: 2, column: null, fact: null, came: 'x', expected: { is: 'yes-or-no' as const } },
        ],
      },
    ],
  ])('differs for %s', (_what, change) => {
    expect(planDigest([{ ...shown, ...change }])).not.toBe(planDigest([shown]));
  });
});

describe('the name of an exported file', () => {
  it.each([
    ['Harbour store', 'Harbour-store-2026-03-02-stock.csv'],
    ['Öland ⚓ "north" \\ shed', 'Oland-north-shed-2026-03-02-stock.csv'],
    ['../..', 'site-2026-03-02-stock.csv'],
    ['仓库', 'site-2026-03-02-stock.csv'],
    ['a'.repeat(200), `${'a'.repeat(60)}-2026-03-02-stock.csv`],
  ])('of the site %j holds its name and the day', (site, name) => {
    expect(fileName(site, new Date('2026-03-02T23:59:59Z'), 'stock.csv')).toBe(name);
  });

  it('asks for a list, for all of them, for the site, or for nothing', () => {
    expect(exportedOf('stock.csv')).toEqual({ what: 'list', list: 'stock' });
    expect(exportedOf('lists.zip')).toEqual({ what: 'all' });
    expect(exportedOf('site.json')).toEqual({ what: 'site' });
    for (const wrong of ['stock', 'nothing.csv', '../site.json', 'stock.csv.csv', ''])
      expect(exportedOf(wrong)).toBeNull();
  });
});
