import type { Site } from '@/lib/model/site.ts';

/** The attachments that the trucks of the site have or are rated for, to choose from. */
export function attachmentsOf(site: Pick<Site, 'trucks'>): string[] {
  const named = site.trucks.flatMap(({ fittedAttachment, plate }) => [
    fittedAttachment,
    ...plate.ratings.map(({ attachment }) => attachment),
  ]);
  return [...new Set(named.filter((name) => name !== null))].sort();
}
