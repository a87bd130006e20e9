import { describe, expect, it } from 'vitest';
import { exportList } from '../../lib/import/export-lists.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { makeBay, makeFrame, makeLevel, makeRun, makeSite } from '../site-builder.ts';
import { planOf, refusals } from './list-of.ts';

const site = makeSite();
const bare = makeSite({ runs: [], stock: [], checks: [] });

const CONSTANTS = {
  frameDepthMm: '1100',
  depthPositions: '1',
  decked: 'no',
  levelCondition: 'sound',
  frameType: 'f90',
  frameCondition: 'sound',
};

const HEAD =
  'Location,Run,Aisle,Bay,Level,Beam top (mm),Beam height (mm),Pair capacity (kg),Bay clear width (mm)';

/** Rows of one run: bay, level, beam top and beam height by bay and level; two locations to a level. */
function rows(bays: readonly string[], levels: readonly number[] = [0, 1]): string[] {
  return bays.flatMap((bay) =>
    levels.flatMap((level) =>
      [1, 2].map((position) => {
        const top = level * 1500;
        return `${bay}-${level}-${position},b,aisle-1,${bay},${level},${top},${level === 0 ? 0 : 120},${level === 0 ? '' : 2400},2700`;
      }),
    ),
  );
}

const plan = (lines: readonly string[], head = HEAD, constants: Record<string, string> = CONSTANTS) =>
  planOf(bare, 'locations', `${head}\n${lines.join('\n')}\n`, { constants });

describe('rows of locations', () => {
  it('assemble into runs, frames, bays and levels', () => {
    const { refused, added, notes, site: after } = plan(rows(['b1', 'b2']));
    expect(refused).toEqual([]);
    expect(after.runs).toEqual([
      makeRun({
        id: 'b',
        at: null,
        frames: [makeFrame({ id: 'b-f1' }), makeFrame({ id: 'b-f2' }), makeFrame({ id: 'b-f3' })],
        bays: ['b1', 'b2'].map((id) =>
          makeBay(id, {
            maxBayLoadKg: null,
            levels: [makeLevel(id, 0), makeLevel(id, 1, { maxUnitKg: null })],
          }),
        ),
      }),
    ]);
    const counts = new Map<string, number>();
    for (const { what } of added) counts.set(what, (counts.get(what) ?? 0) + 1);
    expect(Object.fromEntries(counts)).toEqual({
      run: 1,
      frame: 3,
      bay: 2,
      level: 4,
      location: 8,
    });
    expect(notes).toEqual({ baysByName: ['b'], locationsByName: 8 });
  });

  it('make the same racks in whatever order they come, levels from the top down included', () => {
    const lines = rows(['b1', 'b2', 'b10'], [0, 1, 2]);
    const straight = plan(lines).site;
    expect(straight.runs[0]!.bays.map(({ id }) => id)).toEqual(['b1', 'b2', 'b10']);
    expect(plan([...lines].reverse()).site).toEqual(straight);
    const mixed = [...lines].sort((a, b) => a.slice(3).localeCompare(b.slice(3)) || a.localeCompare(b));
    expect(plan(mixed).site).toEqual(straight);
  });

  it('take a fact of a level from any of its rows', () => {
    const lines = rows(['b1']).map((line, at) =>
      at % 2 === 1 ? line.replace(/,(\d+),(\d+),(\d*),2700$/, ',,,,') : line,
    );
    expect(plan(lines).site).toEqual(plan(rows(['b1'])).site);
  });

  it('give the floor its beam top and height of nothing when they are blank', () => {
    const lines = rows(['b1']).map((line) => line.replace(',0,0,0,,', ',0,,,,'));
    expect(plan(lines).refused).toEqual([]);
    expect(plan(lines).site.runs[0]!.bays[0]!.levels[0]).toMatchObject({ beamTopMm: 0, beamHeightMm: 0 });
  });
});

