import type { PlateRating } from '../model/truck.ts';
import type { LiftCase } from './lift-case.ts';
import { liftFrom, loadCentreFrom, origin, truckFact } from './origins.ts';
import type { PlateAnswer } from './plate-rating.ts';
import type { Origin } from './step.ts';

/** Where a plate answer comes from: the line used, or what was looked for and not found; then the lift and load centre. */
export function plateFrom(lift: LiftCase, mast: PlateRating['mast'], plate: PlateAnswer): Origin[] {
  const { truck } = lift;
  const line = plate.kind === 'proven' ? `ratings[${plate.at}]` : 'ratings';
  const rating = plate.kind === 'proven' ? plate.rating : null;
  const read =
    rating === null
      ? [origin('plate', truck.id, line, null, 'kg')]
      : [
          origin('plate', truck.id, `${line}.capacityKg`, rating.capacityKg, 'kg'),
          origin('plate', truck.id, `${line}.liftHeightMm`, rating.liftHeightMm, 'mm'),
          origin('plate', truck.id, `${line}.loadCentreMm`, rating.loadCentreMm, 'mm'),
        ];
  return [
    ...read,
    origin('plate', truck.id, 'mast', mast, 'state'),
    truckFact(lift, 'fittedAttachment', truck.fittedAttachment ?? 'forks', 'state'),
    ...liftFrom(lift),
    ...loadCentreFrom(lift),
  ];
}
