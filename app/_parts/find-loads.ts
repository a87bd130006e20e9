import type { Load } from '@/lib/model/load.ts';

/** The loads whose id or name holds every word, those whose id begins with the words first; at most `limit`. */
export function findLoads(loads: readonly Load[], words: string, limit: number): Load[] {
  const asked = words.trim().toLowerCase();
  const parts = asked.split(/\s+/);
  const begins: Load[] = [];
  const holds: Load[] = [];
  for (const load of loads) {
    if (begins.length === limit) break;
    if (load.id.toLowerCase().startsWith(asked)) begins.push(load);
    else if (holds.length < limit) {
      const text = `${load.id} ${load.name}`.toLowerCase();
      if (parts.every((part) => text.includes(part))) holds.push(load);
    }
  }
  return [...begins, ...holds].slice(0, limit);
}
