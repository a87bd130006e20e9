import type { VerdictShift, VerdictShifts } from '../grid/verdict-shifts.ts';
import type { RuleId } from '../model/rule-ids.ts';
import { groupDigits } from '../units/format-quantity.ts';
import { verdictWord } from './verdict.ts';

/** Why a rule may not be taken out of those that must be known. */
export function mustStayWords(rule: RuleId): string {
  const isTruck = rule === 'plate-capacity' || rule === 'tilt-capacity';
  return `Stays: ${isTruck ? "the truck's capacity plate" : "the rack's load notice"} must be known, whatever the policy.`;
}

/** "12 from clear to thin" */
export function shiftWords({ from, to, count }: VerdictShift): string {
  return `${groupDigits(count)} from ${verdictWord(from).toLowerCase()} to ${verdictWord(to).toLowerCase()}`;
}

/** What becomes of the verdicts on what stands, in a line. */
export function shiftsWords({ asked, changed, shifts }: VerdictShifts): string {
  if (asked === 0) return 'nothing stands in the racks';
  if (changed === 0) return `none of ${groupDigits(asked)} changes`;
  return `${groupDigits(changed)} of ${groupDigits(asked)} change: ${shifts.map(shiftWords).join(', ')}`;
}
