import { COUPLINGS, type HandPick, type Load, type PalletType } from '../model/load.ts';
import type { MassBasis } from '../model/policy.ts';
import { blankSite } from '../model/site.ts';
import { readSite } from '../model/site-file.ts';
import type { FieldFault, Judged } from './field-fault.ts';
import {
  keptMeasure,
  type Measure,
  type MeasureKind,
  measureValue,
  NO_MEASURE,
  valueOrNull,
} from './measure.ts';

export const LOAD_MEASURES = {
  grossKg: 'mass',
  depthMm: 'length',
  widthMm: 'length',
  heightMm: 'length',
  centreFromHeelMm: 'length',
  centreHeightMm: 'length',
  picksPerWeek: 'number',
  'handPick.massKg': 'mass',
  'handPick.horizontalMm': 'length',
  'handPick.gripHeightMm': 'length',
  'handPick.destinationHeightMm': 'length',
  'handPick.asymmetryDeg': 'number',
  'handPick.liftsPerMinute': 'number',
  'handPick.durationHours': 'number',
} as const satisfies Record<string, MeasureKind>;
export type LoadMeasure = keyof typeof LOAD_MEASURES;

export type ItemDraft = { key: number; name: string; mass: Measure; count: Measure };

/**
 * A load as it is typed. `massFrom`: a gross mass that is stated (weighed, declared, or calculated elsewhere), or the
 * sum of the items. What was typed for the other is kept in the form and, of the gross mass, not stored.
 */
export type LoadDraft = {
  id: string;
  name: string;
  palletType: string;
  massFrom: 'stated' | 'items';
  massBasis: MassBasis;
  items: readonly ItemDraft[];
  measures: Readonly<Record<LoadMeasure, Measure>>;
  group: string;
  isHandPicked: boolean;
  coupling: HandPick['coupling'] | '';
};

export const BLANK_LOAD: LoadDraft = {
  id: '',
  name: '',
  palletType: '',
  massFrom: 'stated',
  massBasis: 'weighed',
  items: [],
  measures: measuresFrom(() => NO_MEASURE),
  group: '',
  isHandPicked: false,
  coupling: '',
};

export function loadDraftOf(load: Load): LoadDraft {
  return {
    id: load.id,
    name: load.name,
    palletType: load.palletType ?? '',
    massFrom: load.grossKg === null ? 'items' : 'stated',
    massBasis: load.massBasis,
    items: (load.items ?? []).map((item, key) => ({
      key,
      name: item.name,
      mass: keptMeasure(item.massKg),
      count: keptMeasure(item.count),
    })),
    measures: measuresFrom((key) => keptMeasure(factAt(load, key))),
    group: load.group ?? '',
    isHandPicked: load.handPick !== null,
    coupling: load.handPick?.coupling ?? '',
  };
}

export function blankItem(items: readonly ItemDraft[]): ItemDraft {
  return {
    key: 1 + Math.max(-1, ...items.map(({ key }) => key)),
    name: '',
    mass: NO_MEASURE,
    count: NO_MEASURE,
  };
}

/** What the form of a load comes to, judged as a site file with this load and these pallet types would be. */
export function judgeLoad(draft: LoadDraft, palletTypes: readonly PalletType[]): Judged<Load> {
  const faults = new Map<string, FieldFault>();
  const unread = (field: string, of: MeasureKind, { value, typed }: Measure) => {
    if (value === 'unread') faults.set(field, { is: 'unread', of, text: typed?.text ?? '' });
  };
  for (const key of measuresInUse(draft)) unread(key, LOAD_MEASURES[key], draft.measures[key]);
  for (const [at, item] of draft.items.entries()) {
    unread(`items.${at}.massKg`, 'mass', item.mass);
    unread(`items.${at}.count`, 'number', item.count);
  }
  const reading = readSite({ ...blankSite('one fact'), palletTypes, loads: [rawLoad(draft)] });
  if (!reading.ok)
    for (const refusal of reading.refusals) {
      const field = refusal.path.replace(/^\$\.loads\[0\]\.?/, '').replace(/\[(\d+)\]/g, '.$1');
      if (!faults.has(field)) faults.set(field, { is: 'refused', refusal });
    }
  return { fact: reading.ok && faults.size === 0 ? reading.site.loads[0]! : null, faults };
}

