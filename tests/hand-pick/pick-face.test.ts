import { describe, expect, it } from 'vitest';
import { bestHeight, rankLevels } from '../../lib/hand-pick/best-level.ts';
import { judgeHandLift, rankOf } from '../../lib/hand-pick/hand-lift.ts';
import { handPickAt, handPickFrom } from '../../lib/hand-pick/pick-face.ts';
import { type HandPick, type Load, loadSchema } from '../../lib/model/load.ts';
import { baySchema } from '../../lib/model/racking.ts';

const PICK: HandPick = {
  massKg: 12,
  horizontalMm: 400,
  gripHeightMm: 400,
  destinationHeightMm: 750,
  asymmetryDeg: 0,
  liftsPerMinute: 1,
  durationHours: 2,
  coupling: 'fair',
};

const load: Load = loadSchema.parse({
  id: 'L1',
  name: 'Cartons of tiles',
  massBasis: 'weighed',
  depthMm: 1200,
  widthMm: 800,
  heightMm: 900,
  handPick: PICK,
});

const level = (n: number, beamTopMm: number) => ({
  level: n,
  beamTopMm,
  beamHeightMm: n === 0 ? 0 : 100,
  depthPositions: 1 as const,
  decked: false,
  condition: 'sound' as const,
  locations: [`A${n}`],
});
const bay = baySchema.parse({
  id: 'B1',
  clearWidthMm: 2700,
  levels: [level(0, 0), level(1, 500), level(2, 1400)],
});

describe('handPickAt', () => {
  it('takes the height of the hands from the beam top and the grip, and the travel from the far end', () => {
    const answer = handPickAt({ level: bay.levels[1]! }, load);
    expect(answer?.origin.task).toMatchObject({ handHeightMm: 900, travelMm: 150 });
    expect(answer?.destination.task).toMatchObject({ handHeightMm: 750, travelMm: 150 });
  });

  it('gives what the equation gives for the same lift typed in', () => {
    const typed = judgeHandLift({ ...PICK, handHeightMm: 900, travelMm: 150 });
    expect(handPickAt({ level: bay.levels[1]! }, load)?.origin.rwlKg).toBe(typed.rwlKg);
  });

  it('has no answer for a load that nobody picks by hand', () => {
    expect(handPickAt({ level: bay.levels[1]! }, { ...load, handPick: null })).toBeNull();
  });

  it.each([
    { beamTopMm: 1349, kind: 'index' },
    { beamTopMm: 1350, kind: 'index' },
    { beamTopMm: 1351, kind: 'outside' },
  ])('on a beam at $beamTopMm mm with the grip 400 mm up is $kind', ({ beamTopMm, kind }) => {
    expect(handPickFrom(beamTopMm, PICK).origin.result.kind).toBe(kind);
  });
});

describe('rankLevels', () => {
  it('puts the level with the least index first and the one out of bounds last', () => {
    const ranked = rankLevels(bay, PICK);
    expect(ranked.map((entry) => entry.level.level)).toEqual([1, 0, 2]);
    expect(rankOf(ranked[2]!.lift)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('bestHeight', () => {
  it('finds the height that no height tried by hand beats', () => {
    const best = bestHeight(PICK);
    for (let beamTopMm = 0; beamTopMm <= 2000; beamTopMm += 7) {
      // 7 and 10 mm steps differ: a grid point may miss the very top by one step's worth
      expect(rankOf(handPickFrom(beamTopMm, PICK).origin)).toBeGreaterThan(rankOf(best.lift) - 0.005);
    }
    // hands at knuckle height: 350 + 400
    expect(best.beamTopMm).toBe(350);
  });

  it('lists the heights within the limit, and each end is the last one that is', () => {
    const { withinLimit } = bestHeight(PICK);
    expect(withinLimit).toHaveLength(1);
    const { fromMm, toMm } = withinLimit[0]!;
    expect(rankOf(handPickFrom(fromMm, PICK).origin)).toBeLessThanOrEqual(1);
    expect(rankOf(handPickFrom(toMm, PICK).origin)).toBeLessThanOrEqual(1);
    expect(rankOf(handPickFrom(fromMm - 10, PICK).origin)).toBeGreaterThan(1);
    expect(rankOf(handPickFrom(toMm + 10, PICK).origin)).toBeGreaterThan(1);
  });

  it('says at no height for a case that is too heavy everywhere', () => {
    expect(bestHeight({ ...PICK, massKg: 40 }).withinLimit).toEqual([]);
  });
});