describe('a run', () => {
  it('comes in whole or not at all: the other rows say which one was at fault', () => {
    const lines = rows(['b1', 'b2']);
    lines[5] = lines[5]!.replace('2700', 'wide');
    const other = rows(['c1']).map((line) => line.replace(',b,', ',c,'));
    const { refused, site: after } = plan([...lines, ...other]);
    expect(refused).toHaveLength(8);
    expect(refused.filter(({ expected }) => expected.is === 'whole-entry').map(({ row }) => row)).toEqual([
      2, 3, 4, 5, 6, 8, 9,
    ]);
    expect(refused.find(({ row }) => row === 7)).toMatchObject({
      column: 'Bay clear width (mm)',
      came: '"wide"',
    });
    expect(refused[0]!.expected).toEqual({ is: 'whole-entry', what: 'run', id: 'b', row: 7 });
    expect(after.runs.map(({ id }) => id)).toEqual(['c']);
  });

  const first = (line: number, from: string | RegExp, to: string, lines = rows(['b1', 'b2'])) => {
    lines[line] = lines[line]!.replace(from, to);
    return refusals(plan(lines)).filter(([, , , is]) => is !== 'whole-entry');
  };

  it.each([
    ['a location twice', 1, 'b1-0-2', 'b1-0-1', [[3, 'Location', '"b1-0-1"', 'once-in-file']]],
    [
      'an aisle that the site does not have',
      2,
      'aisle-1',
      'aisle-7',
      [
        [4, 'Aisle', '"aisle-7"', 'id-in'],
        [4, 'Aisle', '"aisle-7"', 'same-as-row'],
      ],
    ],
    ['two beam tops on one level', 3, ',1500,', ',1510,', [[5, 'Beam top (mm)', '"1510"', 'same-as-row']]],
    ['two widths of one bay', 3, ',2700', ',2800', [[5, 'Bay clear width (mm)', '"2800"', 'same-as-row']]],
    ['no bay', 1, ',b1,', ',,', [[3, 'Bay', 'nothing', 'bay-for-level']]],
    ['no level', 1, ',b1,0,', ',b1,,', [[3, 'Level', 'nothing', 'level-for-location']]],
    ['no run', 1, ',b,', ',,', [[3, 'Run', 'nothing', 'present']]],
  ] as const)('with %s is refused', (_, line, from, to, expected) => {
    expect(first(line, from, to)).toEqual(expected);
  });

  it('with half a level is refused', () => {
    expect(first(2, ',b1,1,', ',b1,1.5,')).toEqual([
      [4, 'Level', '"1.5"', 'whole-number'],
      [4, 'Beam top (mm)', '"1500"', 'higher-than-level-below'],
    ]);
  });

  it('whose levels do not rise with their numbers is refused at the level', () => {
    const lines = rows(['b1'], [0, 1, 2]).map((line) => line.replace(',3000,', ',1400,'));
    const found = refusals(plan(lines)).filter(([, , , is]) => is !== 'whole-entry');
    expect(found).toEqual([[6, 'Beam top (mm)', '"1400"', 'higher-than-level-below']]);
  });

  it.each([
    [1501, []],
    [1500, [[6, 'Beam top (mm)', '"1500"', 'higher-than-level-below']]],
    [1499, [[6, 'Beam top (mm)', '"1499"', 'higher-than-level-below']]],
  ])('with level 2 at %d over level 1 at 1500', (top, expected) => {
    const lines = rows(['b1'], [0, 1, 2]).map((line) => line.replace(',3000,', `,${top},`));
    expect(refusals(plan(lines)).filter(([, , , is]) => is !== 'whole-entry')).toEqual(expected);
  });

  it('with a floor that is not at 0, or a beam that is, is refused', () => {
    expect(
      first(
        0,
        ',0,0,0,,',
        ',0,100,0,,',
        rows(['b1']).filter((_, at) => at !== 1),
      ),
    ).toEqual([[2, 'Beam top (mm)', '"100"', 'floor-at-zero']]);
    expect(
      first(
        2,
        ',1500,120,',
        ',0,120,',
        rows(['b1']).filter((_, at) => at !== 3),
      ),
    ).toEqual([
      [4, 'Beam top (mm)', '"0"', 'beam-above-floor'],
      [4, 'Beam top (mm)', '"0"', 'higher-than-level-below'],
    ]);
  });

  it('lacks what no column and no constant gives, once for each place', () => {
    const { frameDepthMm: _, ...without } = CONSTANTS;
    const found = refusals(plan(rows(['b1']), HEAD, without)).filter(([, , , is]) => is !== 'whole-entry');
    expect(found).toEqual([[2, null, 'nothing', 'present']]);
  });
});

