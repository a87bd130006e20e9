import { MASTS, type Plate, type PlateRating } from '@/lib/model/truck.ts';

/** One block of a capacity plate: the ratings of one mast position and attachment, as rows of height by load centre. */
export type PlateGrid = {
  mast: PlateRating['mast'];
  attachment: string | null;
  /** Left to right, shortest first. */
  loadCentresMm: readonly number[];
  /** Top to bottom, highest first, as the mast stands. */
  rows: readonly { liftHeightMm: number; cells: readonly PlateCell[] }[];
};

/** The capacities stated for one height and load centre: none, one, or several where the plate contradicts itself. */
export type PlateCell = readonly { capacityKg: number; at: number }[];

/** The plate as it reads: attachments in the order of the plate, vertical mast before forward tilt. */
export function plateGrids(plate: Plate): PlateGrid[] {
  const lines = plate.ratings.map((rating, at) => ({ ...rating, at }));
  const attachments = [...new Set(lines.map((line) => line.attachment))];
  return attachments.flatMap((attachment) =>
    MASTS.flatMap((mast) => {
      const block = lines.filter((line) => line.mast === mast && line.attachment === attachment);
      if (block.length === 0) return [];
      const loadCentresMm = distinct(block.map((line) => line.loadCentreMm));
      const rows = distinct(block.map((line) => line.liftHeightMm))
        .toReversed()
        .map((liftHeightMm) => ({
          liftHeightMm,
          cells: loadCentresMm.map((loadCentreMm) =>
            block
              .filter((line) => line.liftHeightMm === liftHeightMm && line.loadCentreMm === loadCentreMm)
              .map(({ capacityKg, at }) => ({ capacityKg, at })),
          ),
        }));
      return [{ mast, attachment, loadCentresMm, rows }];
    }),
  );
}

function distinct(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}
