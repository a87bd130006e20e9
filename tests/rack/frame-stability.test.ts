import { describe, expect, it } from 'vitest';
import { capacityAtLongerGapKg, eulerLoadN } from '../../lib/rack/buckling.ts';
import {
  frameStability,
  highestBeamMm,
  outOfPlumbLimitMm,
  overturning,
} from '../../lib/rack/frame-stability.ts';
import { beamShares, bearingNmm2, footLoadN } from '../../lib/rack/support-shares.ts';

describe('frameStability', () => {
  it.each([
    { topBeamMm: 5999, class: 'normal-anchors' },
    { topBeamMm: 6000, class: 'normal-anchors' },
    { topBeamMm: 6001, class: 'stronger-anchors' },
    { topBeamMm: 7999, class: 'stronger-anchors' },
    { topBeamMm: 8000, class: 'stronger-anchors' },
    { topBeamMm: 8001, class: 'ties-or-certified-anchors' },
  ])('1000 mm deep with its top beam at $topBeamMm mm: $class', ({ topBeamMm, class: expected }) => {
    expect(frameStability({ topBeamMm, frameDepthMm: 1000 }).class).toBe(expected);
  });

  it('calls the highest beam for normal anchors normal', () => {
    expect(frameStability({ topBeamMm: highestBeamMm(1100), frameDepthMm: 1100 }).class).toBe(
      'normal-anchors',
    );
  });
});

describe('the rest of a frame', () => {
  it('leans on its feet by moment over depth', () => {
    expect(overturning({ forceN: 1557, heightMm: 6000, frameDepthMm: 1000 })).toEqual({
      momentNmm: 9_342_000,
      coupleN: 9342,
    });
  });

  it('may lean less in the finer class', () => {
    expect(outOfPlumbLimitMm(7000, 'class 400, unloaded')).toBe(20);
    expect(outOfPlumbLimitMm(7000, 'class 300, unloaded')).toBe(14);
    expect(outOfPlumbLimitMm(7200, 'loaded, US')).toBe(30);
  });

  it.each([
    { gapMm: 1400, capacityKg: 10_000 },
    { gapMm: 1500, capacityKg: 10_000 },
    { gapMm: 2000, capacityKg: 5625 },
  ])(
    'loses by the square of a longer gap and gains nothing by a shorter: $gapMm mm',
    ({ gapMm, capacityKg }) => {
      expect(capacityAtLongerGapKg({ capacityKg: 10_000, ratedGapMm: 1500, gapMm })).toBeCloseTo(
        capacityKg,
        8,
      );
    },
  );

  it('buckles at a quarter of the force when free at the top, four times when held fast', () => {
    const column = { lengthMm: 2000, inertiaMm4: 300_000 };
    const pinned = eulerLoadN({ ...column, ends: 'pinned-pinned' });
    expect(eulerLoadN({ ...column, ends: 'fixed-free' }) / pinned).toBeCloseTo(0.25, 12);
    expect(eulerLoadN({ ...column, ends: 'fixed-fixed' }) / pinned).toBeCloseTo(4, 12);
  });
});

describe('beamShares', () => {
  it.each([
    { offsetMm: 0, heavierKg: 500 },
    { offsetMm: -100, heavierKg: 600 },
    { offsetMm: 500, heavierKg: 1000 },
  ])(
    'puts $heavierKg of 1000 kg on the heavier beam with the centre $offsetMm mm off',
    ({ offsetMm, heavierKg }) => {
      const shares = beamShares({ massKg: 1000, spacingMm: 1000, offsetMm });
      expect(shares.heavierKg).toBeCloseTo(heavierKg, 10);
      expect(shares.heavierKg + shares.lighterKg).toBe(1000);
    },
  );

  it('refuses a centre that is not between the beams', () => {
    expect(() => beamShares({ massKg: 1000, spacingMm: 1000, offsetMm: 501 })).toThrow(RangeError);
  });

  it('puts half of a frame on each foot', () => {
    expect(footLoadN({ carriedKg: 900, ownKg: 100 })).toBeCloseTo(500 * 9.80665, 9);
    expect(bearingNmm2({ forceN: 12_000, plateWidthMm: 100, plateDepthMm: 120 })).toBe(1);
  });
});
