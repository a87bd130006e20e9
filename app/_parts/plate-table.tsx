import { type PlateCell, type PlateGrid, plateGrids } from '@/app/_parts/plate-grid.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { type DisplayUnits, formatLength, formatMass } from '@/lib/units/format-quantity.ts';
import styles from './plate-table.module.css';

/**
 * A capacity plate the way it reads on the truck: heights down, load centres across, one block for each attachment and
 * mast position, what is fitted first. `used` are the plate's lines (their places in its list) that a verdict rests on.
 */
export function PlateTable({
  truck,
  units,
  used = [],
}: {
  truck: Truck;
  units: DisplayUnits;
  used?: readonly number[];
}) {
  const isFitted = (grid: PlateGrid) => grid.attachment === truck.fittedAttachment;
  const all = plateGrids(truck.plate);
  const grids = [...all.filter(isFitted), ...all.filter((grid) => !isFitted(grid))];
  if (grids.length === 0) return <p className={styles.none}>The plate states no capacity.</p>;
  return (
    <div className={styles.blocks}>
      {grids.map((grid) => (
        <div key={`${grid.mast} ${grid.attachment}`} className="scroll-x">
          <table className={styles.plate}>
            <caption>
              {grid.mast === 'vertical' ? 'Mast vertical' : 'Mast tilted forward'}
              {grid.attachment === null ? ', forks' : `, ${grid.attachment}`}
              {grid.attachment === truck.fittedAttachment ? (
                <span className={styles.fitted}>fitted</span>
              ) : (
                <span className={styles.notFitted}>not fitted</span>
              )}
            </caption>
            <thead>
              <tr>
                <th scope="col" rowSpan={2}>
                  Lift height
                </th>
                <th scope="colgroup" colSpan={grid.loadCentresMm.length}>
                  Load centre
                </th>
              </tr>
              <tr>
                {grid.loadCentresMm.map((mm) => (
                  <th key={mm} scope="col">
                    {formatLength(mm, units, 'down')}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {grid.rows.map((row) => (
                <tr key={row.liftHeightMm}>
                  <th scope="row">{formatLength(row.liftHeightMm, units, 'down')}</th>
                  {row.cells.map((cell, at) => (
                    <td
                      key={grid.loadCentresMm[at]}
                      className={cell.some((line) => used.includes(line.at)) ? styles.used : undefined}
                    >
                      <Capacities cell={cell} units={units} />
                      {cell.some((line) => used.includes(line.at)) ? (
                        <span className={styles.usedWord}>used here</span>
                      ) : null}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ))}
    </div>
  );
}

function Capacities({ cell, units }: { cell: PlateCell; units: DisplayUnits }) {
  if (cell.length === 0) return <span className="soft">not stated</span>;
  const shown = cell.map((line) => formatMass(line.capacityKg, units, 'down')).join(' and ');
  const differ = new Set(cell.map((line) => line.capacityKg)).size > 1;
  return differ ? (
    <>
      {shown} <span className={styles.differ}>two lines differ</span>
    </>
  ) : (
    formatMass(cell[0]?.capacityKg ?? 0, units, 'down')
  );
}
