import 'server-only';
import { compileSite } from '@/lib/grid/compile-site.ts';
import type { CompiledSite } from '@/lib/grid/compiled-site.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

const known = new WeakMap<SiteIndex, CompiledSite>();

/** The site as columns, compiled once for each snapshot. Only read on the server: edits make a new snapshot. */
export function compiledSiteOf(index: SiteIndex): CompiledSite {
  const before = known.get(index);
  if (before !== undefined) return before;
  const site = compileSite(index);
  known.set(index, site);
  return site;
}
