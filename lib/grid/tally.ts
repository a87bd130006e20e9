import { VERDICTS } from '../check/step.ts';
import { isThin } from '../check/thin.ts';
import type { Policy } from '../model/policy.ts';
import { RULE_IDS, type RuleId } from '../model/rule-ids.ts';

export const CLEAR = VERDICTS.indexOf('clear');
export const THIN = VERDICTS.indexOf('thin');
export const UNPROVEN = VERDICTS.indexOf('unproven');
export const REFUSE = VERDICTS.indexOf('refuse');

/** Rule numbers, in the order of RULE_IDS. */
export const RULE = Object.fromEntries(RULE_IDS.map((rule, at) => [rule, at])) as Record<RuleId, number>;

/** Before any rule has spoken. */
export const NO_RULE: number = RULE_IDS.length;

/** In place of a rule: two limits lie so near each other that every one has to be asked. */
export const CLOSE: number = NO_RULE + 1;

/** Verdict and governing rule in one number. */
export function codeOf(verdict: number, rule: number): number {
  return (verdict << 8) | rule;
}

export const verdictOf = (code: number): number => code >> 8;
export const ruleOf = (code: number): number => code & 0xff;

/**
 * What of mostKg a part of the rules leaves, as one number of which the least wins: NOTHING where a rule other than a
 * mass rule fails, CANNOT_SAY where a mustKnow rule is unknown, else the least that the mass rules allow, kg
 * (Infinity: none is known).
 */
export const NOTHING = -2;
export const CANNOT_SAY = -1;

/** The column value of mostKg: kg, or -1 where it cannot be said. */
export function mostKgOf(left: number): number {
  if (left === NOTHING) return 0;
  return left === Number.POSITIVE_INFINITY ? CANNOT_SAY : left;
}

/**
 * The verdict that some of the rules make together. Verdict, governing rule and mostKg of all rules follow from the
 * tallies of any parts of them: the worse verdict counts, then the higher use, then the order of the table.
 */
export class Tally {
  verdict = CLEAR;
  use = -1;
  rule = NO_RULE;
  mostKg = Number.POSITIVE_INFINITY;
  readonly #mustKnow: readonly boolean[];
  readonly #thinPercent: number;

  constructor(policy: Policy) {
    this.#mustKnow = RULE_IDS.map((rule) => policy.mustKnow.includes(rule));
    this.#thinPercent = policy.thinPercent;
  }

  start(): void {
    this.verdict = CLEAR;
    this.use = -1;
    this.rule = NO_RULE;
    this.mostKg = Number.POSITIVE_INFINITY;
  }

  /** Takes in another part's verdict. */
  add(verdict: number, use: number, rule: number): void {
    if (verdict < this.verdict) return;
    if (verdict === this.verdict && (use < this.use || (use === this.use && rule > this.rule))) return;
    this.verdict = verdict;
    this.use = use;
    this.rule = rule;
  }

  /** Takes in what another part leaves of mostKg. */
  leave(mostKg: number): void {
    if (mostKg < this.mostKg) this.mostKg = mostKg;
  }

  /** A yes/no rule. */
  state(rule: number, passes: boolean): void {
    if (passes) {
      this.add(CLEAR, 0, rule);
    } else {
      this.add(REFUSE, Number.POSITIVE_INFINITY, rule);
      this.leave(NOTHING);
    }
  }

  /** A length or a count of rows: need <= have passes. */
  length(rule: number, need: number, have: number): void {
    if (need <= have) {
      this.add(CLEAR, ratioUsed(need, have), rule);
    } else {
      this.add(REFUSE, ratioUsed(need, have), rule);
      this.leave(NOTHING);
    }
  }

  /** A rule that lacks a fact other than this load's own mass. */
  unknown(rule: number): void {
    if (!this.#mustKnow[rule]) return;
    this.add(UNPROVEN, 0, rule);
    this.leave(CANNOT_SAY);
  }

  /** A mass rule whose limit is known, for a load that is (NaN where its mass is unknown). */
  mass(rule: number, needKg: number, haveKg: number): void {
    if (needKg <= haveKg) {
      this.add(isThin(needKg, haveKg, this.#thinPercent) ? THIN : CLEAR, ratioUsed(needKg, haveKg), rule);
    } else if (needKg > haveKg) {
      this.add(REFUSE, ratioUsed(needKg, haveKg), rule);
    } else if (this.#mustKnow[rule]) {
      this.add(UNPROVEN, 0, rule);
    }
  }
}

/** need / have; infinite where there is nothing to have. */
export function ratioUsed(need: number, have: number): number {
  return have <= 0 ? Number.POSITIVE_INFINITY : need / have;
}
