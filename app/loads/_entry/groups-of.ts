import type { Site } from '@/lib/model/site.ts';

const MOST_SUGGESTED = 200;

/** The groups that the loads of the site are in, to choose from. */
export function groupsOf(site: Pick<Site, 'loads'>): string[] {
  const groups = new Set(site.loads.map(({ group }) => group).filter((group) => group !== null));
  return [...groups].sort().slice(0, MOST_SUGGESTED);
}
