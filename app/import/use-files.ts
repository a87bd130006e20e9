'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { type ImportFile, openFile } from '@/app/import/import-file.ts';
import type { KeptMapping } from '@/app/import/kept-mapping.ts';
import type { ListName } from '@/lib/import/lists.ts';
import { ImportClient } from '@/workers/import.client.ts';
import type { OpenChoice } from '@/workers/import-desk.ts';

export type Files = {
  files: readonly ImportFile[];
  add: (chosen: readonly File[]) => void;
  remove: (key: number) => void;
  reopen: (key: number, choice: OpenChoice) => void;
  change: (key: number, state: ImportFile['state']) => void;
  clear: () => void;
};

/** The files that a person has chosen, each read in a worker of its own that ends with it. */
export function useFiles(kept: readonly KeptMapping[], lists: readonly ListName[]): Files {
  const [files, setFiles] = useState<readonly ImportFile[]>([]);
  const held = useRef(new Map<number, ImportClient>());
  const next = useRef(1);

  const change = useCallback((key: number, state: ImportFile['state']) => {
    setFiles((now) => now.map((file) => (file.key === key ? { ...file, state } : file)));
  }, []);

  const open = useCallback(
    (file: ImportFile) => {
      openFile(file, kept, lists)
        .catch((error: unknown): ImportFile['state'] => ({ is: 'failed', why: String(error) }))
        .then((state) => change(file.key, state));
    },
    [kept, lists, change],
  );

  const add = useCallback(
    async (chosen: readonly File[]) => {
      for (const file of chosen) {
        const key = next.current++;
        const client = new ImportClient();
        held.current.set(key, client);
        const bytes = new Uint8Array(await file.arrayBuffer());
        const entry: ImportFile = {
          key,
          name: file.name,
          bytes,
          client,
          choice: {},
          state: { is: 'reading' },
        };
        setFiles((now) => [...now, entry]);
        open(entry);
      }
    },
    [open],
  );

  const remove = useCallback((key: number) => {
    held.current.get(key)?.dispose();
    held.current.delete(key);
    setFiles((now) => now.filter((file) => file.key !== key));
  }, []);

  const reopen = (key: number, choice: OpenChoice) => {
    const file = files.find((entry) => entry.key === key);
    if (file === undefined) return;
    const again: ImportFile = { ...file, choice, state: { is: 'reading' } };
    setFiles((now) => now.map((entry) => (entry.key === key ? again : entry)));
    open(again);
  };

  const clear = useCallback(() => {
    for (const client of held.current.values()) client.dispose();
    held.current.clear();
    setFiles([]);
  }, []);

  useEffect(() => {
    const clients = held.current;
    return () => {
      for (const client of clients.values()) client.dispose();
    };
  }, []);

  return { files, add, remove, reopen, change, clear };
}