describe('the order of bays', () => {
  const ordered = (orders: readonly (number | string)[]) =>
    planOf(
      bare,
      'locations',
      `${HEAD},Bay number along the run\n${rows(['x', 'y', 'z'], [1])
        .filter((_, at) => at % 2 === 0)
        .map((line, at) => `${line},${orders[at]}`)
        .join('\n')}\n`,
      { constants: CONSTANTS },
    );

  it('is the stated one, whatever the names', () => {
    const { site: after, notes } = ordered([3, 1, 2]);
    expect(after.runs[0]!.bays.map(({ id }) => id)).toEqual(['y', 'z', 'x']);
    expect(notes.baysByName).toEqual([]);
  });

  it.each([
    ['a bay that is missing', [1, 2, 4], { row: 4, came: '"4"', expected: { is: 'next-in-order', next: 3 } }],
    ['the first bay missing', [2, 3, 4], { row: 2, expected: { is: 'next-in-order', next: 1 } }],
    ['two bays in one place', [1, 2, 2], { row: 4, expected: { is: 'place-of-its-own', firstRow: 3 } }],
    ['one bay without a number', [1, '', 2], { row: 3, expected: { is: 'order-column' } }],
    ['half a number', [1, 1.5, 2], { row: 3, expected: { is: 'next-in-order', next: 2 } }],
  ])('with %s is refused', (_, orders, expected) => {
    const { refused, site: after } = ordered(orders);
    expect(refused.find((refusal) => refusal.expected.is !== 'whole-entry')).toMatchObject({
      column: 'Bay number along the run',
      ...expected,
    });
    expect(after.runs).toEqual([]);
  });
});

describe('two locations deep', () => {
  const head = `${HEAD},Row,Position`;
  const deep = (cells: readonly [string, string, string][]) =>
    planOf(
      bare,
      'locations',
      `${head}\n${cells.map(([id, row, position]) => `${id},b,aisle-1,b1,1,1500,120,2400,2700,${row},${position}`).join('\n')}\n`,
      { constants: { ...CONSTANTS, depthPositions: '2' } },
    );

  it('stand front row then rear row, left to right', () => {
    const { refused, site: after } = deep([
      ['r2', 'rear', '2'],
      ['f1', 'Front', '1'],
      ['r1', '2', '1'],
      ['f2', '1', '2'],
    ]);
    expect(refused).toEqual([]);
    expect(after.runs[0]!.bays[0]!.levels[0]!.locations).toEqual(['f1', 'f2', 'r1', 'r2']);
  });

  it('are refused without a row, with rows of different length, or with a place taken or left out', () => {
    const of = (cells: [string, string, string][]) =>
      refusals(deep(cells)).filter(([, , , is]) => is !== 'whole-entry');
    expect(
      of([
        ['f1', '', '1'],
        ['r1', 'rear', '1'],
      ]),
    ).toEqual([[2, 'Row', 'nothing', 'present']]);
    expect(
      of([
        ['f1', 'front', '1'],
        ['f2', 'front', '2'],
        ['f3', 'front', '3'],
        ['r1', 'rear', '1'],
      ]),
    ).toEqual([[2, 'Location', '"f1"', 'even-positions']]);
    expect(
      of([
        ['f1', 'front', '1'],
        ['f2', 'front', '1'],
        ['r1', 'rear', '1'],
        ['r2', 'rear', '3'],
      ]),
    ).toEqual([
      [3, 'Position', '"1"', 'place-of-its-own'],
      [5, 'Position', '"3"', 'next-in-order'],
    ]);
  });

  it('on a level one deep are refused', () => {
    const found = planOf(bare, 'locations', `${head}\nf1,b,aisle-1,b1,1,1500,120,2400,2700,rear,1\n`, {
      constants: CONSTANTS,
    });
    expect(refusals(found)).toEqual([[2, 'Row', '"rear"', 'one-of']]);
  });
});

