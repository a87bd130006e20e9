import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { measureReader, typedText } from '@/app/_parts/typed-measures.ts';
import { averagedLiftsPerMinute } from '@/lib/hand-pick/frequency-multiplier.ts';
import { type HandPick, handPickSchema, type Load } from '@/lib/model/load.ts';
import { cameAs, type Expected, nearestTo, type Refusal } from '@/lib/model/refusal.ts';
import { schemaRefusals } from '@/lib/model/schema-refusals.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';

/** Address parameters of the screen, with the field of the hand pick that each stands for. */
export const PICK_PARAMETERS = [
  { name: 'mass', field: 'massKg', of: 'mass', label: 'Mass of one case' },
  { name: 'hands-out', field: 'horizontalMm', of: 'length', label: 'Hands ahead of the ankles (H)' },
  { name: 'grip', field: 'gripHeightMm', of: 'length', label: 'Grip above what the pallet stands on' },
  {
    name: 'put-down',
    field: 'destinationHeightMm',
    of: 'length',
    label: 'Hands above the floor at the far end',
  },
  { name: 'twist', field: 'asymmetryDeg', of: 'number', label: 'Twist of the trunk, degrees (A)' },
  { name: 'rate', field: 'liftsPerMinute', of: 'number', label: 'Lifts a minute' },
  { name: 'hours', field: 'durationHours', of: 'number', label: 'For how many hours' },
  { name: 'hold', field: 'coupling', of: 'word', label: 'Hold on the case' },
] as const satisfies readonly {
  name: string;
  field: keyof HandPick;
  of: 'mass' | 'length' | 'number' | 'word';
  label: string;
}[];

/** One pick face: where the case stands, and how it is lifted. */
export type PickFace = { place: Place | null; load: Load | null; beamTopMm: number; pick: HandPick };

export type ReadHandPick =
  | { kind: 'nothing' }
  | { kind: 'refused'; refused: readonly Refusal[] }
  /** `job`: further pick faces that the same person serves in the same shift. */
  | { kind: 'asked'; face: PickFace; job: readonly PickFace[] };

/**
 * Which pick by hand does this address ask about?
 *
 * location (its beam top, and the load that stands there), load, and any of PICK_PARAMETERS in place of what the load
 * states; without a location `beam-top`. Lengths and masses are read in `units` (metric unless "lb-in") or with a unit
 * of their own. `minutes`: the rate is kept up for so many of 15 minutes only. `also`: further locations of the same
 * job, comma between. What cannot be read is refused by name.
 */
export function readHandPick(index: SiteIndex, raw: RawQuery): ReadHandPick {
  const text = (name: string) => typedText(raw, name);
  const names = ['location', 'load', 'beam-top', ...PICK_PARAMETERS.map(({ name }) => name)];
  if (names.every((name) => text(name) === undefined)) return { kind: 'nothing' };
  const { read: measured, refused } = measureReader(raw);
  const refuse = (name: string, came: string | undefined, expected: Expected) =>
    refused.push({ path: `$.${name}`, came: cameAs(came), expected });
  const find = <T>(name: string, list: string, map: ReadonlyMap<string, T>): T | null => {
    const id = text(name);
    const entry = id === undefined ? undefined : map.get(id);
    if (id !== undefined && entry === undefined) {
      refuse(name, id, { is: 'id-in', list, nearest: nearestTo(id, map.keys()) });
    }
    return entry ?? null;
  };

  const place = find('location', 'the locations of this site', index.places);
  const named = find('load', 'the loads of this site', index.loads);
  const load = named ?? (place === null ? null : (index.stockAt.get(place.id) ?? null));
  const beamTop = measured('beam-top', 'length');
  if (place === null && text('location') === undefined && text('beam-top') === undefined) {
    refuse('location', undefined, { is: 'present' });
  }

  const given: Partial<Record<keyof HandPick, unknown>> = { ...load?.handPick };
  for (const { name, field, of } of PICK_PARAMETERS) {
    const value = of === 'word' ? text(name) : measured(name, of);
    if (value !== undefined && value !== null) given[field] = value;
  }
  const minutesIn15 = measured('minutes', 'number');
  if (minutesIn15 !== null && minutesIn15 > 15) {
    refuse('minutes', text('minutes'), { is: 'at-most', limit: 15 });
  } else if (minutesIn15 !== null && typeof given.liftsPerMinute === 'number') {
    const liftsPerMinute = given.liftsPerMinute;
    if (liftsPerMinute > 15) refuse('rate', String(liftsPerMinute), { is: 'at-most', limit: 15 });
    else given.liftsPerMinute = averagedLiftsPerMinute({ liftsPerMinute, minutesIn15 });
  }
  const read = handPickSchema.safeParse(given);
  if (!read.success) {
    const said = new Set(refused.map(({ path }) => path));
    for (const refusal of schemaRefusals(given, read.error.issues, () => [])) {
      const parameter = PICK_PARAMETERS.find(({ field }) => refusal.path === `$.${field}`);
      const path = `$.${parameter?.name ?? refusal.path.slice(2)}`;
      if (!said.has(path)) refused.push({ ...refusal, path });
    }
  }
  const { job, unknown } = jobOf(index, text('also'));
  refused.push(...unknown);
  if (refused.length > 0 || !read.success) return { kind: 'refused', refused };
  const beamTopMm = place?.level.beamTopMm ?? beamTop ?? 0;
  return { kind: 'asked', face: { place, load, beamTopMm, pick: read.data }, job };
}

/** The pick faces at these locations; a location that is not known or holds nothing to pick by hand is refused. */
function jobOf(index: SiteIndex, also: string | undefined): { job: PickFace[]; unknown: Refusal[] } {
  const job: PickFace[] = [];
  const unknown: Refusal[] = [];
  for (const id of (also ?? '').split(',').map((part) => part.trim())) {
    if (id === '') continue;
    const place = index.places.get(id);
    const load = index.stockAt.get(id);
    if (place !== undefined && load !== undefined && load.handPick !== null) {
      job.push({ place, load, beamTopMm: place.level.beamTopMm, pick: load.handPick });
      continue;
    }
    const expected: Expected =
      place === undefined
        ? { is: 'id-in', list: 'the locations of this site', nearest: nearestTo(id, index.places.keys()) }
        : { is: 'text', rule: 'a location where a load stands that is picked by hand' };
    unknown.push({ path: '$.also', came: cameAs(id), expected });
  }
  return { job, unknown };
}

/** The address of the working of one pick face. */
export function handPickHref(face: { location: string; load?: string; also?: readonly string[] }): string {
  const query = new URLSearchParams({ location: face.location });
  if (face.load !== undefined) query.set('load', face.load);
  if (face.also !== undefined && face.also.length > 0) query.set('also', face.also.join(','));
  return `/hand-pick?${query}`;
}
