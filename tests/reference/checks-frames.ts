import { eulerLoadN } from '../../lib/rack/buckling.ts';
import { type DamageKind, damageClass } from '../../lib/rack/damage-class.ts';
import {
  frameStability,
  highestBeamMm,
  outOfPlumbLimitMm,
  overturning,
} from '../../lib/rack/frame-stability.ts';
import { beamShares, bearingNmm2, footLoadN } from '../../lib/rack/support-shares.ts';
import { inchesToMm, mmToInches, poundsToKg } from '../../lib/units/conversions.ts';
import { makeBay, makeLevel, makeLoad, makeRun } from '../site-builder.ts';
import { askStep, haveOf, needOf } from './ask-step.ts';
import type { LimitCheck, ReferenceCheck } from './reference-check.ts';

/** Frame load with 6000 kg in each bay: ten places of 600 kg, the last of them the load that is asked about. */
const bayOf = (bayId: string, places: number) =>
  makeBay(bayId, {
    levels: [
      makeLevel(bayId, 0),
      makeLevel(bayId, 1, {
        pairCapacityKg: 50_000,
        locations: Array.from({ length: places }, (_, at) => `${bayId}-1-${at + 1}`),
      }),
    ],
    maxBayLoadKg: null,
  });
const sixHundred = makeLoad({ id: 'heavy', grossKg: 600 });
const frameLoadKg = (bays: readonly string[]) => {
  const places = bays.flatMap((bayId) => Array.from({ length: 10 }, (_, at) => `${bayId}-1-${at + 1}`));
  const [asked, ...others] = places;
  return needOf('frame-load', {
    run: makeRun({
      frames: [...bays, 'end'].map((id) => ({ id: `f-${id}`, typeId: 'f90', condition: 'sound' as const })),
      bays: bays.map((bayId) => bayOf(bayId, 10)),
    }),
    load: sixHundred,
    location: asked!,
    standing: Object.fromEntries(others.map((location) => [location, sixHundred])),
  });
};

/** The notice of the worked example: 1000 kg a level, first beam at 1500, pitch 1350, 10 259 kg a bay. */
const noticeBay = (levels: number) => {
  const run = makeRun({
    frames: ['f1', 'f2'].map((id) => ({ id, typeId: 'f90', condition: 'sound' as const })),
    bays: [
      makeBay('a1', {
        maxBayLoadKg: 10_259,
        levels: Array.from({ length: levels + 1 }, (_, level) =>
          makeLevel('a1', level, {
            beamTopMm: level === 0 ? 0 : 1500 + (level - 1) * 1350,
            ...(level === 0 ? {} : { pairCapacityKg: 1000, locations: [`a1-${level}`] }),
          }),
        ),
      }),
    ],
  });
  const load = makeLoad({ id: 'tonne', grossKg: 1000 });
  const standing = Object.fromEntries(Array.from({ length: levels - 1 }, (_, at) => [`a1-${at + 2}`, load]));
  return { run, load, standing, location: 'a1-1' };
};

const damageAt = (kind: DamageKind, lengthMm?: number) => (bowMm: number) =>
  damageClass(lengthMm === undefined ? { kind, bowMm } : { kind, bowMm, lengthMm }).damage;

const EN_15635 = 'EN 15635 fig. 14, as given in DGUV Information 208-043';
const RATIO = 'ANSI MH16.1, height to depth ratio of single rows';

