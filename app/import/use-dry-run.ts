'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { type DryRun, dryRun, type FileProgress } from '@/app/import/dry-run.ts';
import type { ReadyFile } from '@/app/import/import-file.ts';
import { sendImport } from '@/app/import/send-import.ts';
import type { ImportMode } from '@/lib/import/plan-import.ts';

export type RunState =
  | { is: 'none' }
  | { is: 'running'; progress: FileProgress | null; again: boolean }
  | { is: 'stopped' }
  | { is: 'failed'; why: string }
  /** `again`: the site had changed, so that this is not the dry run that was to be stored. */
  | { is: 'shown'; run: DryRun; again: boolean }
  | { is: 'storing'; run: DryRun; sent: number; since: number }
  | { is: 'refused'; run: DryRun; message: string }
  | { is: 'stored'; run: DryRun; revision: number; milliseconds: number };

const BETWEEN_SHOWN_MS = 100;

/** The dry run of the files and the storing of it. A change of the files or of how they are read takes it away. */
export function useDryRun(
  files: readonly ReadyFile[],
  onStored: (run: DryRun, by: { usedBy: string; usedAt: string }) => void,
) {
  const router = useRouter();
  const [state, setState] = useState<RunState>({ is: 'none' });
  const turn = useRef(0);

  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever the files have become, what was shown is not it
  useEffect(() => {
    setState((now) => {
      if (now.is === 'stored' || now.is === 'storing') return now;
      turn.current++;
      return { is: 'none' };
    });
  }, [files]);

  const run = async (mode: ImportMode, again = false) => {
    const mine = ++turn.current;
    let shownAt = 0;
    let isOver = false;
    setState({ is: 'running', progress: null, again });
    // Word of progress has a way of its own and may come behind the result.
    const onProgress = (progress: FileProgress) => {
      if (isOver) return;
      const now = performance.now();
      if (mine !== turn.current || (now - shownAt < BETWEEN_SHOWN_MS && progress.done < progress.total))
        return;
      shownAt = now;
      setState({ is: 'running', progress, again });
    };
    try {
      const done = await dryRun(files, mode, onProgress);
      isOver = true;
      if (mine === turn.current)
        setState(done === null ? { is: 'stopped' } : { is: 'shown', run: done, again });
    } catch (error) {
      isOver = true;
      if (mine === turn.current) setState({ is: 'failed', why: String(error) });
    }
  };

  const stop = () => {
    turn.current++;
    for (const { client } of files) client.stop();
    setState({ is: 'stopped' });
  };

  const store = async (shown: DryRun) => {
    const since = Date.now();
    setState({ is: 'storing', run: shown, sent: 0, since });
    try {
      const answer = await sendImport(shown, (sent) => setState({ is: 'storing', run: shown, sent, since }));
      if (answer.state === 'differs') return run(shown.mode, true);
      if (answer.state === 'refused') return setState({ is: 'refused', run: shown, message: answer.message });
      const { revision, milliseconds, by, at } = answer;
      onStored(shown, { usedBy: by, usedAt: at });
      setState({ is: 'stored', run: shown, revision, milliseconds });
      router.refresh();
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      setState({ is: 'refused', run: shown, message });
    }
  };

  const forget = () => {
    turn.current++;
    setState({ is: 'none' });
  };

  return { state, run, stop, store, forget };
}
