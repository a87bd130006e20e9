import Link from 'next/link';
import { BASIS_WORDS } from '@/app/_parts/mass-arithmetic.tsx';
import type { LoadsAsk } from '@/app/loads/list-loads.ts';
import { MASS_BASES } from '@/lib/model/policy.ts';
import styles from './loads.module.css';

/** What narrows the list of loads: a form that asks by its address, with or without scripts. */
export function LoadsForm({ ask }: { ask: LoadsAsk }) {
  return (
    <form method="get" action="/loads" className={styles.form}>
      <div className={`field ${styles.find}`}>
        <label htmlFor="find">Find a load</label>
        <input
          id="find"
          name="find"
          type="search"
          defaultValue={ask.find ?? ''}
          placeholder="id, name, group or item"
        />
      </div>
      <div className="field">
        <label htmlFor="basis">Mass</label>
        <select id="basis" name="basis" defaultValue={ask.basis ?? ''}>
          <option value="">any basis</option>
          {MASS_BASES.map((basis) => (
            <option key={basis} value={basis}>
              {BASIS_WORDS[basis]}
            </option>
          ))}
          <option value="unknown">not known</option>
        </select>
      </div>
      <div className="field">
        <label htmlFor="standing">Stands</label>
        <select id="standing" name="standing" defaultValue={ask.standing ?? ''}>
          <option value="">anywhere or nowhere</option>
          <option value="somewhere">in a location</option>
          <option value="nowhere">nowhere</option>
        </select>
      </div>
      {ask.sort === 'id' ? null : <input type="hidden" name="sort" value={ask.sort} />}
      {ask.direction === 'up' ? null : <input type="hidden" name="direction" value={ask.direction} />}
      <button type="submit" className="button-main">
        Show
      </button>
      {ask.find === null && ask.basis === null && ask.standing === null ? null : (
        <Link href="/loads" className="button">
          Show all
        </Link>
      )}
    </form>
  );
}
