import type { Site } from '../../../lib/model/site.ts';

export type Read = { what: string; path: (part: number) => string };

/** What people look at: pages and the addresses that pages fetch from. `part`, 0 to 1, chooses which of many. */
export function readsOf(site: Site): Read[] {
  const at = <T>(list: readonly T[], part: number): T => list[Math.floor(part * list.length) % list.length]!;
  const id = (text: string) => encodeURIComponent(text);
  const left = site.stock.slice(site.stock.length / 10); // the first ones are moved about by the edits
  const stock = (part: number) => at(left, part);
  const truck = (part: number) => id(at(site.trucks, (part * 31) % 1).id);
  return [
    { what: 'overview page', path: () => '/' },
    { what: 'racks page', path: () => '/racks' },
    { what: 'trucks page', path: () => '/trucks' },
    { what: 'truck page', path: (part) => `/trucks/${truck(part)}` },
    { what: 'loads page', path: (part) => `/loads?page=${1 + Math.floor(part * 20)}` },
    { what: 'load page', path: (part) => `/loads/${id(stock(part).load)}` },
    {
      what: 'which truck page',
      path: (part) => `/which-truck?location=${id(stock(part).location)}&operation=retrieve`,
    },
    {
      what: 'working page',
      path: (part) => `/working?location=${id(stock(part).location)}&truck=${truck(part)}`,
    },
    { what: 'changes page', path: () => '/changes' },
    {
      what: 'api lift',
      path: (part) => `/api/lift?location=${id(stock(part).location)}&truck=${truck(part)}`,
    },
    {
      what: 'api suggestions',
      path: (part) => `/api/suggestions?of=location&find=${id(stock(part).location.slice(0, 4))}`,
    },
    { what: 'api site changes', path: () => '/api/site/changes?since=1' },
  ];
}
