import { assessedMassKg, type Load, type PalletType } from '../model/load.ts';
import type { Policy } from '../model/policy.ts';
import type { Level, Run } from '../model/racking.ts';
import type { StockRow } from '../model/site.ts';
import { AISLE_SPECS, type AisleSpec } from './aisle-specs.ts';
import type { SeededChoice } from './seeded-choice.ts';

type Filling = {
  runs: readonly Run[];
  loads: readonly Load[];
  palletTypes: readonly PalletType[];
  policy: Policy;
  /** What must stand where: location to load. */
  given: ReadonlyMap<string, string>;
  /** Stocked locations in all. */
  count: number;
};

type Slot = { location: string; fits: readonly Load[]; rank: number };

/** How much likelier a rear location is filled than a front one. */
const REAR_FIRST = 0.25;

/**
 * Fills locations the way a careful shift would: goods where their family belongs, within the height of the opening
 * and the mass that the level's fill figure allows, rear rows first. What is given stays where it is.
 */
export function demoStock(filling: Filling, choose: SeededChoice): StockRow[] {
  const { runs, given, count } = filling;
  const standing = new Map(given);
  const free = AISLE_SPECS.flatMap((spec) => slotsOf(spec, filling, choose));
  free.sort((a, b) => a.rank - b.rank);
  for (const slot of free.slice(0, count - given.size)) standing.set(slot.location, choose.one(slot.fits).id);
  return runs
    .flatMap((run) => run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)))
    .filter((location) => standing.has(location))
    .map((location) => ({ location, load: standing.get(location)! }));
}

/** The locations of an aisle that nothing is given for, each with the loads that belong there. */
function slotsOf(spec: AisleSpec, { runs, given, ...filling }: Filling, choose: SeededChoice): Slot[] {
  const goods = spec.families.flatMap((family) => goodsOf(family, filling));
  const known = new Map<string, Load[]>();
  const fitting = (level: Level, next: Level | undefined): readonly Load[] => {
    const mostHeightMm = clearHeightMm(spec, level, next) - filling.policy.placingClearanceMm;
    const mostKg = level.level === 0 ? spec.floorFillKg : spec.beams[level.level - 1]!.fillKg;
    const key = `${mostHeightMm} ${mostKg}`;
    const fits =
      known.get(key) ??
      goods
        .filter((item) => item.kg <= mostKg && item.load.heightMm <= mostHeightMm)
        .map((item) => item.load);
    known.set(key, fits);
    return fits;
  };
  const bays = runs.filter((run) => run.aisleId === spec.aisle.id).flatMap((run) => run.bays);
  return bays.flatMap((bay) =>
    bay.levels.flatMap((level, i) => {
      const fits = fitting(level, bay.levels[i + 1]);
      return level.locations.flatMap((location, at) => {
        const rear = at >= level.locations.length / level.depthPositions;
        const rank = choose.next() - (rear ? REAR_FIRST : 0);
        return given.has(location) ? [] : [{ location, fits, rank }];
      });
    }),
  );
}

function goodsOf(
  family: string,
  { loads, palletTypes, policy }: Pick<Filling, 'loads' | 'palletTypes' | 'policy'>,
) {
  return loads
    .filter((load) => load.id.startsWith(`${family}-`))
    .map((load) => {
      const pallet = palletTypes.find((type) => type.id === load.palletType) ?? null;
      return { load, kg: assessedMassKg(load, pallet, policy) ?? Number.POSITIVE_INFINITY };
    });
}

function clearHeightMm(spec: AisleSpec, level: Level, next: Level | undefined): number {
  if (next) return next.beamTopMm - next.beamHeightMm - level.beamTopMm;
  const { sprinklerMm, overheadClearMm } = spec.aisle;
  const roofMm = typeof sprinklerMm === 'number' ? sprinklerMm - 914 : overheadClearMm;
  return typeof roofMm === 'number' ? roofMm - level.beamTopMm : 2000;
}
