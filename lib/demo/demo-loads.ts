import type { HandPick, Load, PalletType } from '../model/load.ts';
import type { Family } from './aisle-specs.ts';
import { ODD_LOADS } from './odd-loads.ts';
import type { SeededChoice } from './seeded-choice.ts';

export const DEMO_PALLET_TYPES: readonly PalletType[] = [
  { id: 'PT-TILE', depthMm: 1200, widthMm: 800, tareKg: 25, entryHeightMm: 100 },
  { id: 'PT-STONE', depthMm: 1000, widthMm: 1200, tareKg: 48, entryHeightMm: 110 },
  { id: 'PT-BATH', depthMm: 1400, widthMm: 800, tareKg: 34, entryHeightMm: 100 },
  { id: 'PT-HALF', depthMm: 800, widthMm: 600, tareKg: 10, entryHeightMm: 100 },
];

type FamilySpec = {
  family: Family;
  count: number;
  pallet: PalletType;
  massKg: [least: number, most: number];
  heightMm: [least: number, most: number];
  pieceKg: readonly number[];
  groups: readonly string[];
  nouns: readonly string[];
  sizes: readonly string[];
};

const FINISHES = ['Chalk', 'Slate', 'Ember', 'Moss', 'Dune', 'Ink', 'Fog', 'Clay', 'Pearl', 'Rust'] as const;

const FAMILIES: readonly FamilySpec[] = [
  {
    family: 'TILE',
    count: 130,
    pallet: DEMO_PALLET_TYPES[0]!,
    massKg: [560, 1180],
    heightMm: [780, 1300],
    pieceKg: [18.4, 21.5, 24, 27.2],
    groups: ['floor tile', 'wall tile', 'outdoor tile'],
    nouns: ['floor tile', 'wall tile', 'terrace tile', 'hexagon tile'],
    sizes: ['200 x 200', '300 x 600', '600 x 600', '450 x 900'],
  },
  {
    family: 'STONE',
    count: 55,
    pallet: DEMO_PALLET_TYPES[1]!,
    massKg: [900, 1950],
    heightMm: [480, 1150],
    pieceKg: [31, 46, 62.5, 88],
    groups: ['stone'],
    nouns: ['granite setts', 'limestone flags', 'sandstone steps', 'marble slabs'],
    sizes: ['40 thick', '60 thick', '100 thick'],
  },
  {
    family: 'SANI',
    count: 45,
    pallet: DEMO_PALLET_TYPES[0]!,
    massKg: [180, 520],
    heightMm: [1080, 1500],
    pieceKg: [14, 19.5, 26],
    groups: ['sanitaryware'],
    nouns: ['wash basins', 'pedestals', 'cisterns', 'bidets'],
    sizes: ['wall hung', 'floor standing', 'corner'],
  },
  {
    family: 'BATH',
    count: 20,
    pallet: DEMO_PALLET_TYPES[2]!,
    massKg: [170, 420],
    heightMm: [900, 1500],
    pieceKg: [28, 37],
    groups: ['baths'],
    nouns: ['sit-in baths', 'shower trays'],
    sizes: ['1300', '1400'],
  },
  {
    family: 'SMALL',
    count: 38,
    pallet: DEMO_PALLET_TYPES[3]!,
    massKg: [120, 340],
    heightMm: [420, 880],
    pieceKg: [4.5, 8, 12.5],
    groups: ['small goods', 'fittings'],
    nouns: ['grout', 'traps and wastes', 'tile trim', 'tap sets'],
    sizes: ['mixed case', 'full case'],
  },
];

/** Three hundred unit loads: five families of goods, then the odd ones that the trouble is made of. */
export function demoLoads(choose: SeededChoice): Load[] {
  const ordinary = FAMILIES.flatMap((spec) => {
    return Array.from({ length: spec.count }, (_, i) => ordinaryLoad(spec, i + 1, choose));
  });
  return [...ordinary, ...ODD_LOADS];
}

function ordinaryLoad(spec: FamilySpec, number: number, choose: SeededChoice): Load {
  const noun = choose.one(spec.nouns);
  const pieceKg = choose.one(spec.pieceKg);
  const aimKg = choose.between(spec.massKg[0], spec.massKg[1], 5);
  const basis = choose.one([
    'weighed',
    'weighed',
    'weighed',
    'calculated',
    'calculated',
    'declared',
  ] as const);
  const eccentric = spec.family !== 'BATH' && choose.next() < 0.06;
  const count = Math.floor((aimKg - spec.pallet.tareKg) / pieceKg);
  return {
    id: `${spec.family}-${String(number).padStart(3, '0')}`,
    name: `${choose.one(FINISHES)} ${noun}, ${choose.one(spec.sizes)}`,
    palletType: spec.pallet.id,
    items: basis === 'calculated' ? [{ name: noun, massKg: pieceKg, count }] : null,
    grossKg: basis === 'calculated' ? null : aimKg,
    massBasis: basis,
    depthMm: spec.pallet.depthMm,
    widthMm: spec.pallet.widthMm,
    heightMm: choose.between(spec.heightMm[0], spec.heightMm[1], 10),
    centreFromHeelMm: eccentric ? spec.pallet.depthMm / 2 + choose.one([-40, 30, 50]) : null,
    centreHeightMm: choose.next() < 0.05 ? spec.heightMm[0] / 2 : null,
    picksPerWeek: choose.next() < 0.1 ? null : Math.round(60 * choose.next() ** 2),
    group: choose.next() < 0.06 ? null : choose.one(spec.groups),
    handPick: spec.family === 'SMALL' && choose.next() < 0.6 ? handPick(pieceKg, choose) : null,
  };
}

function handPick(massKg: number, choose: SeededChoice): HandPick {
  return {
    massKg,
    horizontalMm: choose.between(280, 480, 20),
    gripHeightMm: choose.between(250, 550, 50),
    destinationHeightMm: 750,
    asymmetryDeg: choose.one([0, 15, 30, 45]),
    liftsPerMinute: choose.one([0.2, 0.5, 1, 2]),
    durationHours: choose.one([1, 2, 8]),
    coupling: choose.one(['good', 'fair', 'poor'] as const),
  };
}
