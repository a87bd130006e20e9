'use client';

import { type KeyboardEvent, useCallback, useMemo, useState } from 'react';

type Kept<T> = { past: readonly T[]; now: T; future: readonly T[]; step: string | null };

export type History<T> = {
  now: T;
  /** Changes of one `step` that follow one another (typing in one field) are undone together. */
  set: (next: T, step: string | null) => void;
  undo: () => void;
  redo: () => void;
  canUndo: boolean;
  canRedo: boolean;
  /** Ctrl+Z, Ctrl+Shift+Z, Ctrl+Y. */
  onKeyDown: (event: KeyboardEvent) => void;
};

/** What an editor holds, with the way back and forth. */
export function useHistory<T>(initial: T): History<T> {
  const [kept, setKept] = useState<Kept<T>>({ past: [], now: initial, future: [], step: null });
  const set = useCallback((next: T, step: string | null) => {
    setKept((before) => {
      const joins = step !== null && step === before.step;
      return { past: joins ? before.past : [...before.past, before.now], now: next, future: [], step };
    });
  }, []);
  const undo = useCallback(() => {
    setKept((before) => {
      const now = before.past.at(-1);
      if (now === undefined) return before;
      return { past: before.past.slice(0, -1), now, future: [before.now, ...before.future], step: null };
    });
  }, []);
  const redo = useCallback(() => {
    setKept((before) => {
      const [now, ...future] = before.future;
      if (now === undefined) return before;
      return { past: [...before.past, before.now], now, future, step: null };
    });
  }, []);
  const onKeyDown = useCallback(
    (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) undo();
      else if (key === 'y' || key === 'z') redo();
      else return;
      event.preventDefault();
    },
    [undo, redo],
  );
  return useMemo(
    () => ({
      now: kept.now,
      set,
      undo,
      redo,
      canUndo: kept.past.length > 0,
      canRedo: kept.future.length > 0,
      onKeyDown,
    }),
    [kept, set, undo, redo, onKeyDown],
  );
}
