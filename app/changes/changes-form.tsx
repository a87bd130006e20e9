import Link from 'next/link';
import type { ChangesAsk } from '@/app/changes/changes-query.ts';
import { CHANGE_KINDS, CHANGE_NOUNS } from '@/lib/model/change.ts';
import { KIND_WORDS, nounWords } from '@/lib/words/change.ts';
import styles from './changes.module.css';

/** What narrows the list of changes: a form that asks by its address, with or without scripts. */
export function ChangesForm({ ask, authors }: { ask: ChangesAsk; authors: readonly string[] }) {
  return (
    <form method="get" action="/changes" className={styles.form}>
      <div className={`field ${styles.find}`}>
        <label htmlFor="find">Find</label>
        <input
          id="find"
          name="find"
          type="search"
          defaultValue={ask.find ?? ''}
          placeholder="an id, a name, a value"
        />
      </div>
      <Choice
        name="who"
        label="Who"
        value={ask.who}
        any="anybody"
        options={authors.map((who) => [who, who])}
      />
      <Choice
        name="noun"
        label="Of what"
        value={ask.noun}
        any="anything"
        options={CHANGE_NOUNS.map((noun) => [noun, nounWords(noun)])}
      />
      <div className="field">
        <label htmlFor="subject">Which</label>
        <input
          id="subject"
          name="subject"
          defaultValue={ask.subject ?? ''}
          placeholder="its id"
          autoComplete="off"
        />
      </div>
      <Choice
        name="kind"
        label="How"
        value={ask.kind}
        any="in any way"
        options={CHANGE_KINDS.map((kind) => [kind, KIND_WORDS[kind]])}
      />
      <div className="field">
        <label htmlFor="from">From day (UTC)</label>
        <input id="from" name="from" type="date" defaultValue={ask.from ?? ''} />
      </div>
      <div className="field">
        <label htmlFor="to">To day</label>
        <input id="to" name="to" type="date" defaultValue={ask.to ?? ''} />
      </div>
      <button type="submit" className="button-main">
        Show
      </button>
      {Object.keys(ask).length === 0 ? null : (
        <Link href="/changes" className="button">
          Show all
        </Link>
      )}
    </form>
  );
}

function Choice({
  name,
  label,
  value,
  any,
  options,
}: {
  name: string;
  label: string;
  value: string | undefined;
  any: string;
  options: readonly (readonly [value: string, words: string])[];
}) {
  return (
    <div className="field">
      <label htmlFor={name}>{label}</label>
      <select id={name} name={name} defaultValue={value ?? ''}>
        <option value="">{any}</option>
        {options.map(([option, words]) => (
          <option key={option} value={option}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
