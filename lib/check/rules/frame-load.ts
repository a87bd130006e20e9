import { type FrameLoad, frameLoad } from '../../rack/frame-load.ts';
import { roomKg } from '../../rack/stand.ts';
import type { LiftCase } from '../lift-case.ts';
import { assessedFrom, origin, standingFrom } from '../origins.ts';
import { compareMass, notApplicable, type RuleAnswer } from '../rule-answer.ts';
import type { Outcome } from '../step.ts';
import { stepUse } from '../step-use.ts';

/**
 * Do both upright frames of the bay carry their half of what stands to the left and right of them?
 *
 * For each frame: (what stands on the beam levels of its two bays + assessedKg) / 2 <= its type's rating with the
 * smallest maxGapMm >= the largest gap of those bays; equality passes. Fails if either fails, else unknown if either
 * is; need and have are those of the frame that decided: the worse use, the left one on ties.
 * Placing on a beam level. Source: the maker's frame table; an inner frame takes half of each bay beside it (statics).
 */
export function checkFrameLoad(lift: LiftCase): RuleAnswer {
  const { index, place, context, view } = lift;
  if (context.operation === 'retrieve') return notApplicable('frame-load', 'kg', 'taking-down');
  if (place.level.level === 0) return notApplicable('frame-load', 'kg', 'floor-level');
  const left = judgeFrame(lift, frameLoad(index, place.run, place.bayIndex, view));
  const right = judgeFrame(lift, frameLoad(index, place.run, place.bayIndex + 1, view));
  const allows = [left.allowsKg ?? null, right.allowsKg ?? null];
  const allowsKg = allows.includes(null) ? null : Math.min(...allows.map((kg) => kg ?? 0));
  return { ...decidingFrame(left, right), allowsKg };
}

function judgeFrame(lift: LiftCase, on: FrameLoad): RuleAnswer {
  const { frame, standing, rating } = on;
  const { assessedKg } = lift;
  return compareMass('frame-load', {
    needKg: standing.kg === null || assessedKg === null ? null : (standing.kg + assessedKg) / 2,
    haveKg: rating?.capacityKg ?? null,
    allowsKg: rating === null || standing.kg === null ? null : roomKg(2 * rating.capacityKg, standing.kg),
    limitCause: 'gap-beyond-frame-ratings',
    needCause: standing.kg === null ? 'stock-mass-unknown' : 'mass-unknown',
    needFrom: [
      ...assessedFrom(lift),
      ...standingFrom(`bays beside frame ${frame.id}`, standing),
      origin('formula', 'half of each bay', '(standing + assessed) / 2', 2, 'count'),
    ],
    haveFrom: [
      origin(
        'frame-rating',
        frame.typeId,
        rating ? `ratings[${rating.at}].capacityKg` : 'ratings',
        rating?.capacityKg ?? null,
        'kg',
      ),
      origin('frame-rating', frame.typeId, 'maxGapMm', rating?.maxGapMm ?? null, 'mm'),
      origin('rack', `bays beside frame ${frame.id}`, 'largestGapMm', on.largestGapMm, 'mm'),
    ],
  });
}

const WORST_FIRST: readonly Outcome[] = ['fail', 'unknown', 'pass'];

/** The frame that decides: the worse outcome, then a cause that names a limit, then the worse use, then the left. */
function decidingFrame(left: RuleAnswer, right: RuleAnswer): RuleAnswer {
  const worse = WORST_FIRST.indexOf(right.outcome) - WORST_FIRST.indexOf(left.outcome);
  if (worse !== 0) return worse < 0 ? right : left;
  if (left.outcome === 'unknown') {
    return left.cause === 'mass-unknown' && right.cause !== 'mass-unknown' ? right : left;
  }
  return stepUse(right) > stepUse(left) ? right : left;
}
