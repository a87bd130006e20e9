'use client';

import Link from 'next/link';
import { useEffect, useRef, useState } from 'react';
import { isHere, type Screen } from '@/app/_parts/screens.tsx';
import styles from './navigation.module.css';

/** The screens that have no room in the bar. Closes by Escape, by a choice, and when one goes elsewhere. */
export function MoreScreens({ screens, path }: { screens: readonly Screen[]; path: string }) {
  const [isOpen, setOpen] = useState(false);
  const part = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!isOpen) return;
    const outside = ({ target }: Event) => {
      if (target instanceof Node && !part.current?.contains(target)) setOpen(false);
    };
    document.addEventListener('pointerdown', outside);
    document.addEventListener('focusin', outside);
    return () => {
      document.removeEventListener('pointerdown', outside);
      document.removeEventListener('focusin', outside);
    };
  }, [isOpen]);
  const here = screens.find((screen) => isHere(screen, path));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape works wherever the focus is within
    <div
      ref={part}
      className={styles.more}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !isOpen) return;
        setOpen(false);
        button.current?.focus();
      }}
    >
      <button
        ref={button}
        type="button"
        className={styles.item}
        aria-expanded={isOpen}
        aria-controls="more-screens"
        data-here={here?.bar}
        onClick={() => setOpen(!isOpen)}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true" className={styles.sign}>
          <path d="M5 6h14M5 12h14M5 18h14" />
        </svg>
        <span>More</span>
      </button>
      <ul id="more-screens" className={styles.list} hidden={!isOpen}>
        {screens.map((screen) => (
          <li key={screen.href} className={styles[`more-${screen.bar}`]}>
            <Link
              href={screen.href}
              aria-current={isHere(screen, path) ? 'page' : undefined}
              onClick={() => setOpen(false)}
            >
              {screen.label}
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}
