import type { Truck } from '../model/truck.ts';

/**
 * How high does the mast stand when the forks are at a height, mm? null when loweredMm or extendedMm is not known.
 *
 * loweredMm while forkHeightMm <= freeLiftMm (not stated: 0), extendedMm once forkHeightMm >= maxLiftMm, between them
 * a straight line: lowered + (extended - lowered) x (h - free) / (max - free).
 */
export function mastTopMm(truck: Truck, forkHeightMm: number): number | null {
  const { loweredMm, extendedMm, maxLiftMm } = truck;
  const freeMm = truck.freeLiftMm ?? 0;
  if (loweredMm === null || extendedMm === null) return null;
  if (forkHeightMm <= freeMm) return loweredMm;
  if (forkHeightMm >= maxLiftMm) return extendedMm;
  return loweredMm + ((extendedMm - loweredMm) * (forkHeightMm - freeMm)) / (maxLiftMm - freeMm);
}
