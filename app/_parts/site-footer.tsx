import Link from 'next/link';
import { STANDING_CAUTIONS } from '@/lib/words/cautions.ts';
import styles from './site-footer.module.css';

/** What stands under every screen: who comes first, and the way to the advice that clears nothing. */
export function SiteFooter() {
  return (
    <footer className={styles.foot}>
      <p>{STANDING_CAUTIONS.join(' ')}</p>
      <p className="no-print">
        Advice, never clearance: <Link href="/hand-pick">picks by hand</Link> ·{' '}
        <Link href="/rack-advice">rack steel</Link> · <Link href="/wear">truck wear</Link>
      </p>
    </footer>
  );
}
