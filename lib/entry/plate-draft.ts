import { MASTS, type PlateRating } from '../model/truck.ts';
import { keptMeasure, type Measure, NO_MEASURE } from './measure.ts';

/** A capacity as it is typed. `at`: its place in the list that the plate was opened with; null for a new one. */
export type PlateCell = Measure & { at: number | null };
export type PlateRow = { liftHeight: Measure; cells: readonly PlateCell[] };

/** One grid of a plate as it is typed: lift heights down, load centres across, for one mast position and attachment. */
export type PlateBlock = {
  /** Tells the blocks of one draft apart. */
  key: number;
  mast: PlateRating['mast'];
  /** null: the forks alone. */
  attachment: string | null;
  loadCentres: readonly Measure[];
  rows: readonly PlateRow[];
};
export type PlateDraft = readonly PlateBlock[];

export const NO_CELL: PlateCell = { ...NO_MEASURE, at: null };

/** A grid with nothing in it yet: a plate commonly states a few heights for two load centres. */
export function blankBlock(
  plate: PlateDraft,
  of: Pick<PlateBlock, 'mast' | 'attachment'>,
  rows = 3,
  columns = 2,
): PlateBlock {
  return {
    ...of,
    key: 1 + Math.max(0, ...plate.map(({ key }) => key)),
    loadCentres: Array.from({ length: columns }, () => NO_MEASURE),
    rows: Array.from({ length: rows }, () => blankRow(columns)),
  };
}

export function blankRow(columns: number): PlateRow {
  return { liftHeight: NO_MEASURE, cells: Array.from({ length: columns }, () => NO_CELL) };
}

/**
 * The lines of a plate as grids, the way it reads: highest lift at the top, shortest load centre at the left. A second
 * line for the same height and load centre gets a row of its own, so that nothing of the plate is out of sight.
 */
export function plateDraftOf(ratings: readonly PlateRating[]): PlateBlock[] {
  const lines = ratings.map((rating, at) => ({ ...rating, at }));
  const attachments = [...new Set(lines.map(({ attachment }) => attachment))];
  let key = 0;
  return attachments.flatMap((attachment) =>
    MASTS.flatMap((mast) => {
      const own = lines.filter((line) => line.mast === mast && line.attachment === attachment);
      if (own.length === 0) return [];
      key += 1;
      const centresMm = [...new Set(own.map((line) => line.loadCentreMm))].sort((a, b) => a - b);
      const rows: { liftHeightMm: number; cells: PlateCell[] }[] = [];
      for (const line of own) {
        const column = centresMm.indexOf(line.loadCentreMm);
        const isFree = (row: (typeof rows)[number]) =>
          row.liftHeightMm === line.liftHeightMm && row.cells[column]!.value === null;
        let row = rows.find(isFree);
        if (row === undefined) {
          row = { liftHeightMm: line.liftHeightMm, cells: centresMm.map(() => NO_CELL) };
          rows.push(row);
        }
        row.cells[column] = { ...keptMeasure(line.capacityKg), at: line.at };
      }
      rows.sort((a, b) => b.liftHeightMm - a.liftHeightMm);
      return {
        key,
        mast,
        attachment,
        loadCentres: centresMm.map(keptMeasure),
        rows: rows.map(({ liftHeightMm, cells }) => ({ liftHeight: keptMeasure(liftHeightMm), cells })),
      };
    }),
  );
}

/** Where in the draft a figure stands; a row or column of -1 is the heading of the other. */
export type PlatePlace = { block: number; row: number; column: number };

export type PlateFault = { place: PlatePlace; fault: 'unread' | 'heading-needed' };

export type PlateReading = {
  /** Every line that is whole. */
  ratings: PlateRating[];
  /** Where each of them stands. */
  places: PlatePlace[];
  faults: PlateFault[];
  /** Headings beside which nothing is stated: they make no line and are not kept. */
  idle: PlatePlace[];
};

/**
 * The lines that the grids state: one for each cell that is not empty. An empty cell states nothing. Lines that the
 * plate was opened with keep their order, new ones follow as they read: from the top, from the left.
 */
export function readPlate(plate: PlateDraft): PlateReading {
  const reading: PlateReading = { ratings: [], places: [], faults: [], idle: [] };
  const lines: { rating: PlateRating; place: PlatePlace; at: number }[] = [];
  const fail = (place: PlatePlace, fault: PlateFault['fault']) => reading.faults.push({ place, fault });
  for (const [block, { mast, attachment, loadCentres, rows }] of plate.entries()) {
    const isUsed = (row: number, column: number) => rows[row]!.cells[column]!.value !== null;
    const across = loadCentres.map((_, column) => rows.some((_row, row) => isUsed(row, column)));
    const down = rows.map((_, row) => loadCentres.some((_centre, column) => isUsed(row, column)));
    const heading = (measure: Measure, isNeeded: boolean, place: PlatePlace) => {
      if (measure.value === 'unread') fail(place, 'unread');
      else if (measure.value === null && isNeeded) fail(place, 'heading-needed');
      else if (measure.value !== null && !isNeeded) reading.idle.push(place);
    };
    for (const [column, centre] of loadCentres.entries())
      heading(centre, across[column]!, { block, row: -1, column });
    for (const [row, { liftHeight, cells }] of rows.entries()) {
      heading(liftHeight, down[row]!, { block, row, column: -1 });
      for (const [column, cell] of cells.entries()) {
        const place = { block, row, column };
        if (cell.value === 'unread') fail(place, 'unread');
        const [liftHeightMm, loadCentreMm] = [liftHeight.value, loadCentres[column]!.value];
        if (typeof cell.value !== 'number') continue;
        if (typeof liftHeightMm !== 'number' || typeof loadCentreMm !== 'number') continue;
        const rating = { mast, attachment, liftHeightMm, loadCentreMm, capacityKg: cell.value };
        lines.push({ rating, place, at: cell.at ?? Number.POSITIVE_INFINITY });
      }
    }
  }
  // by subtraction two infinities would be NaN
  lines.sort((a, b) => (a.at === b.at ? 0 : a.at - b.at));
  reading.ratings = lines.map(({ rating }) => rating);
  reading.places = lines.map(({ place }) => place);
  return reading;
}
