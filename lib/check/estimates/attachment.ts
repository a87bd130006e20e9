/** A truck's rating on forks, and an attachment put on its carriage. */
export type AttachmentEstimate = {
  capacityKg: number;
  /** Load centre of the rating, from the face the load rests against, mm; kept with the attachment. */
  loadCentreMm: number;
  /** Front axle to fork face, mm. */
  axleToForkFaceMm: number;
  attachmentKg: number;
  /** The attachment's centre of gravity ahead of the fork face, mm. */
  attachmentCentreMm: number;
  /** How far the attachment pushes the load out, mm. */
  lostLoadCentreMm: number;
};

/**
 * About what would a truck carry with an attachment, kg? Advice only: the maker must re-rate the plate, and until then
 * plate-capacity is unknown for want of a rating.
 *
 * (Q (x + D) - m (x + c)) / (x + lost + D), never above Q and never below 0; null for a negative x, as for the moment
 * form. Source: moments about the front axle, mast vertical (statics; handbook form from memory).
 */
export function attachmentDeratedKg(on: AttachmentEstimate): number | null {
  const x = on.axleToForkFaceMm;
  if (x < 0) return null;
  const moment = on.capacityKg * (x + on.loadCentreMm) - on.attachmentKg * (x + on.attachmentCentreMm);
  const netKg = moment / (x + on.lostLoadCentreMm + on.loadCentreMm);
  return Math.min(on.capacityKg, Math.max(0, netKg));
}
