import { boundTo } from '@/app/import/edit-mapping.ts';
import type { ListName } from '@/lib/import/lists.ts';
import { headerSignature, type Mapping, mappingSchema } from '@/lib/import/mapping.ts';

/** A mapping that was used for a file of this header before. */
export type KeptMapping = { signature: string; mapping: Mapping; usedBy: string; usedAt: string };

/** Those kept mappings that can still be read; the lists may have lost a fact since. */
export function readKept(
  kept: readonly { signature: string; mapping: unknown; usedBy: string; usedAt: string }[],
): KeptMapping[] {
  return kept.flatMap(({ mapping, ...rest }) => {
    const read = mappingSchema.safeParse(mapping);
    return read.success ? [{ ...rest, mapping: read.data }] : [];
  });
}

/** With the mapping that a file was just read with, in the place of the one that was kept under its header. */
export function keepUsed(kept: readonly KeptMapping[], used: KeptMapping): KeptMapping[] {
  const isSame = (entry: KeptMapping) =>
    entry.signature === used.signature && entry.mapping.list === used.mapping.list;
  return [used, ...kept.filter((entry) => !isSame(entry))];
}

/** The mapping that a file of this header was last read with, for one list or for any of those allowed. */
export function findKept(
  kept: readonly KeptMapping[],
  header: readonly string[],
  lists: readonly ListName[],
): KeptMapping | null {
  const signature = headerSignature(header);
  const found = kept.find((entry) => entry.signature === signature && lists.includes(entry.mapping.list));
  return found === undefined ? null : { ...found, mapping: boundTo(found.mapping, header) };
}
