'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { type MouseEvent, useLayoutEffect, useMemo, useRef } from 'react';
import { VERDICTS } from '@/lib/check/step.ts';
import type { Place } from '@/lib/model/site-index.ts';
import { codeWord } from './look-words.ts';
import styles from './overview.module.css';
import type { OverviewQuery } from './overview-query.ts';
import { type CellSize, paintStrip } from './paint-strip.ts';
import { racksHref } from './racks-href.ts';
import { NO_PLACE, placeUnder, type Strip } from './strip.ts';

const NOTHING_YET = new Uint8Array();

/** One run: its name leads to its elevation, a cell to its place there; its counts stand beside it in words. */
export function RunStrip({
  strip,
  cell,
  places,
  codes,
  query,
}: {
  strip: Strip;
  cell: CellSize | null;
  places: readonly Place[];
  codes: Uint8Array | null;
  query: OverviewQuery;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const router = useRouter();
  const words = useMemo(
    () => (codes === null ? null : countWords(strip, codes, query)),
    [strip, codes, query],
  );

  useLayoutEffect(() => {
    const ctx = canvas.current?.getContext('2d');
    if (!canvas.current || !ctx || cell === null) return;
    const width = strip.columns * cell.widthPx;
    const height = strip.lines * cell.heightPx;
    canvas.current.width = width;
    canvas.current.height = height;
    if (width === 0) return;
    ctx.putImageData(new ImageData(paintStrip(strip, codes ?? NOTHING_YET, cell), width, height), 0, 0);
  }, [strip, codes, cell]);

  const placeAt = ({ clientX, clientY, currentTarget }: MouseEvent) => {
    const { left, top } = currentTarget.getBoundingClientRect();
    const under = cell === null ? null : placeUnder(strip, cell, { x: clientX - left, y: clientY - top });
    return under === null ? null : places[under]!;
  };
  return (
    <div className={styles.run}>
      <p>
        <Link href={racksHref(query, { run: strip.runId })} prefetch={false}>
          {strip.runId}
        </Link>{' '}
        <span className="soft dense">{words ?? ''}</span>
      </p>
      <canvas
        ref={canvas}
        role="img"
        aria-label={`Run ${strip.runId}: ${words ?? 'not judged yet'}`}
        style={
          cell === null
            ? undefined
            : { width: strip.columns * cell.widthPx, height: strip.lines * cell.heightPx }
        }
        onMouseMove={(event) => {
          event.currentTarget.title = placeAt(event)?.id ?? '';
        }}
        onClick={(event) => {
          const place = placeAt(event);
          router.push(racksHref(query, place === null ? { run: strip.runId } : { place }));
        }}
      />
    </div>
  );
}

/** "3 no truck, 12 one truck only": what is not in order, or that all is. */
function countWords(strip: Strip, codes: Uint8Array, { look }: OverviewQuery): string {
  const each = VERDICTS.map(() => 0);
  // a place may fill several cells of a strip: it is counted once
  for (const place of new Set(strip.placeAt)) {
    const code = place === NO_PLACE ? undefined : codes[place];
    if (code !== undefined && code < each.length) each[code]!++;
  }
  const trouble = VERDICTS.slice(1)
    .toReversed()
    .map((verdict) => ({ verdict, count: each[VERDICTS.indexOf(verdict)]! }))
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => `${count} ${codeWord(verdict, look).toLowerCase()}`);
  return trouble.length === 0 ? 'in order' : trouble.join(', ');
}
