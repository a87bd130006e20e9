import { beyondPlateKg, fieldDeratedKg, momentDeratedKg } from '@/lib/check/estimates/field-derating.ts';
import type { Truck } from '@/lib/model/truck.ts';

/** About what a truck would carry at a load centre that its plate does not cover. Advice; no rule reads it. */
export type BeyondPlate = {
  /** The line of the plate that the estimate starts from, and its place on the plate. */
  from: { at: number; capacityKg: number; loadCentreMm: number; liftHeightMm: number };
  loadCentreMm: number;
  fieldRuleKg: number;
  /** By moments about the front axle; null where that form does not hold (no turning data, or not a counterbalanced truck). */
  momentKg: number | null;
};

/** Null when the plate covers the load centre or does not reach the lift: then there is nothing to estimate from. */
export function estimateBeyondPlate(truck: Truck, liftMm: number, loadCentreMm: number): BeyondPlate | null {
  const fieldRuleKg = beyondPlateKg(truck, liftMm, loadCentreMm);
  if (fieldRuleKg === null) return null;
  const derating = (rating: { capacityKg: number; loadCentreMm: number }) => ({
    capacityKg: rating.capacityKg,
    plateLoadCentreMm: rating.loadCentreMm,
    loadCentreMm,
  });
  const reaching = truck.plate.ratings
    .map((rating, at) => ({ ...rating, at }))
    .filter(
      (rating) =>
        rating.mast === 'vertical' &&
        rating.attachment === truck.fittedAttachment &&
        rating.liftHeightMm >= liftMm,
    );
  if (reaching.some((rating) => rating.loadCentreMm >= loadCentreMm)) return null;
  const from = reaching.find((rating) => fieldDeratedKg(derating(rating)) === fieldRuleKg);
  if (from === undefined) return null;
  const moment =
    truck.kind === 'counterbalance' && truck.turning !== null
      ? momentDeratedKg(derating(from), truck.turning.loadDistanceMm)
      : null;
  return { from, loadCentreMm, fieldRuleKg, momentKg: moment?.kind === 'estimate' ? moment.kg : null };
}
