import type { Refusal } from '../model/refusal.ts';
import { blankSite } from '../model/site.ts';
import { readSite } from '../model/site-file.ts';
import type { Truck } from '../model/truck.ts';
import type { FieldFault, Judged } from './field-fault.ts';
import {
  keptMeasure,
  type Measure,
  type MeasureKind,
  measureValue,
  NO_MEASURE,
  valueOrNull,
} from './measure.ts';
import { type PlateDraft, type PlatePlace, plateDraftOf, readPlate } from './plate-draft.ts';

/** The figures of a truck beside its plate, by where they stand in the model, in the order in which a data sheet has them. */
export const TRUCK_MEASURES = {
  maxLiftMm: 'length',
  freeLiftMm: 'length',
  loweredMm: 'length',
  extendedMm: 'length',
  'turning.outsideRadiusMm': 'length',
  'turning.loadDistanceMm': 'length',
  'turning.insideOffsetMm': 'length',
  'forks.lengthMm': 'length',
  'forks.armCapacityKg': 'mass',
  'forks.armLoadCentreMm': 'length',
  statedAisleMm: 'length',
  'speeds.travelMps': 'speed',
  'speeds.liftMps': 'speed',
  'plate.verticalLoadCentreMm': 'length',
} as const satisfies Record<string, MeasureKind>;
export type TruckMeasure = keyof typeof TRUCK_MEASURES;

/** A truck as it is typed. An empty text or choice: not given. A hold is not typed here and stays as it is. */
export type TruckDraft = {
  id: string;
  name: string;
  kind: Truck['kind'] | '';
  power: Truck['power'] | '';
  reachDepth: '1' | '2' | '';
  fittedAttachment: string;
  hold: Truck['hold'];
  measures: Readonly<Record<TruckMeasure, Measure>>;
  plate: PlateDraft;
};

export const BLANK_TRUCK: TruckDraft = {
  id: '',
  name: '',
  kind: '',
  power: '',
  reachDepth: '',
  fittedAttachment: '',
  hold: null,
  measures: measuresFrom(() => NO_MEASURE),
  plate: [],
};

export function truckDraftOf(truck: Truck): TruckDraft {
  return {
    id: truck.id,
    name: truck.name,
    kind: truck.kind,
    power: truck.power,
    reachDepth: truck.reachDepth === 1 ? '1' : '2',
    fittedAttachment: truck.fittedAttachment ?? '',
    hold: truck.hold,
    measures: measuresFrom((key) => keptMeasure(factAt(truck, key))),
    plate: plateDraftOf(truck.plate.ratings),
  };
}

/** What the form of a truck comes to, judged as a site file with this truck would be. */
export function judgeTruck(draft: TruckDraft): Judged<Truck> {
  const faults = new Map<string, FieldFault>();
  for (const [key, measure] of Object.entries(draft.measures)) {
    if (measure.value === 'unread')
      faults.set(key, {
        is: 'unread',
        of: TRUCK_MEASURES[key as TruckMeasure],
        text: measure.typed?.text ?? '',
      });
  }
  const plate = readPlate(draft.plate);
  for (const { place, fault } of plate.faults) faults.set(plateField(place), plateFault(draft, place, fault));
  const reading = readSite({ ...blankSite('one fact'), trucks: [rawTruck(draft, plate.ratings)] });
  if (!reading.ok)
    for (const refusal of reading.refusals) {
      const field = fieldOf(refusal, plate.places);
      if (!faults.has(field)) faults.set(field, { is: 'refused', refusal });
    }
  const fact = reading.ok && faults.size === 0 ? reading.site.trucks[0]! : null;
  return { fact, faults };
}

/** The truck as far as it can be drawn: whole lines of the plate, the largest lift as typed or as the plate has it. */
export function drawableTruck(draft: TruckDraft): Truck {
  const { ratings } = readPlate(draft.plate);
  const sound = ratings.filter((line) =>
    [line.liftHeightMm, line.loadCentreMm, line.capacityKg].every(isSize),
  );
  const highestMm = Math.max(0, ...sound.map((line) => line.liftHeightMm));
  const maxLiftMm = measureValue(draft.measures.maxLiftMm) ?? highestMm;
  const value = (key: TruckMeasure) => valueOrNull(draft.measures[key]);
  return {
    id: draft.id,
    name: draft.name || 'the truck that is typed',
    kind: draft.kind || 'counterbalance',
    power: draft.power || 'electric',
    maxLiftMm,
    loweredMm: value('loweredMm'),
    extendedMm: value('extendedMm'),
    freeLiftMm: value('freeLiftMm'),
    reachDepth: draft.reachDepth === '2' ? 2 : 1,
    turning: null,
    statedAisleMm: value('statedAisleMm'),
    forks: {
      lengthMm: value('forks.lengthMm'),
      armCapacityKg: value('forks.armCapacityKg'),
      armLoadCentreMm: value('forks.armLoadCentreMm'),
    },
    fittedAttachment: draft.fittedAttachment === '' ? null : draft.fittedAttachment,
    hold: null,
    speeds: null,
    plate: { verticalLoadCentreMm: value('plate.verticalLoadCentreMm'), ratings: sound },
  };
}

