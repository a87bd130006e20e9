import Link from 'next/link';
import { LOADS_ON_A_PAGE, type LoadsAsk, type LoadsPage, writeLoadsAsk } from '@/app/loads/list-loads.ts';
import { groupDigits } from '@/lib/units/format-quantity.ts';
import styles from './loads.module.css';

/** Which page of how many, and the way to the others. */
export function LoadsPages({ page, ask }: { page: LoadsPage; ask: LoadsAsk }) {
  const first = page.matching === 0 ? 0 : (page.page - 1) * LOADS_ON_A_PAGE + 1;
  const last = Math.min(page.matching, page.page * LOADS_ON_A_PAGE);
  const to = (number: number) => `/loads?${writeLoadsAsk(ask, { page: number })}`;
  return (
    <nav className={styles.pages} aria-label="Pages of loads">
      <span>
        {groupDigits(first)} to {groupDigits(last)} of {groupDigits(page.matching)}
      </span>
      {page.page > 1 ? (
        <Link href={to(page.page - 1)} className="button" prefetch={false}>
          Back
        </Link>
      ) : null}
      {page.page < page.pages ? (
        <Link href={to(page.page + 1)} className="button" prefetch={false}>
          Next {Math.min(LOADS_ON_A_PAGE, page.matching - last)}
        </Link>
      ) : null}
    </nav>
  );
}