export const FRAMES: readonly ReferenceCheck[] = [
  {
    id: 'euler-fixed',
    quantity: 'Euler load',
    inputs: 'L 5 m, E 10 GPa, I 400 cm4, both ends fixed',
    unit: 'kN',
    ours: () =>
      eulerLoadN({ lengthMm: 5000, inertiaMm4: 4e6, ends: 'fixed-fixed', modulusNmm2: 10_000 }) / 1000,
    published: 63,
    tolerance: 0.5,
    source: 'printed worked example (63 kN; 63.17 exact)',
    confidence: 'seen',
  },
  {
    id: 'euler-upright',
    quantity: 'Euler load',
    inputs: 'L 1.5 m, steel, I 30 cm4, both ends pinned',
    unit: 'kN',
    ours: () => eulerLoadN({ lengthMm: 1500, inertiaMm4: 300_000, ends: 'pinned-pinned' }) / 1000,
    published: 276.3,
    tolerance: 0.1,
    source: 'pi2 E I / (K L)2',
    confidence: 'derived',
  },
  {
    id: 'euler-ratio',
    quantity: 'Euler load when the gap grows',
    inputs: 'L 1.5 to 2.0 m',
    unit: 'times',
    ours: () =>
      eulerLoadN({ lengthMm: 2000, inertiaMm4: 300_000, ends: 'pinned-pinned' }) /
      eulerLoadN({ lengthMm: 1500, inertiaMm4: 300_000, ends: 'pinned-pinned' }),
    published: 0.5625,
    tolerance: 0,
    source: 'pi2 E I / (K L)2',
    confidence: 'derived',
  },
  {
    id: 'frame-end',
    quantity: 'Load on an end frame',
    inputs: 'one bay of 6000 kg',
    unit: 'kg',
    ours: () => frameLoadKg(['a1']),
    published: 3000,
    tolerance: 0,
    source: 'statics: a frame carries half of each bay beside it',
    confidence: 'derived',
  },
  {
    id: 'frame-interior',
    quantity: 'Load on an interior frame',
    inputs: 'bays of 6000 and 6000 kg',
    unit: 'kg',
    ours: () => frameLoadKg(['a1', 'a2']),
    published: 6000,
    tolerance: 0,
    source: 'statics: a frame carries half of each bay beside it',
    confidence: 'derived',
  },
  {
    id: 'notice-bay-load',
    quantity: 'Bay load of the example notice',
    inputs: '1000 kg a level, first beam 1500, pitch 1350 mm',
    unit: 'kg',
    ours: () => haveOf('bay-load', noticeBay(10)),
    published: 10_259,
    tolerance: 0,
    source: 'HSG76 fig. 48',
    confidence: 'seen',
  },
  {
    id: 'plumb-400',
    quantity: 'Out of plumb, erected, class 400',
    inputs: 'height 8000 mm',
    unit: 'mm',
    ours: () => outOfPlumbLimitMm(8000, 'class 400, unloaded'),
    published: 22.9,
    tolerance: 0.05,
    source: 'FEM 10.3.01 and EN 15620: H/350',
    confidence: 'secondary source',
  },
  {
    id: 'plumb-300',
    quantity: 'Out of plumb, erected, class 300',
    inputs: 'height 8000 mm',
    unit: 'mm',
    ours: () => outOfPlumbLimitMm(8000, 'class 300, unloaded'),
    published: 16,
    tolerance: 0,
    source: 'FEM 10.3.01 and EN 15620: H/500',
    confidence: 'secondary source',
  },
  {
    id: 'plumb-us',
    quantity: 'Out of plumb, loaded',
    inputs: 'height 10 ft',
    unit: 'in',
    ours: () => mmToInches(outOfPlumbLimitMm(inchesToMm(120), 'loaded, US')),
    published: 0.5,
    tolerance: 0,
    source: 'RMI: 1/2 in per 10 ft',
    confidence: 'secondary source',
  },
  {
    id: 'ratio-240',
    quantity: 'Height to depth',
    inputs: 'top beam 240 in, frame 42 in',
    unit: 'ratio',
    ours: () => frameStability({ topBeamMm: inchesToMm(240), frameDepthMm: inchesToMm(42) }).ratio,
    published: 5.714,
    tolerance: 0.0005,
    source: RATIO,
    confidence: 'secondary source',
  },
  {
    id: 'ratio-240-verdict',
    quantity: 'Height to depth, what it asks for',
    inputs: 'top beam 240 in, frame 42 in',
    unit: '',
    ours: () => frameStability({ topBeamMm: inchesToMm(240), frameDepthMm: inchesToMm(42) }).class,
    published: 'normal-anchors',
    tolerance: 0,
    source: RATIO,
    confidence: 'secondary source',
  },
  {
    id: 'ratio-288',
    quantity: 'Height to depth',
    inputs: 'top beam 288 in, frame 42 in',
    unit: 'ratio',
    ours: () => frameStability({ topBeamMm: inchesToMm(288), frameDepthMm: inchesToMm(42) }).ratio,
    published: 6.857,
    tolerance: 0.0005,
    source: RATIO,
    confidence: 'secondary source',
  },
  {
    id: 'ratio-288-verdict',
    quantity: 'Height to depth, what it asks for',
    inputs: 'top beam 288 in, frame 42 in',
    unit: '',
    ours: () => frameStability({ topBeamMm: inchesToMm(288), frameDepthMm: inchesToMm(42) }).class,
    published: 'stronger-anchors',
    tolerance: 0,
    source: RATIO,
    confidence: 'seen',
  },
  {
    id: 'ratio-9000',
    quantity: 'Height to depth, what it asks for',
    inputs: 'top beam 9000 mm, frame 1100 mm (8.18)',
    unit: '',
    ours: () => frameStability({ topBeamMm: 9000, frameDepthMm: 1100 }).class,
    published: 'ties-or-certified-anchors',
    tolerance: 0,
    source: RATIO,
    confidence: 'derived',
  },
  {
    id: 'highest-beam',
    quantity: 'Highest beam with normal anchors',
    inputs: 'frame 42 in',
    unit: 'in',
    ours: () => mmToInches(highestBeamMm(inchesToMm(42))),
    published: 252,
    tolerance: 0,
    source: RATIO,
    confidence: 'secondary source',
  },
  {
    id: 'anchor-force',
    quantity: 'Force that stronger anchors must hold',
    inputs: '350 lbf',
    unit: 'N',
    ours: () => Math.round(poundsToKg(350) * 9.80665),
    published: 1557,
    tolerance: 0,
    source: RATIO,
    confidence: 'seen',
  },
  {
    id: 'overturning-couple',
    quantity: 'Couple on the feet',
    inputs: '350 lbf at 252 in, frame 42 in deep',
    unit: 'lbf',
    ours: () => overturning({ forceN: 350, heightMm: inchesToMm(252), frameDepthMm: inchesToMm(42) }).coupleN,
    published: 2100,
    tolerance: 0,
    source: 'statics: moment / depth',
    confidence: 'derived',
  },
  {
    id: 'damage-4-over-1000-depth',
    quantity: 'Damage class',
    inputs: '4 mm over 1000 mm, cross-aisle',
    unit: '',
    ours: () => damageAt('upright-cross-aisle')(4),
    published: 'amber',
    tolerance: 0,
    source: EN_15635,
    confidence: 'derived',
  },
  {
    id: 'damage-4-over-1000-along',
    quantity: 'Damage class',
    inputs: '4 mm over 1000 mm, down-aisle',
    unit: '',
    ours: () => damageAt('upright-down-aisle')(4),
    published: 'green',
    tolerance: 0,
    source: EN_15635,
    confidence: 'derived',
  },
  {
    id: 'damage-4-over-500-depth',
    quantity: 'Damage class',
    inputs: '4 mm over 500 mm, cross-aisle',
    unit: '',
    ours: () => damageAt('upright-cross-aisle', 500)(4),
    published: 'red',
    tolerance: 0,
    source: 'half the length, half the limit',
    confidence: 'secondary source',
  },
  {
    id: 'beam-shares',
    quantity: 'Share of the heavier beam',
    inputs: '1000 kg, beams 1000 mm apart, centre 100 mm off',
    unit: 'kg',
    ours: () => beamShares({ massKg: 1000, spacingMm: 1000, offsetMm: 100 }).heavierKg,
    published: 600,
    tolerance: 0,
    source: 'statics of two supports',
    confidence: 'derived',
  },
  {
    id: 'foot-interior',
    quantity: 'Load on one foot, interior frame',
    inputs: 'bay load 9000 kg, frame 300 kg',
    unit: 'kN',
    ours: () => footLoadN({ carriedKg: 9000, ownKg: 300 }) / 1000,
    published: 45.6,
    tolerance: 0.05,
    source: 'statics: two posts to a frame',
    confidence: 'derived',
  },
  {
    id: 'foot-end',
    quantity: 'Load on one foot, end frame',
    inputs: 'half of 9000 kg, frame 300 kg',
    unit: 'kN',
    ours: () => footLoadN({ carriedKg: 4500, ownKg: 300 }) / 1000,
    published: 23.5,
    tolerance: 0.05,
    source: 'statics: two posts to a frame',
    confidence: 'derived',
  },
  {
    id: 'bearing',
    quantity: 'Pressure under a base plate',
    inputs: '45.6 kN on 100 x 120 mm',
    unit: 'MPa',
    ours: () => bearingNmm2({ forceN: 45_600, plateWidthMm: 100, plateDepthMm: 120 }),
    published: 3.8,
    tolerance: 0.005,
    source: 'F / A',
    confidence: 'derived',
  },
];

