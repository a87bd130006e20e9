import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSiteText, writeSiteText } from '../../lib/model/site-file.ts';
import { MOST, type RunDescription } from '../../lib/rack-shape/description.ts';
import { locationsOf } from '../../lib/rack-shape/neighbours.ts';
import { shapeRun } from '../../lib/rack-shape/shape-run.ts';
import { accepted, anyDescription, describeRun, made, neighbours, site } from './describe.ts';

const SEED = 20260914;
const faults = (overrides: Partial<RunDescription>) => {
  const shaped = shapeRun(describeRun(overrides), neighbours);
  return shaped.ok ? [] : shaped.refusals;
};
const [first, second] = describeRun().levels;

describe('a described run', () => {
  it('has n + 1 frames, unique ids, and is accepted and read back by lib/model', () => {
    fc.assert(
      fc.property(anyDescription, (description) => {
        const run = made(shapeRun(description, neighbours));
        expect(run.frames).toHaveLength(run.bays.length + 1);
        const ids = locationsOf(run);
        expect(new Set(ids).size).toBe(ids.length);
        const whole = accepted([...site.runs, run]);
        const again = readSiteText(writeSiteText(whole));
        expect(again.ok && again.site).toEqual(whole);
        expect(whole.runs.at(-1)).toEqual(run);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('stands as it was described', () => {
    const run = made(shapeRun(describeRun(), neighbours));
    expect(run.bays.map((bay) => bay.id)).toEqual(['B-R-01', 'B-R-02', 'B-R-03']);
    expect(run.frames.map((frame) => frame.id)).toEqual(['B-R-F00', 'B-R-F01', 'B-R-F02', 'B-R-F03']);
    expect(run.bays[1]!.levels.map((level) => [level.level, level.beamTopMm])).toEqual([
      [0, 0],
      [1, 1500],
      [2, 3000],
    ]);
    expect(run.bays[2]!.levels[1]).toEqual({
      level: 1,
      beamTopMm: 1500,
      beamHeightMm: 120,
      pairCapacityKg: 2400,
      depthPositions: 1,
      maxUnitKg: 1000,
      decked: false,
      condition: 'sound',
      locations: ['B-R-03-1-1', 'B-R-03-1-2', 'B-R-03-1-3'],
    });
  });

  it('without a used floor begins at the first beam', () => {
    const run = made(shapeRun(describeRun({ floor: null }), neighbours));
    expect(run.bays[0]!.levels.map((level) => level.level)).toEqual([1, 2]);
  });

  it('takes a width for each bay, and another type for its end frames', () => {
    const types = { ...neighbours, frameTypeIds: new Set(['f90', 'f110']) };
    const run = made(
      shapeRun(describeRun({ clearWidthsMm: [2700, 1350, 900], endFrameTypeId: 'f110' }), types),
    );
    expect(run.bays.map((bay) => bay.clearWidthMm)).toEqual([2700, 1350, 900]);
    expect(run.frames.map((frame) => frame.typeId)).toEqual(['f110', 'f90', 'f90', 'f110']);
  });
});

describe('a description is refused at its field', () => {
  it.each<[string, Partial<RunDescription>, string, object]>([
    ['a count that is missing', { bayCount: null }, 'bayCount', { is: 'missing' }],
    ['a figure that cannot be read', { maxBayLoadKg: 'unread' }, 'maxBayLoadKg', { is: 'not-read' }],
    ['no bay', { bayCount: 0 }, 'bayCount', { is: 'out-of-range', from: 1 }],
    ['half a bay', { bayCount: 2.5 }, 'bayCount', { is: 'out-of-range' }],
    ['too many bays', { bayCount: MOST.bays + 1 }, 'bayCount', { is: 'out-of-range', to: MOST.bays }],
    [
      'widths for two of three bays',
      { clearWidthsMm: [1, 2] },
      'clearWidthsMm',
      { is: 'wrong-count', expected: 3, came: 2 },
    ],
    ['an aisle that the site lacks', { aisleId: 'nowhere' }, 'aisleId', { is: 'no-such', what: 'aisle' }],
    ['a frame type that the site lacks', { frameTypeId: 'x' }, 'frameTypeId', { is: 'no-such' }],
    ['a run that stands already', { id: 'a' }, 'id', { is: 'run-known' }],
    ['an id with a blank at its end', { id: 'B ' }, 'id', { is: 'unfit-id' }],
    ['nothing to stand on', { floor: null, levels: [] }, 'levels', { is: 'no-levels' }],
    [
      'a beam whose underside meets the beam below',
      { levels: [first!, { ...second!, beamTopMm: 1620 }] },
      'levels[1].beamTopMm',
      { is: 'no-opening', belowMm: 1500 },
    ],
    [
      'a pattern without the bay',
      { labels: { ...describeRun().labels, pattern: '{level}-{position}' } },
      'labels.pattern',
      { is: 'label-twice', label: '0-1' },
    ],
    [
      'a part that is not known',
      { labels: { ...describeRun().labels, pattern: '{bays}' } },
      'labels.pattern',
      { is: 'unknown-part', nearest: 'bay' },
    ],
    [
      'a brace that stays open',
      { labels: { ...describeRun().labels, pattern: '{bay-{level}' } },
      'labels.pattern',
      { is: 'open-brace' },
    ],
    [
      'a floor written in letters from 0',
      { labels: { ...describeRun().labels, pattern: '{bay}{level:A}{position}' } },
      'labels.pattern',
      { is: 'letters-below-one', part: 'level' },
    ],
    [
      'labels that stand in another run',
      { labels: { ...describeRun().labels, pattern: 'a{bay}-{level}-{position}' } },
      'labels.pattern',
      { is: 'label-elsewhere', label: 'a1-0-1', run: 'a', count: 12 },
    ],
  ])('%s', (_name, overrides, field, fault) => {
    expect(faults(overrides)).toContainEqual({ field, fault: expect.objectContaining(fault) });
  });

  it('but not a beam a hair above the one below', () => {
    expect(faults({ levels: [first!, { ...second!, beamTopMm: 1620.1 }] })).toEqual([]);
  });
});
