import { MASTS, type PlateRating, type Truck } from '../model/truck.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';

const MARKING = { of: 'standard', name: 'ISO 3691-1, marking of capacities (from memory)' } as const;

/**
 * What is wrong with the capacity plates as they were entered?
 *
 * - `plate-lacks-attachment`: no vertical-mast line for what is fitted, so nothing is proven: a truck is marked for its
 *   attachments (OSHA 1910.178(a)(5)); `stop`;
 * - `plate-stops-below-mast`: the lines for what is fitted end below maxLiftMm; `plan`;
 * - `plate-rises`: a line proves more at a greater lift and no shorter load centre, or at a longer load centre and no
 *   lower lift, than another; `plate-contradicts`: two lines for the same point differ. No truck lifts more higher up
 *   or further out, and the look-up takes the larger mass: one of the two was read wrongly; `stop`.
 */
export function plateGaps({ index }: Pick<AuditCase, 'index'>): Finding[] {
  return index.site.trucks.flatMap((truck) => [
    ...lacksAttachment(truck),
    ...stopsBelowMast(truck),
    ...atOdds(truck),
  ]);
}

function linesOf(truck: Truck, mast: PlateRating['mast'], attachment: string | null): PlateRating[] {
  return truck.plate.ratings.filter((line) => line.mast === mast && line.attachment === attachment);
}

function lacksAttachment(truck: Truck): Finding[] {
  if (linesOf(truck, 'vertical', truck.fittedAttachment).length > 0) return [];
  return [
    makeFinding({
      kind: 'plate-lacks-attachment',
      severity: 'stop',
      subject: {
        of: 'plate',
        truck: truck.id,
        mast: 'vertical',
        attachment: truck.fittedAttachment,
        lines: null,
      },
      figures: figuresOf(null, null, 'kg'),
      source: ruleSource('plate-capacity', 'no-rating'),
      advice: 'have-the-plate-re-rated',
      truck: truck.id,
    }),
  ];
}

function stopsBelowMast(truck: Truck): Finding[] {
  return MASTS.flatMap((mast) => {
    const lines = linesOf(truck, mast, truck.fittedAttachment);
    const highestMm = Math.max(...lines.map(({ liftHeightMm }) => liftHeightMm));
    if (lines.length === 0 || highestMm >= truck.maxLiftMm) return [];
    return makeFinding({
      kind: 'plate-stops-below-mast',
      severity: 'plan',
      subject: { of: 'plate', truck: truck.id, mast, attachment: truck.fittedAttachment, lines: null },
      figures: figuresOf(truck.maxLiftMm, highestMm, 'mm'),
      source: ruleSource(mast === 'vertical' ? 'plate-capacity' : 'tilt-capacity', 'height-beyond-plate'),
      advice: 'have-the-plate-re-rated',
      truck: truck.id,
    });
  });
}

/** Every pair of lines of one mast and attachment that cannot both be true, each pair once. */
function atOdds(truck: Truck): Finding[] {
  const { ratings } = truck.plate;
  const findings = new Map<string, Finding>();
  for (const lower of ratings) {
    for (const higher of ratings) {
      if (lower.mast !== higher.mast || lower.attachment !== higher.attachment) continue;
      if (higher.liftHeightMm < lower.liftHeightMm || higher.loadCentreMm < lower.loadCentreMm) continue;
      if (higher.capacityKg <= lower.capacityKg) continue;
      const samePoint =
        higher.liftHeightMm === lower.liftHeightMm && higher.loadCentreMm === lower.loadCentreMm;
      const finding = makeFinding({
        kind: samePoint ? 'plate-contradicts' : 'plate-rises',
        severity: 'stop',
        subject: {
          of: 'plate',
          truck: truck.id,
          mast: lower.mast,
          attachment: lower.attachment,
          lines: { lower: lineOf(lower), higher: lineOf(higher) },
        },
        figures: figuresOf(higher.capacityKg, lower.capacityKg, 'kg'),
        source: MARKING,
        advice: 'read-the-plate-again',
        truck: truck.id,
      });
      findings.set(finding.id, finding);
    }
  }
  return [...findings.values()];
}

function lineOf({ liftHeightMm, loadCentreMm, capacityKg }: PlateRating) {
  return { liftHeightMm, loadCentreMm, capacityKg };
}