const damageLimit = (
  id: string,
  kind: DamageKind,
  limit: number,
  expected: LimitCheck['expected'],
): LimitCheck => ({
  id,
  quantity: `Bow over 1000 mm, ${kind}`,
  unit: 'mm',
  limit,
  apart: 0.1,
  answerAt: damageAt(kind),
  expected,
  source: EN_15635,
  confidence: 'seen',
});

export const FRAME_LIMITS: readonly LimitCheck[] = [
  damageLimit('damage-along-green', 'upright-down-aisle', 5, ['green', 'green', 'amber']),
  damageLimit('damage-along-amber', 'upright-down-aisle', 10, ['amber', 'amber', 'red']),
  damageLimit('damage-depth-green', 'upright-cross-aisle', 3, ['green', 'green', 'amber']),
  damageLimit('damage-depth-amber', 'upright-cross-aisle', 6, ['amber', 'amber', 'red']),
  damageLimit('damage-bracing-green', 'bracing', 10, ['green', 'green', 'amber']),
  damageLimit('damage-bracing-amber', 'bracing', 20, ['amber', 'amber', 'red']),
  {
    id: 'ratio-6',
    quantity: 'Top beam of a frame 1000 mm deep',
    unit: 'mm',
    limit: 6000,
    apart: 1,
    answerAt: (topBeamMm) => frameStability({ topBeamMm, frameDepthMm: 1000 }).class,
    expected: ['normal-anchors', 'normal-anchors', 'stronger-anchors'],
    source: RATIO,
    confidence: 'seen',
  },
  {
    id: 'ratio-8',
    quantity: 'Top beam of a frame 1000 mm deep',
    unit: 'mm',
    limit: 8000,
    apart: 1,
    answerAt: (topBeamMm) => frameStability({ topBeamMm, frameDepthMm: 1000 }).class,
    expected: ['stronger-anchors', 'stronger-anchors', 'ties-or-certified-anchors'],
    source: RATIO,
    confidence: 'seen',
  },
  {
    id: 'notice-bay-full',
    quantity: 'Levels of 1000 kg filled in a bay whose notice says 10 259 kg',
    unit: 'levels',
    limit: 10,
    apart: 1,
    answerAt: (levels) => {
      const { outcome } = askStep('bay-load', noticeBay(levels));
      return outcome === 'thin' ? 'pass' : outcome;
    },
    expected: ['pass', 'pass', 'fail'],
    source: 'HSG76 fig. 48: the lesser of the sum of the levels and the bay load',
    confidence: 'seen',
  },
];
