'use client';

import { mostAt, type RacksAnswer, spareAt } from '@/app/_parts/racks-answer.ts';
import { useUnits } from '@/app/_parts/units-context.tsx';
import type { Elevation } from '@/app/racks/elevation.ts';
import { ElevationCanvas } from '@/app/racks/elevation-canvas.tsx';
import { FigureChoice } from '@/app/racks/figure-choice.tsx';
import { locationWords } from '@/app/racks/location-words.ts';
import type { RacksQuery } from '@/app/racks/racks-query.ts';
import type { Place, SiteIndex } from '@/lib/model/site-index.ts';
import { formatLength, formatMass } from '@/lib/units/format-quantity.ts';

const NOTHING_YET = new Uint8Array();

/** A run's elevation with the answers in its cells, its figures in the shown units, and what the marks mean. */
export function RunDrawing({
  elevation,
  places,
  index,
  answer,
  row,
  figure,
  onFigure,
  cursor,
  onMove,
  onOpen,
  onRow,
}: {
  elevation: Elevation;
  places: readonly Place[];
  index: SiteIndex;
  answer: RacksAnswer | null;
  row: 1 | 2;
  figure: RacksQuery['figure'];
  onFigure: (figure: RacksQuery['figure']) => void;
  cursor: number | null;
  onMove: (cell: number) => void;
  onOpen: (cell: number) => void;
  onRow: (row: 1 | 2) => void;
}) {
  const units = useUnits();
  const figureOf = (cell: number): string | null => {
    if (answer === null) return null;
    const kg = figure === 'most' ? mostAt(answer, cell) : spareAt(answer, cell);
    if (kg === null || (figure === 'most' && kg === 0)) return null;
    const text = formatMass(Math.abs(kg), units, kg < 0 ? 'up' : 'down').replace(/\D+$/, '');
    return kg < 0 ? `−${text}` : text;
  };
  return (
    <ElevationCanvas
      elevation={elevation}
      row={row}
      codes={answer?.summary.best ?? NOTHING_YET}
      cursor={cursor}
      figureOf={figureOf}
      standingAt={(cell) => index.stockAt.get(places[cell]!.id) ?? null}
      heightLabel={(mm) => formatLength(mm, units, 'up')}
      wordsOf={(cell) => locationWords(places[cell]!, answer, cell, units)}
      onMove={onMove}
      onOpen={onOpen}
      onRow={(next, cell) => {
        onRow(next);
        if (cell !== null) onMove(cell);
      }}
      figureChoice={<FigureChoice units={units} figure={figure} onFigure={onFigure} />}
    />
  );
}
