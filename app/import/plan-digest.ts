import type { ImportPlan } from '@/lib/import/plan-import.ts';

type Told = Pick<
  ImportPlan,
  'list' | 'mode' | 'applies' | 'added' | 'changed' | 'unchanged' | 'refused' | 'notes'
>;

/**
 * A short text that differs when what the dry runs told a person differs: what is added, each change from what to what,
 * what is refused and why. The server plans again from the same bytes; this is how it knows that the site has changed
 * in a way that matters. No secret: whoever sends another digest only keeps their own import from being stored.
 */
export function planDigest(plans: readonly Told[]): string {
  // Two 32-bit FNV-1a hashes of different offsets: the browser's own hashing is not there without https.
  let a = 0x811c9dc5;
  let b = 0x9747b28c;
  for (const { list, mode, applies, added, changed, unchanged, refused, notes } of plans) {
    const parts = [[list, mode, applies, unchanged, notes], ...added, ...changed, ...refused];
    for (const part of parts) {
      const text = JSON.stringify(part);
      for (let at = 0; at < text.length; at++) {
        const code = text.charCodeAt(at);
        a = Math.imul(a ^ code, 0x01000193);
        b = Math.imul(b ^ code, 0x01000193) ^ (b >>> 15);
      }
    }
  }
  return `${(a >>> 0).toString(16).padStart(8, '0')}${(b >>> 0).toString(16).padStart(8, '0')}`;
}
