import type { Metadata, Viewport } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { AccountLink } from '@/app/_parts/account-link.tsx';
import { Navigation } from '@/app/_parts/navigation.tsx';
import { readUnits } from '@/app/_parts/read-units.ts';
import { currentlySignedIn } from '@/app/_parts/require-permission.ts';
import { SiteFooter } from '@/app/_parts/site-footer.tsx';
import { UnitsProvider } from '@/app/_parts/units-context.tsx';
import { UnitsSwitch } from '@/app/_parts/units-switch.tsx';
import './globals.css';
import styles from './layout.module.css';

export const metadata: Metadata = {
  title: { default: 'Tinewise', template: '%s · Tinewise' },
  description: 'Which trucks can reach and lift which rack locations safely, and why.',
};

export const viewport: Viewport = { width: 'device-width', initialScale: 1, themeColor: '#1d2b36' };

export default async function Layout({ children }: { children: ReactNode }) {
  const [units, by] = await Promise.all([readUnits(), currentlySignedIn()]);
  return (
    <html lang="en-GB">
      <body>
        <a href="#main" className={styles.skip}>
          Skip to the content
        </a>
        <header className={styles.head}>
          <div className={styles.headIn}>
            <Link href="/" className={styles.name}>
              <svg viewBox="0 0 32 32" aria-hidden="true">
                <path
                  d="M7 5v21M7 24.5h18"
                  fill="none"
                  stroke="#f4b71a"
                  strokeWidth="3.4"
                  strokeLinecap="square"
                />
                <path d="M12 12.5h13v8H12z" fill="#e9ebea" />
                <path d="M12 20.5h13" stroke="#7d8a92" strokeWidth="2" />
              </svg>
              Tinewise
            </Link>
            {by === null ? null : (
              <>
                <Navigation role={by.person.role} />
                <div className={styles.end}>
                  <AccountLink person={by.person} />
                  <UnitsSwitch units={units} />
                </div>
              </>
            )}
          </div>
        </header>
        <UnitsProvider units={units}>
          <main id="main" className={styles.main} tabIndex={-1}>
            {children}
          </main>
        </UnitsProvider>
        {by === null ? null : <SiteFooter />}
      </body>
    </html>
  );
}
