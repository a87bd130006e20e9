'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState, useTransition } from 'react';
import type { EntryOutcome } from '@/app/_entry/entry-outcome.ts';

/** Nothing came back: the network or the server went away. What was typed still stands in the form. */
export type SaveOutcome = EntryOutcome | { state: 'no-answer' };

/** Sends a form and keeps what became of it. `hrefOf`: where to go once it is stored. */
export function useSave(
  action: (before: EntryOutcome | null, form: FormData) => Promise<EntryOutcome>,
  hrefOf: (outcome: Extract<EntryOutcome, { state: 'saved' }>) => string,
) {
  const router = useRouter();
  const [outcome, setOutcome] = useState<SaveOutcome | null>(null);
  const [isBusy, start] = useTransition();
  const isStored = useRef(false);
  const send = (form: FormData) =>
    start(async () => {
      setOutcome(null);
      const result = await action(null, form).catch((): SaveOutcome => ({ state: 'no-answer' }));
      if (result.state === 'saved') {
        isStored.current = true;
        router.push(hrefOf(result));
        router.refresh();
      }
      setOutcome(result);
    });
  return { outcome, isBusy, isStored, send, forget: () => setOutcome(null) };
}

/** Asks before the page is left while something typed is not stored. */
export function useLeaveWarning(isOpen: () => boolean): void {
  const ask = useRef(isOpen);
  ask.current = isOpen;
  useEffect(() => {
    const warn = (event: BeforeUnloadEvent) => {
      if (ask.current()) event.preventDefault();
    };
    window.addEventListener('beforeunload', warn);
    return () => window.removeEventListener('beforeunload', warn);
  }, []);
}
