import { z } from 'zod';
import type { Context, Operation } from '@/lib/check/step.ts';
import type { Load } from '@/lib/model/load.ts';
import { MASS_BASES, type MassBasis } from '@/lib/model/policy.ts';
import { id, instant, size } from '@/lib/model/quantities.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { schemaRefusals } from '@/lib/model/schema-refusals.ts';

/** The load a screen asks about: one the site knows, one typed in, or whatever stands at the place. */
export type AskedLoad =
  | { kind: 'known'; id: string }
  | {
      kind: 'typed';
      massKg: number | null;
      basis: MassBasis;
      depthMm: number;
      widthMm: number;
      heightMm: number;
      palletType: string | null;
    }
  | { kind: 'stored' };

/** When the lift is judged: at this moment, at a stated time, or not judged (checks, holds and expiries left out). */
export type AskedTime = { kind: 'now' } | { kind: 'at'; instant: string } | { kind: 'not-judged' };

/** What an address asks: the same words on every screen that judges lifts. Masses in kg, lengths in mm, whatever is shown. */
export type LiftQuery = {
  location: string | null;
  truck: string | null;
  load: AskedLoad;
  operation: Operation;
  time: AskedTime;
  stock: Context['stock'];
  from: string | null;
  operator: string | null;
};

export const PLAIN_LIFT_QUERY: LiftQuery = {
  location: null,
  truck: null,
  load: { kind: 'stored' },
  operation: 'retrieve',
  time: { kind: 'now' },
  stock: 'as-is',
  from: null,
  operator: null,
};

/** An id that the screens give a load typed in: it stands in no site file. */
export const TYPED_LOAD_ID = 'typed';

const number = z.preprocess(
  (raw) => (typeof raw === 'string' && raw.trim() !== '' ? Number(raw) : raw),
  size,
);

const parameters = z.object({
  location: id.optional(),
  truck: id.optional(),
  load: id.optional(),
  mass: number.optional(),
  basis: z.enum(MASS_BASES).optional(),
  depth: number.optional(),
  width: number.optional(),
  height: number.optional(),
  pallet: id.optional(),
  operation: z.enum(['place', 'retrieve']).optional(),
  asOf: z.union([instant, z.literal('not-judged')]).optional(),
  stock: z.enum(['as-is', 'empty']).optional(),
  from: id.optional(),
  operator: id.optional(),
});

export type RawQuery = Record<string, string | string[] | undefined>;
export type ReadQuery = { query: LiftQuery; refused: readonly Refusal[] };

/**
 * What does this address ask? Parameters: location, truck, load | mass (kg), basis, depth, width, height (mm), pallet;
 * operation, asOf (an ISO time or "not-judged"; none: now), stock, from, operator.
 *
 * A value that cannot be read is named in `refused` and counts as not given; nothing is guessed in its place. A typed
 * load needs depth, width and height. No load at all: what stands at the place. The operation, when none is named, is
 * `place` for a known or typed load and `retrieve` for what stands there.
 */
export function readLiftQuery(raw: RawQuery): ReadQuery {
  const given = Object.fromEntries(
    Object.keys(parameters.shape)
      .map((key) => [key, first(raw[key])] as const)
      .filter(([, value]) => value !== undefined && value !== ''),
  );
  const read = parameters.safeParse(given);
  const refused = read.success ? [] : schemaRefusals(given, read.error.issues, () => []);
  const bad = new Set(read.success ? [] : read.error.issues.map((issue) => String(issue.path[0])));
  const good = read.success
    ? read.data
    : parameters.parse(Object.fromEntries(Object.entries(given).filter(([key]) => !bad.has(key))));
  const { load, missing } = askedLoad(good);
  return {
    query: {
      location: good.location ?? null,
      truck: good.truck ?? null,
      load,
      operation: good.operation ?? (load.kind === 'stored' ? 'retrieve' : 'place'),
      time: askedTime(good.asOf),
      stock: good.stock ?? 'as-is',
      from: good.from ?? null,
      operator: good.operator ?? null,
    },
    refused: [...refused, ...missing.filter((entry) => !bad.has(entry.path.slice(2)))],
  };
}

function askedLoad(good: z.infer<typeof parameters>): { load: AskedLoad; missing: Refusal[] } {
  if (good.load !== undefined) return { load: { kind: 'known', id: good.load }, missing: [] };
  const { mass, depth, width, height } = good;
  if ([mass, depth, width, height].every((value) => value === undefined))
    return { load: { kind: 'stored' }, missing: [] };
  if (depth === undefined || width === undefined || height === undefined) {
    const missing = (['depth', 'width', 'height'] as const).filter((key) => good[key] === undefined);
    return {
      load: { kind: 'stored' },
      missing: missing.map((key) => ({ path: `$.${key}`, came: 'nothing', expected: { is: 'present' } })),
    };
  }
  return {
    load: {
      kind: 'typed',
      massKg: mass ?? null,
      basis: good.basis ?? 'declared',
      depthMm: depth,
      widthMm: width,
      heightMm: height,
      palletType: good.pallet ?? null,
    },
    missing: [],
  };
}

function askedTime(asOf: string | undefined): AskedTime {
  if (asOf === undefined) return { kind: 'now' };
  return asOf === 'not-judged' ? { kind: 'not-judged' } : { kind: 'at', instant: asOf };
}

function first(value: string | string[] | undefined): string | undefined {
  return Array.isArray(value) ? value[0] : value;
}

/** The address parameters of a question, without a leading "?"; what is plain is left out. readLiftQuery reads it back. */
export function writeLiftQuery(query: Partial<LiftQuery>): string {
  const parts: [string, string | number | null | undefined][] = [
    ['location', query.location],
    ['truck', query.truck],
    ...loadParts(query.load),
    ['operation', query.operation],
    ['asOf', timePart(query.time)],
    ['stock', query.stock === 'empty' ? 'empty' : null],
    ['from', query.from],
    ['operator', query.operator],
  ];
  const out = new URLSearchParams();
  for (const [key, value] of parts) if (value !== null && value !== undefined) out.set(key, String(value));
  return out.toString();
}

function loadParts(load: AskedLoad | undefined): [string, string | number | null][] {
  if (load === undefined || load.kind === 'stored') return [];
  if (load.kind === 'known') return [['load', load.id]];
  return [
    ['mass', load.massKg],
    ['basis', load.massKg === null ? null : load.basis],
    ['depth', load.depthMm],
    ['width', load.widthMm],
    ['height', load.heightMm],
    ['pallet', load.palletType],
  ];
}

function timePart(time: AskedTime | undefined): string | null {
  if (time === undefined || time.kind === 'now') return null;
  return time.kind === 'at' ? time.instant : 'not-judged';
}

/** A typed load as a load of the site's kind: a uniform load standing on the pallet type named, if any. */
export function typedLoad(asked: Extract<AskedLoad, { kind: 'typed' }>, name: string): Load {
  return {
    id: TYPED_LOAD_ID,
    name,
    palletType: asked.palletType,
    items: null,
    grossKg: asked.massKg,
    massBasis: asked.basis,
    depthMm: asked.depthMm,
    widthMm: asked.widthMm,
    heightMm: asked.heightMm,
    centreFromHeelMm: null,
    centreHeightMm: null,
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}

/** What is asked around the lift, with the clock read by the caller: `nowIso` counts only for a question of now. */
export function contextOf(query: LiftQuery, nowIso: string): Context {
  return {
    operation: query.operation,
    asOf: query.time.kind === 'now' ? nowIso : query.time.kind === 'at' ? query.time.instant : null,
    operator: query.operator,
    stock: query.stock,
    from: query.from,
  };
}
