'use client';

import { FirstRows } from '@/app/import/first-rows.tsx';
import { type ImportFile, isReady, type ReadyFile, readAs } from '@/app/import/import-file.ts';
import type { KeptMapping } from '@/app/import/kept-mapping.ts';
import { LIST_WORDS } from '@/app/import/list-words.ts';
import { MappingPart } from '@/app/import/mapping-part.tsx';
import { listPermission } from '@/app/import/needed-permissions.ts';
import { ReadingChoice } from '@/app/import/reading-choice.tsx';
import { LIST_NAMES, type ListName } from '@/lib/import/lists.ts';
import { may, type Role } from '@/lib/model/permissions.ts';
import { fileRefusalSentence } from '@/lib/words/import-refusal.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';
import { counted, instantWords } from '@/lib/words/plain-words.ts';
import type { OpenChoice } from '@/workers/import-desk.ts';
import styles from './import.module.css';

type Acts = {
  lists: readonly ListName[];
  role: Role;
  kept: readonly KeptMapping[];
  onReopen: (choice: OpenChoice) => void;
  onChange: (state: ImportFile['state']) => void;
};

/** One file: what it is, its first rows, and which column gives which fact. */
export function FileCard({ file, onRemove, ...acts }: Acts & { file: ImportFile; onRemove: () => void }) {
  return (
    <section className="sheet stack" aria-labelledby={`file-${file.key}`}>
      <div className={styles.cardHead}>
        <h2 id={`file-${file.key}`}>{file.name}</h2>
        <button type="button" onClick={onRemove} aria-label={`Leave ${file.name} out`}>
          Leave out
        </button>
      </div>
      {isReady(file) ? (
        <ReadyCard file={file} {...acts} />
      ) : (
        <NotReady file={file} onReopen={acts.onReopen} />
      )}
    </section>
  );
}

function NotReady({ file, onReopen }: { file: ImportFile; onReopen: (choice: OpenChoice) => void }) {
  const { state } = file;
  switch (state.is) {
    case 'reading':
      return <p role="status">Reading…</p>;
    case 'refused':
      return (
        <div role="alert" className="stack">
          <p className="fault">{fileRefusalSentence(file.name, state.refusal)}</p>
          {Object.keys(file.choice).length === 0 ? null : (
            <button type="button" onClick={() => onReopen({})}>
              Read it as it was first read
            </button>
          )}
        </div>
      );
    case 'failed':
    case 'stopped':
      return (
        <div role="alert" className="row">
          <p className="fault">{state.is === 'failed' ? state.why : 'The reading was stopped.'}</p>
          <button type="button" onClick={() => onReopen(file.choice)}>
            Read it again
          </button>
        </div>
      );
    default:
      return null;
  }
}

function ReadyCard({ file, lists, role, kept, onReopen, onChange }: Acts & { file: ReadyFile }) {
  const { state } = file;
  const { opened, mapping, guesses } = state;
  const use = (list: ListName) => onChange({ is: 'ready', ...readAs(opened, guesses, list, kept) });
  return (
    <>
      <div className="row">
        <div className="field">
          <label htmlFor={`list-${file.key}`}>It is a list of</label>
          <select
            id={`list-${file.key}`}
            value={mapping.list}
            onChange={({ target }) => use(target.value as ListName)}
          >
            {LIST_NAMES.map((list) => (
              <option key={list} value={list} disabled={!lists.includes(list)}>
                {LIST_WORDS[list]}
                {lists.includes(list) ? '' : ' (not for your role)'}
              </option>
            ))}
          </select>
        </div>
        <p className="soft">
          {counted(opened.rowCount, 'row')}, {counted(opened.header.length, 'column')}
        </p>
      </div>
      {lists.includes(mapping.list) ? null : (
        <p className="fault">{notAllowedSentence(listPermission(mapping.list), role)}</p>
      )}
      {mapping.list === 'locations' && !may(role, 'change-racks') ? (
        <p className="soft">
          You may store conditions of levels and frames; other changes of racks are refused.
        </p>
      ) : null}
      <FirstRows opened={opened} name={file.name} />
      <ReadingChoice
        fileKey={file.key}
        opened={opened}
        choice={file.choice}
        mapping={mapping}
        onReopen={onReopen}
        onMapping={(next) => onChange({ ...state, mapping: next })}
      />
      {state.kept === null ? null : (
        <div className={`row ${styles.kept}`} role="status">
          <p>
            {state.isKeptUsed
              ? `Read as ${state.kept.usedBy} last read a file with these headers, ${instantWords(state.kept.usedAt)}.`
              : 'Guessed from the headers. A file with these headers was read before.'}
          </p>
          <button
            type="button"
            onClick={() =>
              onChange({
                ...state,
                isKeptUsed: !state.isKeptUsed,
                mapping: state.isKeptUsed ? guesses[mapping.list].mapping : state.kept!.mapping,
              })
            }
          >
            {state.isKeptUsed ? 'Guess afresh' : 'Read it as before'}
          </button>
        </div>
      )}
      <MappingPart
        key={`${mapping.list} ${state.isKeptUsed} ${opened.header.join('|')}`}
        file={file}
        onMapping={(next) => onChange({ ...state, mapping: next })}
      />
    </>
  );
}
