import type { Outcome, Verdict } from '../check/step.ts';

/**
 * One mark per verdict that survives grey printing, of our own choosing: clear, a load lying on two tines; thin, one
 * tine left; unproven, a question; refuse, struck out.
 */
export const VERDICT_MARKS: Record<Verdict, string> = { clear: '=', thin: '–', unproven: '?', refuse: '×' };

/** The verdict as a label. */
export function verdictWord(verdict: Verdict): string {
  switch (verdict) {
    case 'clear':
      return 'Clear';
    case 'thin':
      return 'Thin';
    case 'unproven':
      return 'Unproven';
    case 'refuse':
      return 'Refuse';
  }
}

/** What the verdict means, in one sentence. */
export function verdictMeaning(verdict: Verdict): string {
  switch (verdict) {
    case 'clear':
      return 'No rule is broken, and nothing that must be known is missing.';
    case 'thin':
      return 'No rule is broken and nothing that must be known is missing, but a mass is close to its limit.';
    case 'unproven':
      return 'A fact that must be known is missing, so nothing is granted.';
    case 'refuse':
      return 'At least one rule is broken.';
  }
}

/** A step's outcome as a label. */
export function outcomeWord(outcome: Outcome): string {
  switch (outcome) {
    case 'pass':
      return 'Pass';
    case 'thin':
      return 'Thin';
    case 'fail':
      return 'Fail';
    case 'unknown':
      return 'Unknown';
    case 'not-applicable':
      return 'Not asked';
  }
}
