import { describe, expect, it } from 'vitest';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { EMPTY, locationRow, runRanges } from '../../lib/grid/compiled-site.ts';
import { makeBay, makeFrame, makeIndex, makeLevel, makeLoad, makeRun } from '../site-builder.ts';

describe('the columns of a site', () => {
  it('keep the locations in site order and group them in classes of beam top, row and aisle', () => {
    const site = compileSite(makeIndex());
    expect(['a1-0-1', 'a1-2-2', 'a2-0-1'].map((id) => locationRow(site, id))).toEqual([0, 5, 6]);
    expect(locationRow(site, 'none')).toBe(-1);
    expect(site.classes.map(({ beamTopMm, row }) => [beamTopMm, row])).toEqual([
      [0, 1],
      [1500, 1],
      [3000, 1],
    ]);
    expect([...site.classOf]).toEqual([0, 0, 1, 1, 2, 2, 0, 0, 1, 1, 2, 2]);
  });

  it('put the rear row of a double-deep level in a class of its own', () => {
    const locations = ['f1', 'f2', 'r1', 'r2'];
    const bay = makeBay('d', { levels: [makeLevel('d', 1, { depthPositions: 2, locations })] });
    const frames = [makeFrame({ id: 'd1' }), makeFrame({ id: 'd2' })];
    const site = compileSite(makeIndex({ runs: [makeRun({ bays: [bay], frames })] }));
    expect([...site.classOf].map((row) => site.classes[row]!.row)).toEqual([1, 1, 2, 2]);
  });

  it('share a class between aisles that agree in what a truck meets there', () => {
    const aisle = { clearWidthMm: 4200, overheadClearMm: 9000 };
    const other = makeRun({
      id: 'b',
      aisleId: 'aisle-2',
      bays: [makeBay('b1')],
      frames: [makeFrame({ id: 'b-f1' }), makeFrame({ id: 'b-f2' })],
    });
    const aisles = [
      { id: 'aisle-1', ...aisle, sprinklerMm: null },
      { id: 'aisle-2', ...aisle, sprinklerMm: 8000 },
    ];
    const site = compileSite(makeIndex({ aisles, runs: [makeRun(), other] }));
    expect(site.classes).toHaveLength(3);
    expect([...runRanges(site)]).toEqual([0, 12, 18]);
    expect([...site.leftFrame]).toEqual([0, 1, 3]); // three frames in the first run, then the second's
  });

  it('sum what stands, and carry NaN where one mass is unknown', () => {
    const bare = makeLoad({ id: 'unweighed', grossKg: null });
    const stock = [
      { location: 'a1-0-1', load: 'crates' },
      { location: 'a1-1-1', load: 'crates' },
      { location: 'a1-2-2', load: 'crates' },
      { location: 'a2-1-1', load: 'unweighed' },
    ];
    const site = compileSite(makeIndex({ loads: [makeLoad(), bare], stock }));
    expect([...site.levelKg]).toEqual([800, 800, 800, 0, Number.NaN, 0]);
    expect([...site.bayKg]).toEqual([1600, Number.NaN]); // the floor does not load the bay
    expect(site.standing[0]).toBe(0);
    expect(site.standing[1]).toBe(EMPTY);
  });

  it('merge loads of one shape, whatever they weigh', () => {
    const loads = [
      makeLoad(),
      makeLoad({ id: 'heavier', grossKg: 900 }),
      makeLoad({ id: 'taller', heightMm: 1200 }),
    ];
    const site = compileSite(makeIndex({ loads }));
    expect([...site.loads.shapeOf]).toEqual([0, 0, 1]);
    expect([...site.loads.assessedKg]).toEqual([800, 900, 800]);
  });
});
