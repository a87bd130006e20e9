'use client';

import { useMemo, useState } from 'react';
import { DryRunPart } from '@/app/import/dry-run-part.tsx';
import { FileCard } from '@/app/import/file-card.tsx';
import { FileDrop } from '@/app/import/file-drop.tsx';
import { isReady } from '@/app/import/import-file.ts';
import { type KeptMapping, keepUsed } from '@/app/import/kept-mapping.ts';
import { LIST_WORDS } from '@/app/import/list-words.ts';
import { useDryRun } from '@/app/import/use-dry-run.ts';
import { useFiles } from '@/app/import/use-files.ts';
import type { ListName } from '@/lib/import/lists.ts';
import { headerSignature } from '@/lib/import/mapping.ts';
import type { ImportMode } from '@/lib/import/plan-import.ts';
import type { Role } from '@/lib/model/permissions.ts';

/** From files in hand to stored lists: choose, say what each column means, see what would change, store it. */
export function ImportView({
  role,
  lists,
  asked,
  kept: first,
}: {
  role: Role;
  lists: readonly ListName[];
  /** The list that the person came from, to say so; the headers of the file decide. */
  asked: ListName | null;
  kept: readonly KeptMapping[];
}) {
  const [kept, setKept] = useState(first);
  const chosen = useFiles(kept, lists);
  const [mode, setMode] = useState<ImportMode>('all-or-nothing');
  const ready = useMemo(() => chosen.files.filter(isReady), [chosen.files]);
  const work = useDryRun(ready, (run, by) => {
    const used = run.shown.map(({ file: { state } }) => {
      return { signature: headerSignature(state.opened.header), mapping: state.mapping, ...by };
    });
    setKept((now) => used.reduce<readonly KeptMapping[]>(keepUsed, now));
  });
  const isStored = work.state.is === 'stored';

  return (
    <div className="stack">
      {isStored ? null : (
        <>
          <FileDrop
            onFiles={chosen.add}
            hint={asked === null ? null : `You came from ${LIST_WORDS[asked].toLowerCase()}.`}
          />
          {chosen.files.map((file) => (
            <FileCard
              key={file.key}
              file={file}
              lists={lists}
              role={role}
              kept={kept}
              onRemove={() => chosen.remove(file.key)}
              onReopen={(choice) => chosen.reopen(file.key, choice)}
              onChange={(state) => chosen.change(file.key, state)}
            />
          ))}
        </>
      )}
      {ready.length > 0 || isStored ? (
        <DryRunPart
          work={work}
          role={role}
          mode={mode}
          waiting={chosen.files.length - ready.length}
          onMode={(next) => {
            setMode(next);
            if (work.state.is === 'shown' || work.state.is === 'refused') work.run(next);
          }}
          onMore={() => {
            chosen.clear();
            work.forget();
          }}
        />
      ) : null}
    </div>
  );
}
