import type { Truck } from '../model/truck.ts';

/**
 * What mass may one fork arm carry at a load centre, kg? null when the arm's marking is not known.
 *
 * armCapacityKg x min(1, armLoadCentreMm / loadCentreMm): a longer load centre lowers it in proportion, a shorter one
 * never raises it. Source: ISO 2330 marking (mass per arm at a load centre).
 */
export function forkArmKg(forks: Truck['forks'], loadCentreMm: number): number | null {
  const { armCapacityKg, armLoadCentreMm } = forks;
  if (armCapacityKg === null || armLoadCentreMm === null) return null;
  return armCapacityKg * Math.min(1, armLoadCentreMm / loadCentreMm);
}