/** The name of a field of the plate's grids. */
export function plateField({ block, row, column }: PlatePlace): string {
  return `plate.${block}.${row}.${column}`;
}

function rawTruck(draft: TruckDraft, ratings: readonly unknown[]): unknown {
  const value = (key: TruckMeasure) => measureValue(draft.measures[key]);
  const all = (parts: Record<string, number | undefined>) =>
    Object.values(parts).every((part) => part === undefined) ? null : parts;
  return {
    id: textOrNone(draft.id),
    name: textOrNone(draft.name),
    kind: textOrNone(draft.kind),
    power: textOrNone(draft.power),
    maxLiftMm: value('maxLiftMm'),
    loweredMm: value('loweredMm'),
    extendedMm: value('extendedMm'),
    freeLiftMm: value('freeLiftMm'),
    reachDepth: draft.reachDepth === '' ? undefined : Number(draft.reachDepth),
    turning: all({
      outsideRadiusMm: value('turning.outsideRadiusMm'),
      loadDistanceMm: value('turning.loadDistanceMm'),
      insideOffsetMm: value('turning.insideOffsetMm'),
    }),
    statedAisleMm: value('statedAisleMm'),
    forks: {
      lengthMm: value('forks.lengthMm'),
      armCapacityKg: value('forks.armCapacityKg'),
      armLoadCentreMm: value('forks.armLoadCentreMm'),
    },
    fittedAttachment: textOrNone(draft.fittedAttachment) ?? null,
    hold: draft.hold,
    speeds: all({ travelMps: value('speeds.travelMps'), liftMps: value('speeds.liftMps') }),
    plate: { verticalLoadCentreMm: value('plate.verticalLoadCentreMm'), ratings },
  };
}

function textOrNone(text: string): string | undefined {
  return text === '' ? undefined : text;
}

/** `$.trucks[0].plate.ratings[3].capacityKg` -> the cell in which line 3 stands, or a heading of it. */
function fieldOf(refusal: Refusal, places: readonly PlatePlace[]): string {
  const path = refusal.path.replace(/^\$\.trucks\[0\]\.?/, '');
  const line = /^plate\.ratings\[(\d+)\]\.(\w+)$/.exec(path);
  if (line === null) return path;
  const { block, row, column } = places[Number(line[1])]!;
  if (line[2] === 'liftHeightMm') return plateField({ block, row, column: -1 });
  if (line[2] === 'loadCentreMm') return plateField({ block, row: -1, column });
  return plateField({ block, row, column });
}

function plateFault(draft: TruckDraft, place: PlatePlace, fault: 'unread' | 'heading-needed'): FieldFault {
  if (fault === 'heading-needed') return { is: 'heading-needed' };
  const { loadCentres, rows } = draft.plate[place.block]!;
  const measure =
    place.row < 0
      ? loadCentres[place.column]!
      : place.column < 0
        ? rows[place.row]!.liftHeight
        : rows[place.row]!.cells[place.column]!;
  const of = place.row < 0 || place.column < 0 ? 'length' : 'mass';
  return { is: 'unread', of, text: measure.typed?.text ?? '' };
}

function factAt(truck: Truck, key: TruckMeasure): number | null {
  const [outer, inner] = key.split('.') as [keyof Truck, string | undefined];
  const fact = truck[outer] as unknown;
  if (inner === undefined) return fact as number | null;
  return fact === null ? null : ((fact as Record<string, number | null>)[inner] ?? null);
}

function measuresFrom(of: (key: TruckMeasure) => Measure): TruckDraft['measures'] {
  const keys = Object.keys(TRUCK_MEASURES) as TruckMeasure[];
  return Object.fromEntries(keys.map((key) => [key, of(key)])) as Record<TruckMeasure, Measure>;
}

function isSize(value: number): boolean {
  return value > 0 && value <= 1e7;
}
