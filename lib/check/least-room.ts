import { MASS_RULES } from '../model/rule-ids.ts';
import type { LiftAnswer } from './step.ts';

type MassRule = (typeof MASS_RULES)[number];

/** What is left for this load to weigh more, and the mass rule that leaves the least. */
export type LeastRoom = { rule: MassRule; roomKg: number; mostKg: number };

/**
 * Which mass rule leaves the least to spare, and how much? null where the most cannot be said or no mass is known.
 *
 * The governing rule of a clear lift is the one of highest use, which is often one of no kilograms (the front row: 1 of
 * 1). What a person asks then is how much heavier the load could be: mostKg - assessedKg, and whose limit that is.
 * A rule's room is have - need, twice that where need is half of the load (each fork arm, each upright frame). Of equal
 * rooms the first in the order of the table. The frame step shows the frame of higher use; the other one may leave
 * less, and is what is left where no step leaves as little as mostKg says.
 */
export function leastRoom({
  steps,
  mostKg,
  assessedKg,
}: Pick<LiftAnswer, 'steps' | 'mostKg' | 'assessedKg'>): LeastRoom | null {
  if (mostKg === null || assessedKg === null) return null;
  let least: { rule: MassRule; roomKg: number } | null = null;
  for (const step of steps) {
    const rule = MASS_RULES.find((mass) => mass === step.rule);
    if (rule === undefined || typeof step.need !== 'number' || typeof step.have !== 'number') continue;
    const roomKg = (step.have - step.need) * (HALVED.includes(rule) ? 2 : 1);
    if (least === null || roomKg < least.roomKg) least = { rule, roomKg };
  }
  if (least === null) return null;
  const roomKg = mostKg - assessedKg;
  const isFrame = least.roomKg > roomKg + ROUNDING_KG;
  return { rule: isFrame ? 'frame-load' : least.rule, roomKg, mostKg };
}

/** Sums and halves of the same masses in another order differ by less than this. */
const ROUNDING_KG = 1e-6;

const HALVED: readonly MassRule[] = ['fork-arms', 'frame-load'];
