'use client';

import { useEffect, useRef } from 'react';

/** For a part that appears far from the button that was pressed: it is looked at and read out at once. */
export function useFocusFirst<Part extends HTMLElement>() {
  const part = useRef<Part>(null);
  useEffect(() => {
    part.current?.focus({ preventScroll: true });
    part.current?.scrollIntoView({ block: 'start' });
  }, []);
  return part;
}
