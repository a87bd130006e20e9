import { type LiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';

/** The page of one truck. */
export function truckHref(id: string): string {
  return `/trucks/${encodeURIComponent(id)}`;
}

/** The page of one load. */
export function loadHref(id: string): string {
  return `/loads/${encodeURIComponent(id)}`;
}

/** The photo of a plate, by its hash. */
export function photoHref(hash: string): string {
  return `/api/plate-photos/${hash}`;
}

/** The whole working of one lift. */
export function workingHref(query: Partial<LiftQuery>): string {
  return `/working?${writeLiftQuery(query)}`;
}

/** The id that a dynamic route names: it arrives percent-encoded. A malformed one is taken as it came and is not found. */
export function idOfRoute(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
