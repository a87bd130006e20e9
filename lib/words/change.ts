import type { CannotRevert, Change, ChangeKind, ChangeNoun, Conflict, Unavailable } from '../model/change.ts';
import { counted, instantWords } from './plain-words.ts';

const NOUN_WORDS: Record<ChangeNoun, string> = {
  site: 'site',
  policy: 'policy value',
  'pallet-type': 'pallet type',
  'frame-type': 'frame type',
  aisle: 'aisle',
  run: 'run',
  dock: 'dock',
  truck: 'truck',
  'plate-photo': 'photo of the plate of truck',
  operator: 'operator',
  load: 'load',
  stock: 'location',
  check: 'check of truck',
};

export const KIND_WORDS: Record<ChangeKind, string> = {
  import: 'read in',
  save: 'changed',
  add: 'added',
  remove: 'removed',
  revert: 'undone',
  restore: 'restored from a backup',
};

const STOCK_WORDS: Partial<Record<ChangeKind, string>> = {
  add: 'filled',
  save: 'filled with another load',
  remove: 'emptied',
};

/** "truck" */
export function nounWords(noun: ChangeNoun): string {
  return NOUN_WORDS[noun];
}

/** What one change was, without who and when: "Truck FLT-2 changed". */
export function changeWords(
  change: Pick<Change, 'kind' | 'noun' | 'subject' | 'wholeSite' | 'reverts'>,
): string {
  const { kind, noun, subject, wholeSite, reverts } = change;
  if (wholeSite) {
    if (kind === 'restore') return 'The whole site restored from a backup';
    if (noun !== 'site') return `A whole list read in from ${subject}`;
    return reverts === null ? `The whole site read in: ${subject}` : `The whole site put back: ${subject}`;
  }
  const what = noun === 'site' ? 'Name of the site' : `${capital(NOUN_WORDS[noun])} ${subject}`;
  if (noun === 'stock' && STOCK_WORDS[kind] !== undefined) return `${what} ${STOCK_WORDS[kind]}`;
  return reverts === null ? `${what} ${KIND_WORDS[kind]}` : `${what} put back (change ${reverts} undone)`;
}

/** Why a save was not made, who was faster, and what to do. */
export function conflictSentence(conflict: Conflict): string {
  const { noun, subject, by, at, kind } = conflict;
  const what = noun === 'site' ? 'the site' : `${NOUN_WORDS[noun]} ${subject}`;
  const did =
    kind === 'restore' || (kind === 'import' && !conflict.base.known)
      ? 'exchanged the whole site'
      : kind === 'import'
        ? `read in ${what} from a file`
        : kind === 'remove'
          ? `removed ${what}`
          : `changed ${what}`;
  return `${by} has ${did} since you read it (${instantWords(at)}). Nothing was stored. Look at what stands there now, then save again if you still mean it.`;
}

/** Why a change cannot be undone because of a later one. */
export function lateRevertSentence(conflict: Conflict): string {
  const { noun, subject, by, at } = conflict;
  if (!conflict.base.known)
    return `The site was changed ${counted(conflict.revision - conflict.since, 'time')} after that, last by ${by} (${instantWords(at)}): undoing would lose it. Nothing was changed. The site as it stood before is kept as a file; read it in where it is worth the loss.`;
  const what = noun === 'site' ? 'The name of the site' : `${capital(NOUN_WORDS[noun])} ${subject}`;
  return `${what} is no longer what this change made of it: ${by} has changed it since (${instantWords(at)}). Nothing was changed. Undo the later change first, or edit it as it stands.`;
}

export function cannotRevertSentence(cannot: CannotRevert): string {
  switch (cannot) {
    case 'no-such-change':
      return 'There is no change of this number.';
    case 'check-is-kept':
      return 'A check is kept for good: a record of safety is not taken back. Write down another check.';
    case 'was-restored':
      return 'A restored backup is not undone here: the database that it replaced is kept beside it and can be restored.';
    case 'former-site-not-kept':
      return 'The site that stood before is not kept: there was none, or newer imports have taken its place among those kept.';
    case 'photo-not-kept':
      return 'The photo is no longer kept: newer ones have taken its place. Take it again.';
  }
}

/** Why the database could not do what was asked, and what to do. */
export function unavailableSentence(reason: Unavailable): string {
  switch (reason) {
    case 'disk-full':
      return 'The disk is full. Nothing was stored. Make room on the disk of the server, then try again.';
    case 'locked':
      return 'Another program is writing to the database and did not finish in time. Nothing was stored. Try again in a moment.';
    case 'read-only':
      return 'The database may not be written to. Nothing was stored. Check the permissions of the data folder and its files.';
    case 'damaged':
      return 'The database file is damaged. Nothing was stored. Stop the server and restore the newest backup.';
    case 'disk-fault':
      return 'The disk did not answer as it should. Nothing was stored. Check the disk of the server and its cables before anything else.';
  }
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
