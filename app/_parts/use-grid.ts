'use client';

import { useCallback, useEffect, useState } from 'react';
import type { GridAnswer, GridQuestion } from '@/lib/grid/question.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { GridClient } from '@/workers/grid.client.ts';

export type GridWork =
  | { state: 'rest' }
  | { state: 'busy'; done: number }
  | { state: 'stopped' }
  | { state: 'failed'; why: string };

export type GridRun = {
  /** The last answer that came, with what it answers; kept while a newer question is worked on. */
  answered: { index: SiteIndex; question: GridQuestion; answer: GridAnswer } | null;
  work: GridWork;
  stop: () => void;
  again: () => void;
};

type Desk = { index: SiteIndex; client: GridClient; opened: Promise<boolean> };

let desk: Desk | null = null;

/** One worker for all screens, with the site open in it: a site is sent and compiled once for each revision. */
function deskFor(index: SiteIndex): Desk {
  if (desk?.index !== index) {
    const client = desk?.client ?? new GridClient();
    desk = { index, client, opened: client.open(index.site) };
    desk.opened.catch(endDesk); // so that the next question starts afresh
  }
  return desk;
}

function endDesk(): void {
  desk?.client.dispose();
  desk = null;
}

/** Asks a question of every location and truck in the worker. The newest counts; `question` must be the same object while it is the same question. */
export function useGrid(index: SiteIndex | null, question: GridQuestion | null): GridRun {
  const [answered, setAnswered] = useState<GridRun['answered']>(null);
  const [work, setWork] = useState<GridWork>({ state: 'rest' });
  const [turn, setTurn] = useState(0);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new turn asks the same again
  useEffect(() => {
    if (index === null || question === null) return;
    let wanted = true;
    const ask = async () => {
      setWork({ state: 'busy', done: 0 });
      const { client, opened } = deskFor(index);
      if (!(await opened) || !wanted) return;
      const reply = await client.ask(question, (done) => wanted && setWork({ state: 'busy', done }));
      if (!wanted || reply.kind === 'superseded') return;
      setAnswered({ index, question, answer: reply.answer });
      setWork({ state: 'rest' });
    };
    ask().catch((error: unknown) => wanted && setWork({ state: 'failed', why: String(error) }));
    return () => {
      wanted = false;
    };
  }, [index, question, turn]);

  const stop = useCallback(() => {
    endDesk();
    setWork({ state: 'stopped' });
  }, []);
  const again = useCallback(() => setTurn((before) => before + 1), []);
  return { answered, work, stop, again };
}
