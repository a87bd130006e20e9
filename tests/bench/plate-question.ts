import type { CompiledSite } from '../../lib/grid/compiled-site.ts';
import { EMPTY } from '../../lib/grid/compiled-site.ts';
import type { TakeDownAnswer } from '../../lib/grid/whole-site.ts';
import type { Site } from '../../lib/model/site.ts';

/**
 * The question that every peer can answer: of each stored load, how many trucks does the plate allow to take it down,
 * and with what best margin? On the measured site nothing else decides, so the grid, which asks every rule, must agree.
 */
export type PlateQuestion = {
  /** One entry a stored load. */
  pallets: { liftMm: number; centreMm: number; massKg: number; kind: number }[];
  /** The distinct pairs of lift and load centre. */
  kinds: { liftMm: number; centreMm: number }[];
  trucks: { ratings: { liftHeightMm: number; loadCentreMm: number; capacityKg: number }[] }[];
};

/** Sums that agree only when the answers do: masses are quarters of a kilogram, so they are exact. */
export type Digest = { able: number; stranded: number; marginQuarterKg: number };

export function plateQuestion(site: Site, compiled: CompiledSite): PlateQuestion {
  const { standing, classOf, classes, loads } = compiled;
  const kinds: PlateQuestion['kinds'] = [];
  const rows = new Map<string, number>();
  const pallets: PlateQuestion['pallets'] = [];
  for (let location = 0; location < standing.length; location += 1) {
    const load = standing[location]!;
    if (load === EMPTY) continue;
    const shape = loads.shapes[loads.shapeOf[load]!]!;
    const liftMm = classes[classOf[location]!]!.beamTopMm + shape.entryMm + 150;
    const key = `${liftMm} ${shape.centreMm}`;
    let kind = rows.get(key);
    if (kind === undefined) {
      kind = kinds.push({ liftMm, centreMm: shape.centreMm }) - 1;
      rows.set(key, kind);
    }
    pallets.push({ liftMm, centreMm: shape.centreMm, massKg: loads.assessedKg[load]!, kind });
  }
  return { pallets, kinds, trucks: site.trucks.map(({ plate }) => ({ ratings: plate.ratings })) };
}

export function digestOf({ able, marginKg, verdict }: TakeDownAnswer): Digest {
  const digest: Digest = { able: 0, stranded: 0, marginQuarterKg: 0 };
  for (let location = 0; location < able.length; location += 1) {
    if (verdict[location] === 255) continue;
    digest.able += able[location]!;
    if (able[location] === 0) digest.stranded += 1;
    else digest.marginQuarterKg += 4 * marginKg[location]!;
  }
  return digest;
}

/** The plainest way: objects in loops, every plate read anew for every pallet. */
export function answerByPlainObjects({ pallets, trucks }: PlateQuestion): Digest {
  const digest: Digest = { able: 0, stranded: 0, marginQuarterKg: 0 };
  for (const { liftMm, centreMm, massKg } of pallets) {
    let able = 0;
    let bestKg = 0;
    for (const { ratings } of trucks) {
      let capacityKg = 0;
      for (const rating of ratings) {
        if (
          rating.liftHeightMm >= liftMm &&
          rating.loadCentreMm >= centreMm &&
          rating.capacityKg > capacityKg
        ) {
          capacityKg = rating.capacityKg;
        }
      }
      if (massKg > capacityKg) continue;
      able += 1;
      if (capacityKg > bestKg) bestKg = capacityKg;
    }
    digest.able += able;
    if (able === 0) digest.stranded += 1;
    else digest.marginQuarterKg += 4 * (bestKg - massKg);
  }
  return digest;
}

/** A plain loop in its best form: each truck's capacity found once per lift and load centre, then every pair compared. */
export function answerByPlainLoop({ pallets, kinds, trucks }: PlateQuestion): Digest {
  const capacities = kinds.map(({ liftMm, centreMm }) =>
    Float64Array.from(trucks, ({ ratings }) =>
      Math.max(
        0,
        ...ratings
          .filter((rating) => rating.liftHeightMm >= liftMm && rating.loadCentreMm >= centreMm)
          .map(({ capacityKg }) => capacityKg),
      ),
    ),
  );
  const digest: Digest = { able: 0, stranded: 0, marginQuarterKg: 0 };
  for (const { kind, massKg } of pallets) {
    const ofKind = capacities[kind]!;
    let able = 0;
    let bestKg = 0;
    for (let truck = 0; truck < ofKind.length; truck += 1) {
      const capacityKg = ofKind[truck]!;
      if (capacityKg >= massKg) able += 1;
      if (capacityKg > bestKg) bestKg = capacityKg;
    }
    digest.able += able;
    if (able === 0) digest.stranded += 1;
    else digest.marginQuarterKg += 4 * (bestKg - massKg);
  }
  return digest;
}
