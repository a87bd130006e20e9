import type { Conflict, Unavailable } from '@/lib/model/change.ts';
import { cameAs, type Refusal } from '@/lib/model/refusal.ts';
import type { PhotoRefused } from '@/lib/photo/photo.ts';
import type { Saved } from '@/lib/store/change-site.ts';

/** What became of a form: stored, or why not; then nothing was changed and nothing that was typed is lost. */
export type EntryOutcome =
  | { state: 'saved'; revision: number; id: string }
  | { state: 'refused'; refusals: Refusal[] }
  | { state: 'conflict'; conflict: Conflict }
  | { state: 'photo-refused'; why: PhotoRefused }
  /** It cannot go while it stands in these places. */
  | { state: 'needed'; places: string[] }
  | { state: 'unavailable'; reason: Unavailable };

export function outcomeOf(saved: Saved, id: string): EntryOutcome {
  if (saved.ok) return { state: 'saved', revision: saved.revision, id };
  if (saved.conflict !== undefined) return { state: 'conflict', conflict: saved.conflict };
  return { state: 'refused', refusals: saved.refusals.slice(0, 40) };
}

/** What no form of ours sends. */
export function malformed(came: unknown): EntryOutcome {
  return {
    state: 'refused',
    refusals: [{ path: '$', came: cameAs(came), expected: { is: 'text', rule: 'a whole form of ours' } }],
  };
}
