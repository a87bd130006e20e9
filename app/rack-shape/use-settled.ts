'use client';

import { useEffect, useState } from 'react';

/** The value once it has stood still for a moment, so that nothing is reckoned for every key that is pressed. */
export function useSettled<T>(value: T, afterMs: number): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), afterMs);
    return () => clearTimeout(timer);
  }, [value, afterMs]);
  return settled;
}