describe('frames', () => {
  const head = `${HEAD},Left frame,Left frame type,Left frame condition,Right frame,Right frame type,Right frame condition`;
  const types = makeSite({
    runs: [],
    stock: [],
    frameTypes: [
      { id: 'f90', ratings: [] },
      { id: 'f120', ratings: [] },
    ],
  });
  const constants = { frameDepthMm: '1100', depthPositions: '1', decked: 'no', levelCondition: 'sound' };
  const framed = (...frames: string[]) => {
    const lines = rows(['b1', 'b2'], [1]).filter((_, at) => at % 2 === 0);
    return planOf(
      types,
      'locations',
      `${head}\n${lines.map((line, at) => `${line},${frames[at]}`).join('\n')}\n`,
      { constants },
    );
  };

  it('are shared between bays and stated once or twice', () => {
    const { refused, site: after } = framed('u1,f90,sound,,,', 'u2,f120,amber,u3,f90,red');
    expect(refused).toEqual([]);
    expect(after.runs[0]!.frames).toEqual([
      { id: 'u1', typeId: 'f90', condition: 'sound' },
      { id: 'u2', typeId: 'f120', condition: 'amber' },
      { id: 'u3', typeId: 'f90', condition: 'red' },
    ]);
    expect(framed('u1,f90,green,u2,f120,amber', 'u2,f120,Amber,u3,f90,red').site).toEqual(after);
  });

  it('that two bays tell differently are refused', () => {
    const found = refusals(framed('u1,f90,sound,u2,f90,sound', 'u2,f120,amber,u3,f90,red'));
    expect(found.filter(([, , , is]) => is !== 'whole-entry')).toEqual([
      [3, 'Left frame type', '"f120"', 'same-as-row'],
      [3, 'Left frame condition', '"amber"', 'same-as-row'],
    ]);
  });

  it('of an unknown type, or of a type that nobody states, are refused', () => {
    expect(
      refusals(framed('u1,f91,sound,,,', 'u2,f90,sound,u3,f90,sound')).filter(
        ([, , , is]) => is !== 'whole-entry',
      ),
    ).toEqual([[2, 'Left frame type', '"f91"', 'id-in']]);
    expect(
      refusals(framed('u1,f90,sound,,,', 'u2,f90,sound,u3,,')).filter(([, , , is]) => is !== 'whole-entry'),
    ).toEqual([
      [3, 'Right frame type', 'nothing', 'present'],
      [3, 'Right frame condition', 'nothing', 'one-of'],
    ]);
  });
});

describe('a level that stands two deep', () => {
  const deep = makeSite({
    runs: [
      makeRun({
        bays: [makeBay('a1', { levels: [makeLevel('a1', 1, { depthPositions: 2, locations: ['f', 'r'] })] })],
        frames: [makeFrame({ id: 'u1' }), makeFrame({ id: 'u2' })],
      }),
    ],
    stock: [],
  });

  it('does not become one deep while a rear location is not in the file', () => {
    expect(refusals(planOf(deep, 'locations', 'Location,Depth positions\nf,1\n'))).toEqual([
      [2, 'Depth positions', '"1"', 'rows-for-depth'],
    ]);
  });

  it('becomes one deep when all its locations are', () => {
    const { refused, site: after } = planOf(
      deep,
      'locations',
      'Location,Depth positions,Position\nf,1,1\nr,1,2\n',
    );
    expect(refused).toEqual([]);
    expect(after.runs[0]!.bays[0]!.levels[0]).toMatchObject({ depthPositions: 1, locations: ['f', 'r'] });
  });
});

