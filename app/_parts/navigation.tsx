'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import type { ReactElement } from 'react';
import styles from './navigation.module.css';

type Screen = { href: string; label: string; sign: ReactElement };

/** One line drawings on a 24 grid, of things that stand in the building. */
const SCREENS: readonly Screen[] = [
  { href: '/', label: 'Overview', sign: <path d="M3 5h18M3 11h18M3 17h18M6 5v14M18 5v14" /> },
  {
    href: '/racks',
    label: 'Racks',
    sign: <path d="M4 3v18M20 3v18M4 8h16M4 15h16M8 8V5h5v3M11 15v-4h6v4" />,
  },
  { href: '/which-truck', label: 'Which truck', sign: <path d="M6 3v15h13M6 13h9v-5H9M19 18v3" /> },
  { href: '/trucks', label: 'Trucks', sign: <path d="M4 4v14M4 18h3M7 9h7l3 5v4H7zM9 21h1M15 21h1" /> },
  {
    href: '/loads',
    label: 'Loads',
    sign: <path d="M4 16h16M6 19v-3M12 19v-3M18 19v-3M6 16V6h12v10M6 11h12" />,
  },
  { href: '/site', label: 'Site', sign: <path d="M3 20V9l9-5 9 5v11M7 20v-8h10v8M7 16h10" /> },
];

/** The way between the screens: a row under the name on a wide screen, a bar under the thumb on a phone. */
export function Navigation() {
  const path = usePathname();
  return (
    <nav className={styles.bar} aria-label="Screens">
      {SCREENS.map(({ href, label, sign }) => {
        const here = href === '/' ? path === '/' : path === href || path.startsWith(`${href}/`);
        return (
          <Link key={href} href={href} className={styles.item} aria-current={here ? 'page' : undefined}>
            <svg viewBox="0 0 24 24" aria-hidden="true" className={styles.sign}>
              {sign}
            </svg>
            <span>{label}</span>
          </Link>
        );
      })}
    </nav>
  );
}
