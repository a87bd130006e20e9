'use client';

import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { firstPlaces } from '@/app/_parts/first-places.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';
import { cellSize } from './cell-size.ts';
import styles from './overview.module.css';
import type { OverviewQuery } from './overview-query.ts';
import { RunStrip } from './run-strip.tsx';
import { stripOf } from './strip.ts';

const GAP_PX = 24;
const ONE_BELOW_PX = 560;

/** Every run of the site as a strip, aisle by aisle; cells as large as lets two runs stand side by side. */
export function SiteStrips({
  index,
  places,
  codes,
  query,
}: {
  index: SiteIndex;
  places: readonly Place[];
  codes: Uint8Array | null;
  query: OverviewQuery;
}) {
  const box = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState<number | null>(null);
  const strips = useMemo(() => {
    const first = firstPlaces(index);
    return new Map(index.site.runs.map((run) => [run.id, stripOf(run, first.get(run.id)!)]));
  }, [index]);
  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setWidthPx(element.clientWidth));
    setWidthPx(element.clientWidth);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const cell =
    widthPx === null ? null : cellSize([...strips.values()], widthPx, widthPx < ONE_BELOW_PX ? 1 : 2, GAP_PX);
  return (
    <div ref={box} className={styles.strips}>
      {index.site.aisles.map((aisle) => {
        const runs = index.site.runs.filter((run) => run.aisleId === aisle.id);
        return runs.length === 0 ? null : (
          <section key={aisle.id} aria-label={`Aisle ${aisle.id}`}>
            <h2>Aisle {aisle.id}</h2>
            <div className={styles.runs}>
              {runs.map((run) => (
                <RunStrip
                  key={run.id}
                  strip={strips.get(run.id)!}
                  cell={cell}
                  places={places}
                  codes={codes}
                  query={query}
                />
              ))}
            </div>
          </section>
        );
      })}
    </div>
  );
}
