import { roomKg, type Standing } from '../rack/stand.ts';
import type { LiftCase } from './lift-case.ts';
import { assessedFrom, standingFrom } from './origins.ts';
import type { Cause, Origin } from './step.ts';

/** A limit that the load shares with what else stands there: need = standing + assessed, in that order. */
export function withStanding(
  lift: LiftCase,
  subject: string,
  standing: Standing,
  haveKg: number | null,
): {
  needKg: number | null;
  haveKg: number | null;
  allowsKg: number | null;
  needCause: Cause;
  needFrom: Origin[];
} {
  return {
    needKg: standing.kg === null || lift.assessedKg === null ? null : standing.kg + lift.assessedKg,
    haveKg,
    allowsKg: standing.kg === null || haveKg === null ? null : roomKg(haveKg, standing.kg),
    needCause: standing.kg === null ? 'stock-mass-unknown' : 'mass-unknown',
    needFrom: [...assessedFrom(lift), ...standingFrom(subject, standing)],
  };
}
