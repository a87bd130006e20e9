'use client';

import { type ClipboardEvent, type KeyboardEvent, useEffect, useId, useRef } from 'react';
import type { FaultOf } from '@/app/_entry/fields.tsx';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { nextPlace } from '@/app/trucks/_entry/next-place.ts';
import {
  type Measure,
  type MeasureKind,
  measureText,
  measureUnit,
  NO_MEASURE,
  typedMeasure,
} from '@/lib/entry/measure.ts';
import { cellsOfText, pasteBlock } from '@/lib/entry/paste-block.ts';
import { blankRow, NO_CELL, type PlateBlock } from '@/lib/entry/plate-draft.ts';
import { plateField } from '@/lib/entry/truck-draft.ts';
import styles from './plate-editor.module.css';

type Place = { row: number; column: number };

/**
 * One grid of a plate to be typed: lift heights down, load centres across. Arrow keys and Enter move between the cells,
 * Enter in the last row adds one; a block from a spreadsheet is pasted where the cursor stands.
 */
export function PlateGridEditor({
  block,
  at,
  name,
  fault,
  onChange,
  onTakeOut,
}: {
  block: PlateBlock;
  /** Its place among the grids, by which its fields are called. */
  at: number;
  name: string;
  fault: FaultOf;
  onChange: (block: PlateBlock) => void;
  onTakeOut: () => void;
}) {
  const units = useUnits();
  const id = useId();
  const table = useRef<HTMLTableElement>(null);
  const wanted = useRef<Place | null>(null);
  const columns = block.loadCentres.length;

  useEffect(() => {
    if (wanted.current === null) return;
    focusOn(wanted.current);
    wanted.current = null;
  });

  function focusOn({ row, column }: Place): void {
    const input = table.current?.querySelector<HTMLInputElement>(`[data-place="${row}.${column}"]`);
    input?.focus();
    input?.select();
  }

  const addRow = () => {
    wanted.current = { row: block.rows.length, column: -1 };
    onChange({ ...block, rows: [...block.rows, blankRow(columns)] });
  };
  const addColumn = () => {
    wanted.current = { row: -1, column: columns };
    onChange({
      ...block,
      loadCentres: [...block.loadCentres, NO_MEASURE],
      rows: block.rows.map((row) => ({ ...row, cells: [...row.cells, NO_CELL] })),
    });
  };
  const dropRow = (row: number) => onChange({ ...block, rows: block.rows.toSpliced(row, 1) });
  const dropColumn = (column: number) =>
    onChange({
      ...block,
      loadCentres: block.loadCentres.toSpliced(column, 1),
      rows: block.rows.map((row) => ({ ...row, cells: row.cells.toSpliced(column, 1) })),
    });

  const write = ({ row, column }: Place, measure: Measure) => {
    if (row < 0) return onChange({ ...block, loadCentres: block.loadCentres.with(column, measure) });
    const line = block.rows[row]!;
    const changed =
      column < 0
        ? { ...line, liftHeight: measure }
        : { ...line, cells: line.cells.with(column, { ...measure, at: line.cells[column]!.at }) };
    onChange({ ...block, rows: block.rows.with(row, changed) });
  };

  const onKeyDown = (place: Place) => (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { selectionStart, selectionEnd, value } = event.currentTarget;
    const next = nextPlace(
      event.key,
      event.shiftKey,
      place,
      { rows: block.rows.length, columns },
      {
        isAtStart: selectionEnd === 0 || (selectionStart === 0 && selectionEnd === value.length),
        isAtEnd: selectionStart === value.length || (selectionStart === 0 && selectionEnd === value.length),
      },
    );
    if (next === null) return;
    event.preventDefault();
    if (next === 'new-row') addRow();
    else focusOn(next);
  };

  const onPaste = (place: Place) => (event: ClipboardEvent) => {
    const cells = cellsOfText(event.clipboardData.getData('text/plain'));
    if (cells === null) return;
    event.preventDefault();
    onChange(pasteBlock(block, cells, place, units));
  };

  const cell = (place: Place, measure: Measure, of: MeasureKind, label: string) => {
    const field = plateField({ block: at, ...place });
    const wrong = fault(field);
    return (
      <input
        data-place={`${place.row}.${place.column}`}
        data-field={field}
        aria-label={label}
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-${field}`}
        inputMode="decimal"
        autoComplete="off"
        value={measureText(measure, of, units)}
        onChange={(event) => write(place, typedMeasure(measure, event.target.value, of, units))}
        onKeyDown={onKeyDown(place)}
        onPaste={onPaste(place)}
      />
    );
  };

  const heightOf = (row: number) => headingWords(block.rows[row]!.liftHeight, 'row', row, units);
  const centreOf = (column: number) => headingWords(block.loadCentres[column]!, 'column', column, units);
  const places = [
    ...block.loadCentres.map((_, column) => ({ row: -1, column })),
    ...block.rows.flatMap((row, at) => [-1, ...row.cells.keys()].map((column) => ({ row: at, column }))),
  ];
  const faults = places.flatMap((place) => {
    const field = plateField({ block: at, ...place });
    const wrong = fault(field);
    return wrong === null ? [] : [{ field, place, wrong }];
  });

  return (
    <div className="stack">
      <div className="scroll-x">
        <table className={styles.grid} ref={table} aria-label={name}>
          <thead>
            <tr>
              <th scope="col">Lift height, {measureUnit('length', units)}</th>
              {block.loadCentres.map((centre, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                <th key={column} scope="col">
                  <span className={styles.head}>Load centre, {measureUnit('length', units)}</span>
                  {cell({ row: -1, column }, centre, 'length', `Load centre, column ${column + 1}`)}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {block.rows.map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
              <tr key={at}>
                <th scope="row">
                  {cell({ row: at, column: -1 }, row.liftHeight, 'length', `Lift height, row ${at + 1}`)}
                </th>
                {row.cells.map((capacity, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  <td key={column}>
                    {cell(
                      { row: at, column },
                      capacity,
                      'mass',
                      `Capacity at ${heightOf(at)}, ${centreOf(column)}`,
                    )}
                  </td>
                ))}
                <td>
                  {block.rows.length > 1 ? (
                    <button type="button" className={styles.drop} onClick={() => dropRow(at)}>
                      <span aria-hidden="true">×</span>
                      <span className="unseen">Take row {at + 1} out</span>
                    </button>
                  ) : null}
                </td>
              </tr>
            ))}
          </tbody>
          {columns > 1 ? (
            <tfoot>
              <tr>
                <td />
                {block.loadCentres.map((_, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  <td key={column}>
                    <button type="button" className={styles.drop} onClick={() => dropColumn(column)}>
                      <span aria-hidden="true">×</span>
                      <span className="unseen">Take column {column + 1} out</span>
                    </button>
                  </td>
                ))}
                <td />
              </tr>
            </tfoot>
          ) : null}
        </table>
      </div>
      {faults.length === 0 ? null : (
        <ul className={styles.faults}>
          {faults.map(({ field, place, wrong }) => (
            <li key={field} id={`${id}-${field}`} className="fault">
              {placeWords(place)}: {wrong}
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <button type="button" onClick={addRow}>
          Add a lift height
        </button>
        <button type="button" onClick={addColumn}>
          Add a load centre
        </button>
        <button type="button" onClick={onTakeOut}>
          Take this grid out
        </button>
      </div>
    </div>
  );
}

function headingWords(
  measure: Measure,
  what: 'row' | 'column',
  at: number,
  units: 'metric' | 'lb-in',
): string {
  const text = measureText(measure, 'length', units);
  if (text === '') return `${what} ${at + 1}`;
  return what === 'row' ? `lift height ${text}` : `load centre ${text}`;
}

function placeWords({ row, column }: Place): string {
  if (row < 0) return `Load centre of column ${column + 1}`;
  return column < 0 ? `Lift height of row ${row + 1}` : `Row ${row + 1}, column ${column + 1}`;
}
