'use client';

import { type RefObject, useEffect, useRef, useState } from 'react';

/** Rows kept ready above and below what is seen. */
const SPARE_ROWS = 8;
const WIDE_ROW_PX = 40;
const NARROW_ROW_PX = 92;
const NARROW = '(max-width: 760px)';

export type WindowedRows = {
  box: RefObject<HTMLElement | null>;
  onScroll: () => void;
  first: number;
  end: number;
  rowPx: number;
};

/** Which rows of a long list must exist? Rows of one height; only those in view and a few more are made. */
export function useWindowedRows(count: number): WindowedRows {
  const box = useRef<HTMLElement>(null);
  const [seen, setSeen] = useState({ top: 0, height: 600 });
  const [rowPx, setRowPx] = useState(WIDE_ROW_PX);
  const onScroll = () => {
    const element = box.current;
    if (element !== null) setSeen({ top: element.scrollTop, height: element.clientHeight });
  };
  useEffect(() => {
    const narrow = window.matchMedia(NARROW);
    const choose = () => setRowPx(narrow.matches ? NARROW_ROW_PX : WIDE_ROW_PX);
    choose();
    narrow.addEventListener('change', choose);
    return () => narrow.removeEventListener('change', choose);
  }, []);
  const first = Math.max(0, Math.min(Math.floor(seen.top / rowPx) - SPARE_ROWS, count));
  const end = Math.min(count, Math.ceil((seen.top + seen.height) / rowPx) + SPARE_ROWS);
  return { box, onScroll, first, end, rowPx };
}
