import { guessList } from '@/app/import/guess-list.ts';
import { findKept, type KeptMapping } from '@/app/import/kept-mapping.ts';
import type { MappingGuess } from '@/lib/import/guess-mapping.ts';
import { LIST_NAMES, type ListName } from '@/lib/import/lists.ts';
import type { Mapping } from '@/lib/import/mapping.ts';
import type { FileRefusal } from '@/lib/import/table.ts';
import type { ImportClient } from '@/workers/import.client.ts';
import type { OpenChoice, OpenedList } from '@/workers/import-desk.ts';

export type Guesses = Record<ListName, MappingGuess>;

/** How a file is read, and where that came from. */
export type Reading = {
  opened: OpenedList;
  guesses: Guesses;
  mapping: Mapping;
  /** The mapping that a file of this header was read with before; null where there is none for this list. */
  kept: KeptMapping | null;
  isKeptUsed: boolean;
};

/** One file that a person has chosen. */
export type ImportFile = {
  key: number;
  name: string;
  bytes: Uint8Array;
  client: ImportClient;
  choice: OpenChoice;
  state:
    | { is: 'reading' }
    | { is: 'stopped' }
    | { is: 'refused'; refusal: FileRefusal }
    | { is: 'failed'; why: string }
    | ({ is: 'ready' } & Reading);
};

export type ReadyFile = Omit<ImportFile, 'state'> & { state: { is: 'ready' } & Reading };

export function isReady(file: ImportFile): file is ReadyFile {
  return file.state.is === 'ready';
}

/** Reads a file in its worker and guesses what it is: which list, which column gives which fact. */
export async function openFile(
  file: Omit<ImportFile, 'state'>,
  kept: readonly KeptMapping[],
  lists: readonly ListName[],
): Promise<ImportFile['state']> {
  const reply = await file.client.open(file.bytes, file.name, file.choice);
  if (reply.kind === 'stopped') return { is: 'stopped' };
  if (!reply.result.ok) return { is: 'refused', refusal: reply.result.refusal };
  const { opened } = reply.result;
  const guesses: Partial<Guesses> = {};
  for (const list of LIST_NAMES) {
    const guess = await file.client.guess(list);
    if (guess.kind === 'stopped') return { is: 'stopped' };
    guesses[list] = guess.result;
  }
  const all = guesses as Guesses;
  const used = findKept(kept, opened.header, lists);
  const list = used?.mapping.list ?? guessList(file.name, all) ?? lists[0] ?? 'loads';
  return { is: 'ready', ...readAs(opened, all, lists.includes(list) ? list : (lists[0] ?? list), kept) };
}

/** The file read as this list: with the mapping kept for its header, else with the guess. */
export function readAs(
  opened: OpenedList,
  guesses: Guesses,
  list: ListName,
  all: readonly KeptMapping[],
): Reading {
  const kept = findKept(all, opened.header, [list]);
  return {
    opened,
    guesses,
    kept,
    mapping: kept?.mapping ?? guesses[list].mapping,
    isKeptUsed: kept !== null,
  };
}
