import type { Run } from '../model/racking.ts';
import type { Site } from '../model/site.ts';
import { locationsOf } from './neighbours.ts';
import type { RunDraft } from './run-draft.ts';

/**
 * A run before and after a change, each as a site of its own: the rest of the site, in which nothing changes, is left
 * out, since frames, bays and aisles never reach from one run into another. null: the run is not there (yet, or any more).
 */
export type BeforeAfter = { before: Site | null; after: Site | null; links: Links };

/** Which part after the change was which before; as data that may travel to a worker. */
export type Links = {
  bays: readonly (number | null)[];
  frames: readonly (number | null)[];
  /** [id now, id before] of each location that stays. */
  locations: readonly (readonly [string, string])[];
};

export function beforeAfter(site: Site, saved: Run | null, draft: RunDraft | null): BeforeAfter {
  const savedIds = new Set(saved === null ? [] : locationsOf(saved));
  const stock = site.stock.filter((row) => savedIds.has(row.location));
  const known = new Set(stock.map((row) => row.load));
  const rest = { ...site, docks: [], loads: site.loads.filter((load) => known.has(load.id)) };
  const now = new Map([...(draft?.locations ?? [])].map(([id, before]) => [before, id]));
  return {
    before: saved === null ? null : { ...rest, runs: [saved], stock },
    after:
      draft === null
        ? null
        : {
            ...rest,
            runs: [draft.run],
            stock: stock.flatMap(({ location, load }) => {
              const stands = now.get(location);
              return stands === undefined ? [] : [{ location: stands, load }];
            }),
          },
    links: {
      bays: draft?.bays ?? [],
      frames: draft?.frames ?? [],
      locations: [...(draft?.locations ?? [])],
    },
  };
}

/** The pallets that stand in locations which the change takes away. */
export function strandedStock(site: Site, saved: Run, draft: RunDraft | null): Site['stock'] {
  const stay = new Set(draft?.locations.values() ?? []);
  const gone = new Set(locationsOf(saved).filter((id) => !stay.has(id)));
  return site.stock.filter((row) => gone.has(row.location));
}
