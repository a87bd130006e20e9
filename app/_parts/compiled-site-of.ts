import 'server-only';
import { compileSite } from '@/lib/grid/compile-site.ts';
import type { CompiledSite } from '@/lib/grid/compiled-site.ts';
import { renewSite } from '@/lib/grid/renew-site.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';

let held: CompiledSite | null = null;

/**
 * The site as columns, put right after changes where they are few. To be read at once: the next call for another
 * snapshot writes into the same columns.
 */
export function compiledSiteOf(index: SiteIndex): CompiledSite {
  if (held?.index !== index) held = held === null ? compileSite(index) : renewSite(held, index);
  return held;
}
