'use client';

import { useId, useState } from 'react';
import { useFocusFirst } from '@/app/_entry/use-focus-first.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { fieldsToMerge, mergeFacts, type Side, valueAt } from '@/lib/entry/merge-facts.ts';
import type { Conflict } from '@/lib/model/change.ts';
import { differences } from '@/lib/model/differences.ts';
import { nounWords } from '@/lib/words/change.ts';
import { differenceField, differenceSentence } from '@/lib/words/difference.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './entry.module.css';

const SHOWN = 8;

/**
 * Somebody else was faster: what they changed and what you changed, field by field, each to be decided; or start again
 * from theirs. Nothing is stored here: the form then holds what was decided, to be looked at and saved.
 */
export function ConflictPart<Fact extends object>({
  conflict,
  fields,
  base,
  mine,
  fixed = [],
  onMerged,
  onStartAgain,
  onAddAgain,
}: {
  conflict: Conflict;
  fields: readonly string[];
  /** As it was when the form was opened. */
  base: Fact;
  mine: Fact;
  /** Fields that are not a form's to decide: theirs stand. */
  fixed?: readonly string[];
  onMerged: (fact: Fact, revision: number) => void;
  onStartAgain: () => void;
  onAddAgain: () => void;
}) {
  const units = useUnits();
  const id = useId();
  const part = useFocusFirst<HTMLElement>();
  const [chosen, setChosen] = useState<ReadonlyMap<string, Side>>(new Map());
  const who = `${conflict.by}, ${instantWords(conflict.at)}`;
  if (conflict.theirs === null)
    return (
      <section
        className={`sheet stack ${styles.conflict}`}
        role="alert"
        ref={part}
        tabIndex={-1}
        aria-labelledby={`${id}-h`}
      >
        <h2 id={`${id}-h`}>
          This {nounWords(conflict.noun)} has been taken away: {who}
        </h2>
        <p>Nothing was stored. What you typed still stands below.</p>
        <div className="row">
          <button type="button" className="button-main" onClick={onAddAgain}>
            Add it again, as it stands in this form
          </button>
        </div>
      </section>
    );
  const theirs = conflict.theirs as Fact;
  const asked = fieldsToMerge(fields, { base, mine, theirs });
  const side = (path: string, by: 'both' | Side): Side | null =>
    fixed.includes(path) ? 'theirs' : (chosen.get(path) ?? (by === 'both' ? null : by));
  const open = asked.filter(({ path, changedBy }) => side(path, changedBy) === null).length;
  const merge = () => {
    const decided = asked.map(({ path, changedBy }) => [path, side(path, changedBy)!] as const);
    onMerged(mergeFacts({ mine, theirs }, new Map(decided)), conflict.revision);
  };
  const told = (path: string, fact: Fact) => {
    const [was, is] = [wrapped(path, base), wrapped(path, fact)];
    const found = differences(was, is);
    if (found.length === 0) return ['as it was'];
    const said = found.slice(0, SHOWN).map((difference) => differenceSentence(difference, units));
    return found.length > SHOWN ? [...said, `and ${found.length - SHOWN} more`] : said;
  };
  return (
    <section
      className={`sheet stack ${styles.conflict}`}
      role="alert"
      ref={part}
      tabIndex={-1}
      aria-labelledby={`${id}-h`}
    >
      <h2 id={`${id}-h`}>
        Somebody else has changed this {nounWords(conflict.noun)} since you opened it: {who}
      </h2>
      <p>
        Nothing was stored. Decide field by field; what only one of you changed is decided already, and can be
        turned.
      </p>
      {asked.map(({ path, changedBy }) => (
        <fieldset key={path} className={styles.decision}>
          <legend>{differenceField({ path: path.split('.') })}</legend>
          {(['theirs', 'mine'] as const).map((option) => (
            <label key={option} className={styles.option}>
              <input
                type="radio"
                name={`${id}-${path}`}
                checked={side(path, changedBy) === option}
                disabled={fixed.includes(path) && option === 'mine'}
                onChange={() => setChosen(new Map(chosen).set(path, option))}
              />
              <span>
                {option === 'theirs' ? 'Theirs: ' : 'Yours: '}
                <span className={styles.told}>
                  {told(path, option === 'theirs' ? theirs : mine).join('; ')}
                </span>
              </span>
            </label>
          ))}
        </fieldset>
      ))}
      {asked.length === 0 ? <p>You both made the same of it.</p> : null}
      <div className="row">
        <button type="button" className="button-main" disabled={open > 0} onClick={merge}>
          Put these into the form
        </button>
        <button type="button" onClick={onStartAgain}>
          Start again from theirs
        </button>
        {open > 0 ? <span className="soft">{open} still to be decided</span> : null}
      </div>
    </section>
  );
}

/** The one field of a fact, named as it is within it, so that its unit is known. */
function wrapped(path: string, fact: object): unknown {
  return { [path.split('.').at(-1)!]: valueAt(fact, path) };
}