describe('rows for racks that stand already', () => {
  it('change only what they state, found by the location alone', () => {
    const {
      refused,
      changed,
      site: after,
    } = planOf(site, 'locations', 'Location,Max unit load kg,Beam condition\na1-1-1,1000,amber\n');
    expect(refused).toEqual([]);
    expect(changed).toEqual([
      {
        what: 'level',
        id: 'a a1 1',
        fields: [
          { fact: 'maxUnitKg', before: 1200, after: 1000 },
          { fact: 'levelCondition', before: 'sound', after: 'amber' },
        ],
      },
    ]);
    expect(readSite(after).ok).toBe(true);
    expect(after.runs[0]!.bays[1]).toEqual(site.runs[0]!.bays[1]);
  });

  it('add a bay behind the last one, whose right frame becomes the shared one', () => {
    const lines = rows(['a3']).map((line) => line.replace(',b,', ',a,'));
    const {
      refused,
      added,
      site: after,
    } = planOf(site, 'locations', `${HEAD}\n${lines.join('\n')}\n`, { constants: CONSTANTS });
    expect(refused).toEqual([]);
    expect(added.filter(({ what }) => what !== 'location' && what !== 'level')).toEqual([
      { what: 'frame', id: 'a 4' },
      { what: 'bay', id: 'a a3' },
    ]);
    expect(after.runs[0]!.frames.map(({ id }) => id)).toEqual(['a-f1', 'a-f2', 'a-f3', 'a-f4']);
  });

  it('that would move a location to another run are refused', () => {
    const lines = rows(['b1']).map((line) => line.replace('b1-0-1', 'a1-0-1'));
    const found = refusals(
      planOf(site, 'locations', `${HEAD}\n${lines.join('\n')}\n`, { constants: CONSTANTS }),
    );
    expect(found.filter(([, , , is]) => is !== 'whole-entry')).toEqual([
      [2, 'Location', '"a1-0-1"', 'same-run'],
    ]);
  });

  it('move a location within its run, and it stands in one place only', () => {
    const {
      refused,
      changed,
      site: after,
    } = planOf(site, 'locations', 'Location,Bay,Level,Position\na1-1-2,a2,1,3\n');
    expect(refused).toEqual([]);
    expect(after.runs[0]!.bays.map((bay) => bay.levels[1]!.locations)).toEqual([
      ['a1-1-1'],
      ['a2-1-1', 'a2-1-2', 'a1-1-2'],
    ]);
    expect(changed).toEqual([
      {
        what: 'location',
        id: 'a1-1-2',
        fields: [
          { fact: 'bay', before: 'a1', after: 'a2' },
          { fact: 'position', before: 2, after: 3 },
        ],
      },
    ]);
  });

  it('whose new bay has no place by name among bays that are not in the order of theirs ask for a number', () => {
    const odd = makeSite({ runs: [makeRun({ bays: [makeBay('n2'), makeBay('n1')] })], stock: [] });
    const lines = rows(['n3']).map((line) => line.replace(',b,', ',a,'));
    const found = refusals(
      planOf(odd, 'locations', `${HEAD}\n${lines.join('\n')}\n`, { constants: CONSTANTS }),
    );
    expect(found.filter(([, , , is]) => is !== 'whole-entry').map(([row, , , is]) => [row, is])).toEqual([
      [2, 'order-column'],
    ]);
  });
});

describe('racks with empty parts', () => {
  it('go out and come back: a level without locations, a bay without levels, a run without bays', () => {
    const sparse = makeSite({
      runs: [
        makeRun({
          bays: [
            makeBay('a1', { levels: [makeLevel('a1', 0, { locations: [] })] }),
            makeBay('a2', { levels: [] }),
          ],
          at: null,
        }),
        makeRun({
          id: 'lone',
          frames: [makeFrame({ id: 'u' })],
          bays: [],
          at: { xMm: 0, yMm: 0, headingDeg: 360 },
        }),
      ],
      stock: [],
    });
    const text = exportList(sparse, 'locations');
    const again = planOf({ ...sparse, runs: [] }, 'locations', text);
    expect(again.refused).toEqual([]);
    expect(again.site.runs).toEqual(sparse.runs);
    expect(planOf(sparse, 'locations', text)).toMatchObject({ refused: [], added: [], changed: [] });
  });
});
