import { counterbalanceAisleMm, straddleAisleMm } from '../../lib/check/stacking-aisle.ts';
import type { GridAnswer } from '../../lib/grid/question.ts';
import { assessedMassKg, entryHeightMm, type Load, loadCentreMm } from '../../lib/model/load.ts';
import { RULE_IDS, type RuleId } from '../../lib/model/rule-ids.ts';
import { palletOf, type SiteIndex } from '../../lib/model/site-index.ts';

/*
 * The fair baseline of the full grid: a plain loop, location by location and truck by truck, that asks every rule of
 * taking one load down and stores verdict, governing rule and mostKg as the grid does. In its best plain form: what
 * depends on the truck and the load alone is worked out once a truck, what depends on the place once a location.
 * It knows the measured site: every fact stated, no attachment, no tilt rating, nobody named, no time given.
 */

type PlainTruck = {
  reachDepth: number;
  maxLiftMm: number;
  aisleMm: number;
  forkMm: number;
  armsKg: number;
  loweredMm: number;
  extendedMm: number;
  freeMm: number;
  ratings: { liftHeightMm: number; loadCentreMm: number; capacityKg: number }[];
};
type PlainPlace = { row: number; liftMm: number; aisleMm: number; overheadMm: number };

const [CLEAR, THIN, UNPROVEN, REFUSE] = [0, 1, 2, 3];
const code = (rule: RuleId) => RULE_IDS.indexOf(rule);
const [DEPTH, HEIGHT, AISLE, PLATE] = [
  code('depth-reach'),
  code('lift-height'),
  code('aisle-turn'),
  code('plate-capacity'),
];
const [FORKS, ARMS, MAST, TOP] = [
  code('fork-length'),
  code('fork-arms'),
  code('mast-overhead'),
  code('load-overhead'),
];

export type TakeDownLoop = {
  load: { kg: number; centreMm: number; supportMm: number; entryMm: number; heightMm: number };
  thinPercent: number;
  marginMm: number;
  trucks: PlainTruck[];
  places: PlainPlace[];
};

/** The site as plain numbers, for one load. */
export function takeDownLoop(index: SiteIndex, load: Load): TakeDownLoop {
  const { policy } = index;
  const pallet = palletOf(index, load);
  const entryMm = entryHeightMm(pallet);
  const sweep = {
    loadDepthMm: load.depthMm,
    loadWidthMm: load.widthMm,
    aisleClearanceMm: policy.aisleClearanceMm,
  };
  const centreMm = loadCentreMm(load);
  return {
    load: {
      kg: assessedMassKg(load, pallet, policy)!,
      centreMm,
      supportMm: policy.forkSupportFraction * load.depthMm,
      entryMm,
      heightMm: load.heightMm,
    },
    thinPercent: policy.thinPercent,
    marginMm: policy.overheadMarginMm,
    trucks: index.site.trucks.map((truck) => ({
      reachDepth: truck.reachDepth,
      maxLiftMm: truck.maxLiftMm,
      aisleMm:
        truck.kind === 'counterbalance'
          ? counterbalanceAisleMm(truck.turning!, sweep)
          : straddleAisleMm(truck.turning!, sweep),
      forkMm: truck.forks.lengthMm!,
      armsKg: truck.forks.armCapacityKg! * Math.min(1, truck.forks.armLoadCentreMm! / centreMm),
      loweredMm: truck.loweredMm!,
      extendedMm: truck.extendedMm!,
      freeMm: truck.freeLiftMm!,
      ratings: truck.plate.ratings,
    })),
    places: Array.from(index.places.values(), ({ row, level, run }) => {
      const aisle = index.aisles.get(run.aisleId)!;
      return {
        row,
        liftMm: level.beamTopMm + entryMm + policy.placingClearanceMm,
        aisleMm: aisle.clearWidthMm,
        overheadMm: aisle.overheadClearMm as number,
      };
    }),
  };
}

type Stored = Pick<GridAnswer, 'verdicts' | 'governing' | 'mostKg'>;

/** Asks every rule of every location and truck, and stores the answers row by row. */
export function answerTakeDownLoop(loop: TakeDownLoop, { verdicts, governing, mostKg }: Stored): void {
  const { load, trucks, places, thinPercent, marginMm } = loop;
  let cell = 0;
  // for each outcome the rule of highest use so far, the first on ties
  let failed = -1;
  let failedUse = -1;
  let otherFailed = false;
  let thin = -1;
  let thinUse = -1;
  let passed = -1;
  let passedUse = -1;
  const ask = (rule: number, need: number, have: number, isMass: boolean): void => {
    const use = have <= 0 ? Number.POSITIVE_INFINITY : need / have;
    if (need > have) {
      if (!isMass) otherFailed = true;
      if (use > failedUse) {
        failed = rule;
        failedUse = use;
      }
    } else if (isMass && need * 100 > have * (100 - thinPercent)) {
      if (use > thinUse) {
        thin = rule;
        thinUse = use;
      }
    } else if (use > passedUse) {
      passed = rule;
      passedUse = use;
    }
  };
  for (const place of places) {
    const topMm = place.liftMm - load.entryMm + load.heightMm + marginMm;
    for (const truck of trucks) {
      failed = thin = passed = -1;
      failedUse = thinUse = passedUse = -1;
      otherFailed = false;
      ask(DEPTH, place.row, truck.reachDepth, false);
      ask(HEIGHT, place.liftMm, truck.maxLiftMm, false);
      ask(AISLE, truck.aisleMm, place.aisleMm, false);
      let capacityKg = -1;
      for (const rating of truck.ratings) {
        if (
          rating.liftHeightMm >= place.liftMm &&
          rating.loadCentreMm >= load.centreMm &&
          rating.capacityKg > capacityKg
        ) {
          capacityKg = rating.capacityKg;
        }
      }
      if (capacityKg >= 0) ask(PLATE, load.kg, capacityKg, true);
      ask(FORKS, load.supportMm, truck.forkMm, false);
      ask(ARMS, load.kg / 2, truck.armsKg, true);
      let mastMm = truck.loweredMm;
      if (place.liftMm >= truck.maxLiftMm && place.liftMm > truck.freeMm) mastMm = truck.extendedMm;
      else if (place.liftMm > truck.freeMm) {
        mastMm +=
          ((truck.extendedMm - truck.loweredMm) * (place.liftMm - truck.freeMm)) /
          (truck.maxLiftMm - truck.freeMm);
      }
      ask(MAST, mastMm + marginMm, place.overheadMm, false);
      ask(TOP, topMm, place.overheadMm, false);
      if (failed >= 0) {
        verdicts[cell] = REFUSE!;
        governing[cell] = failed;
      } else if (capacityKg < 0) {
        verdicts[cell] = UNPROVEN!;
        governing[cell] = PLATE!;
      } else if (thin >= 0) {
        verdicts[cell] = THIN!;
        governing[cell] = thin;
      } else {
        verdicts[cell] = CLEAR!;
        governing[cell] = passed;
      }
      if (otherFailed) mostKg[cell] = 0;
      else if (capacityKg < 0) mostKg[cell] = -1;
      else mostKg[cell] = Math.min(capacityKg, 2 * truck.armsKg);
      cell += 1;
    }
  }
}
