import { assessedMassKg, type Load, type PalletType } from '../model/load.ts';
import type { Policy } from '../model/policy.ts';
import type { Level, Run } from '../model/racking.ts';
import type { StockRow } from '../model/site.ts';
import { AISLE_SPECS, type AisleSpec } from './aisle-specs.ts';
import type { SeededChoice } from './seeded-choice.ts';

type Slot = { location: string; fits: readonly Load[]; rank: number };

/**
 * Fills `count` locations the way a careful shift would: goods where their family belongs, within the height of the
 * opening and the mass that the level's fill figure allows, rear rows first. What `given` puts somewhere stays there.
 */
export function demoStock(
  runs: readonly Run[],
  loads: readonly Load[],
  pallets: readonly PalletType[],
  policy: Policy,
  given: ReadonlyMap<string, string>,
  count: number,
  choose: SeededChoice,
): StockRow[] {
  const assessedKg = assessedMasses(loads, pallets, policy);
  const standing = new Map(given);
  const slots: Slot[] = [];
  for (const spec of AISLE_SPECS) {
    const goods = spec.families.flatMap((family) => loads.filter((load) => load.id.startsWith(`${family}-`)));
    const fitting = (level: Level, next: Level | undefined) => {
      const mostHeightMm = clearHeightMm(spec, level, next) - policy.placingClearanceMm;
      const mostKg = level.level === 0 ? spec.floorFillKg : spec.beams[level.level - 1]!.fillKg;
      return goods.filter(
        (load) => load.heightMm <= mostHeightMm && (assessedKg.get(load.id) ?? Infinity) <= mostKg,
      );
    };
    const sideL = runs.find((run) => run.aisleId === spec.aisle.id)!.bays[0]!.levels;
    const fitsByLevel = sideL.map((level, i) => fitting(level, sideL[i + 1]));
    for (const bay of runs.filter((run) => run.aisleId === spec.aisle.id).flatMap((run) => run.bays)) {
      for (const [i, level] of bay.levels.entries()) {
        for (const [at, location] of level.locations.entries()) {
          const rear = at >= level.locations.length / level.depthPositions;
          if (given.has(location)) continue;
          slots.push({ location, fits: fitsByLevel[i]!, rank: choose.next() - (rear ? 0.25 : 0) });
        }
      }
    }
  }
  const chosen = [...slots].sort((a, b) => a.rank - b.rank).slice(0, count - given.size);
  for (const slot of chosen) standing.set(slot.location, choose.one(slot.fits).id);
  return runs
    .flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)))
    .filter((location) => standing.has(location))
    .map((location) => ({ location, load: standing.get(location)! }));
}

function clearHeightMm(spec: AisleSpec, level: Level, next: Level | undefined): number {
  if (next) return next.beamTopMm - next.beamHeightMm - level.beamTopMm;
  const { sprinklerMm, overheadClearMm } = spec.aisle;
  const roofMm = typeof sprinklerMm === 'number' ? sprinklerMm - 914 : overheadClearMm;
  return typeof roofMm === 'number' ? roofMm - level.beamTopMm : 2000;
}

function assessedMasses(loads: readonly Load[], pallets: readonly PalletType[], policy: Policy) {
  return new Map(
    loads.map((load) => {
      const pallet = pallets.find((type) => type.id === load.palletType) ?? null;
      return [load.id, assessedMassKg(load, pallet, policy)];
    }),
  );
}
