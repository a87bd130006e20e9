'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { MoreScreens } from '@/app/_parts/more-screens.tsx';
import { isHere, screensFor } from '@/app/_parts/screens.tsx';
import type { Role } from '@/lib/model/permissions.ts';
import styles from './navigation.module.css';

/**
 * The way between the screens: a row under the name on a wide screen, a bar under the thumb on a phone. What has no
 * room there stands below "More".
 */
export function Navigation({ role }: { role: Role }) {
  const path = usePathname();
  const screens = screensFor(role);
  return (
    <nav className={styles.bar} aria-label="Screens">
      {screens
        .filter(({ bar }) => bar !== 'never')
        .map((screen) => (
          <Link
            key={screen.href}
            href={screen.href}
            className={`${styles.item} ${styles[screen.bar]}`}
            aria-current={isHere(screen, path) ? 'page' : undefined}
          >
            <svg viewBox="0 0 24 24" aria-hidden="true" className={styles.sign}>
              {screen.sign}
            </svg>
            <span>{screen.label}</span>
          </Link>
        ))}
      <MoreScreens key={path} screens={screens.filter(({ bar }) => bar !== 'always')} path={path} />
    </nav>
  );
}