/**
 * The load as far as it can be drawn and added up; null while its sizes are not all there. Lines that are not whole
 * are left out of the sum, which the form says beside it.
 */
export function drawableLoad(draft: LoadDraft): Load | null {
  const value = (key: LoadMeasure) => valueOrNull(draft.measures[key]);
  const [depthMm, widthMm, heightMm] = [value('depthMm'), value('widthMm') ?? 1, value('heightMm')];
  if (!depthMm || !heightMm) return null;
  return {
    ...massOnly(draft),
    depthMm,
    widthMm,
    heightMm,
    centreFromHeelMm: value('centreFromHeelMm'),
    centreHeightMm: value('centreHeightMm'),
  };
}

/** The load with its mass alone: what the arithmetic needs while sizes are not typed yet. */
export function massOnly(draft: LoadDraft): Load {
  const whole = draft.items.flatMap(({ name, mass, count }) => {
    const [massKg, times] = [measureValue(mass), measureValue(count)];
    return massKg && times ? [{ name: name || 'not named yet', massKg, count: times }] : [];
  });
  return {
    id: draft.id,
    name: draft.name || 'the load that is typed',
    palletType: draft.palletType || null,
    items: whole.length === 0 ? null : whole,
    grossKg: draft.massFrom === 'stated' ? valueOrNull(draft.measures.grossKg) : null,
    massBasis: draft.massBasis,
    depthMm: 1,
    widthMm: 1,
    heightMm: 1,
    centreFromHeelMm: null,
    centreHeightMm: null,
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}

function measuresInUse(draft: LoadDraft): LoadMeasure[] {
  return (Object.keys(LOAD_MEASURES) as LoadMeasure[]).filter(
    (key) =>
      (draft.isHandPicked || !key.startsWith('handPick.')) &&
      (draft.massFrom === 'stated' || key !== 'grossKg'),
  );
}

function rawLoad(draft: LoadDraft): unknown {
  const value = (key: LoadMeasure) => measureValue(draft.measures[key]);
  const items = draft.items.map((item) => ({
    name: textOrNone(item.name),
    massKg: measureValue(item.mass),
    count: measureValue(item.count),
  }));
  return {
    id: textOrNone(draft.id),
    name: textOrNone(draft.name),
    palletType: textOrNone(draft.palletType),
    items: items.length === 0 ? null : items,
    grossKg: draft.massFrom === 'stated' ? value('grossKg') : null,
    massBasis: draft.massBasis,
    depthMm: value('depthMm'),
    widthMm: value('widthMm'),
    heightMm: value('heightMm'),
    centreFromHeelMm: value('centreFromHeelMm'),
    centreHeightMm: value('centreHeightMm'),
    picksPerWeek: value('picksPerWeek'),
    group: textOrNone(draft.group),
    handPick: draft.isHandPicked
      ? {
          massKg: value('handPick.massKg'),
          horizontalMm: value('handPick.horizontalMm'),
          gripHeightMm: value('handPick.gripHeightMm'),
          destinationHeightMm: value('handPick.destinationHeightMm'),
          asymmetryDeg: value('handPick.asymmetryDeg'),
          liftsPerMinute: value('handPick.liftsPerMinute'),
          durationHours: value('handPick.durationHours'),
          coupling: COUPLINGS.find((coupling) => coupling === draft.coupling),
        }
      : null,
  };
}

function textOrNone(text: string): string | undefined {
  return text === '' ? undefined : text;
}

function factAt(load: Load, key: LoadMeasure): number | null {
  const [outer, inner] = key.split('.') as [keyof Load, string | undefined];
  const fact = load[outer] as unknown;
  if (inner === undefined) return fact as number | null;
  return fact === null ? null : ((fact as Record<string, number | null>)[inner] ?? null);
}

function measuresFrom(of: (key: LoadMeasure) => Measure): LoadDraft['measures'] {
  const keys = Object.keys(LOAD_MEASURES) as LoadMeasure[];
  return Object.fromEntries(keys.map((key) => [key, of(key)])) as Record<LoadMeasure, Measure>;
}
