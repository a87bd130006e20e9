import { z } from 'zod';
import { standingPlaces, standingPlacesOf } from '@/app/_parts/standing-places.ts';
import { assessedMassKg, type GrossMass, grossMass, type Load, loadCentreMm } from '@/lib/model/load.ts';
import { MASS_BASES } from '@/lib/model/policy.ts';
import type { Refusal } from '@/lib/model/refusal.ts';
import { schemaRefusals } from '@/lib/model/schema-refusals.ts';
import { palletOf, type SiteIndex } from '@/lib/model/site-index.ts';

export const LOADS_ON_A_PAGE = 50;

export const LOAD_SORTS = ['id', 'name', 'mass', 'centre', 'height', 'pallets'] as const;
export type LoadSort = (typeof LOAD_SORTS)[number];

const BASES_ASKED = [...MASS_BASES, 'unknown'] as const;

const asked = z.object({
  find: z.string().max(200).optional(),
  basis: z.enum(BASES_ASKED).optional(),
  standing: z.enum(['somewhere', 'nowhere']).optional(),
  sort: z.enum(LOAD_SORTS).optional(),
  direction: z.enum(['up', 'down']).optional(),
  page: z.coerce.number().pipe(z.int().min(1).max(1e6)).optional(),
});

/** Which loads, in which order, which page. */
export type LoadsAsk = Required<{
  [K in keyof z.infer<typeof asked>]: NonNullable<z.infer<typeof asked>[K]> | null;
}> & {
  sort: LoadSort;
  direction: 'up' | 'down';
  page: number;
};

/** A load as the list shows it. */
export type LoadRow = {
  load: Load;
  gross: GrossMass | null;
  assessedKg: number | null;
  centreMm: number;
  places: readonly string[];
};

export type LoadsPage = {
  rows: readonly LoadRow[];
  /** How many loads match, on all pages. */
  matching: number;
  page: number;
  pages: number;
};

/** Reads the list's address. What cannot be read is named in `refused` and counts as not asked. */
export function readLoadsAsk(raw: Record<string, string | string[] | undefined>): {
  ask: LoadsAsk;
  refused: readonly Refusal[];
} {
  const given = Object.fromEntries(
    Object.keys(asked.shape)
      .map((key) => [key, [raw[key]].flat()[0]] as const)
      .filter(([, value]) => value !== undefined && value !== ''),
  );
  const read = asked.safeParse(given);
  const issues = read.success ? [] : read.error.issues;
  const bad = new Set(issues.map((issue) => String(issue.path[0])));
  const good = read.success
    ? read.data
    : asked.parse(Object.fromEntries(Object.entries(given).filter(([key]) => !bad.has(key))));
  return {
    ask: {
      find: good.find ?? null,
      basis: good.basis ?? null,
      standing: good.standing ?? null,
      sort: good.sort ?? 'id',
      direction: good.direction ?? 'up',
      page: good.page ?? 1,
    },
    refused: schemaRefusals(given, issues, () => []),
  };
}

/** The address of a list like `ask` with some of it changed; what is plain is left out, and a change goes to page 1. */
export function writeLoadsAsk(ask: LoadsAsk, change: Partial<LoadsAsk> = {}): string {
  const to = { ...ask, page: 1, ...change };
  const out = new URLSearchParams();
  for (const key of ['find', 'basis', 'standing'] as const) if (to[key] !== null) out.set(key, to[key]);
  if (to.sort !== 'id') out.set('sort', to.sort);
  if (to.direction !== 'up') out.set('direction', to.direction);
  if (to.page > 1) out.set('page', String(to.page));
  return out.toString();
}

/**
 * The loads that match, one page of them. Every word of `find` must stand in the id, the name, the group or an item's
 * name. What is not known comes last whichever way it is sorted; ties keep the order of ids. A page past the end is the last.
 */
export function listLoads(index: SiteIndex, ask: LoadsAsk): LoadsPage {
  const needsAll = ask.standing !== null || ask.sort === 'pallets';
  const all = needsAll ? standingPlaces(index) : new Map<string, readonly string[]>();
  const words = (ask.find ?? '').toLowerCase().split(/\s+/).filter(Boolean);
  const kept = loadsById(index.site.loads).filter((load) => {
    if (ask.basis !== null && ask.basis !== (grossMass(load, palletOf(index, load))?.basis ?? 'unknown'))
      return false;
    if (ask.standing !== null && (ask.standing === 'somewhere') !== all.has(load.id)) return false;
    if (words.length === 0) return true;
    const text = textOf(load);
    return words.every((word) => text.includes(word));
  });
  const sorted = sortLoads(index, kept, ask, all);
  const pages = Math.max(1, Math.ceil(sorted.length / LOADS_ON_A_PAGE));
  const page = Math.min(ask.page, pages);
  const shown = sorted.slice((page - 1) * LOADS_ON_A_PAGE, page * LOADS_ON_A_PAGE);
  const places = needsAll
    ? all
    : standingPlacesOf(
        index,
        shown.map(({ id }) => id),
      );
  return {
    rows: shown.map((load) => {
      const pallet = palletOf(index, load);
      return {
        load,
        gross: grossMass(load, pallet),
        assessedKg: assessedMassKg(load, pallet, index.policy),
        centreMm: loadCentreMm(load),
        places: places.get(load.id) ?? [],
      };
    }),
    matching: sorted.length,
    page,
    pages,
  };
}

const byWords = new Intl.Collator('en', { numeric: true }).compare;

let held: { ids: readonly string[]; order: readonly number[] } = { ids: [], order: [] };

/** The loads in the order of their ids. Comparing 50 000 ids takes longer than all the rest, so their order is kept. */
function loadsById(loads: readonly Load[]): Load[] {
  const isHeld = held.ids.length === loads.length && loads.every(({ id }, at) => id === held.ids[at]);
  if (!isHeld) {
    const ids = loads.map(({ id }) => id);
    held = { ids, order: [...ids.keys()].sort((a, b) => byWords(ids[a]!, ids[b]!)) };
  }
  return held.order.map((at) => loads[at]!);
}

/** Sorts loads that stand in the order of their ids; a sort keeps equals as they stand. */
function sortLoads(
  index: SiteIndex,
  loads: Load[],
  ask: LoadsAsk,
  places: ReadonlyMap<string, readonly string[]>,
): Load[] {
  const sign = ask.direction === 'up' ? 1 : -1;
  switch (ask.sort) {
    case 'id':
      return ask.direction === 'up' ? loads : loads.toReversed();
    case 'name':
      return loads.toSorted((a, b) => sign * byWords(a.name, b.name));
    case 'mass': {
      const kg = new Map(loads.map((load) => [load, grossMass(load, palletOf(index, load))?.kg ?? null]));
      return loads.toSorted((a, b) => nullsLast(kg.get(a) ?? null, kg.get(b) ?? null, sign));
    }
    case 'centre':
      return loads.toSorted((a, b) => sign * (loadCentreMm(a) - loadCentreMm(b)));
    case 'height':
      return loads.toSorted((a, b) => sign * (a.heightMm - b.heightMm));
    case 'pallets': {
      const count = (load: Load) => places.get(load.id)?.length ?? 0;
      return loads.toSorted((a, b) => sign * (count(a) - count(b)));
    }
  }
}

function textOf(load: Load): string {
  const items = (load.items ?? []).map((item) => item.name);
  return [load.id, load.name, load.group ?? '', ...items].join(' ').toLowerCase();
}

function nullsLast(a: number | null, b: number | null, sign: number): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return sign * (a - b);
}
