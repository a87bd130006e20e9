import type { Step } from '../check/step.ts';
import { TRUCK_KINDS } from '../model/truck.ts';
import { instantWords, truckKindWords } from './plain-words.ts';

/** A yes/no step that was judged, as a clause. Throws on a rule that compares numbers: a bug. */
export function stateClause(step: Step): string {
  switch (step.rule) {
    case 'truck-fit':
      return truckFitClause(step);
    case 'operator-authorised':
      return authorisedClause(step);
    case 'slot-free':
      return step.outcome === 'fail'
        ? `${textOf(step, 'load', 'another load')} stands there`
        : 'nothing stands there';
    case 'rack-condition':
      return conditionClause(step);
    default:
      throw new Error(`${step.rule} is not a yes/no rule`);
  }
}

function truckFitClause(step: Step): string {
  if (step.cause === 'held') {
    return `on hold since ${instantWords(textOf(step, 'hold.since', 'an unrecorded time'))}: ${textOf(step, 'hold.reason', 'no reason recorded')}`;
  }
  const at = instantWords(textOf(step, 'at', 'an unrecorded time'));
  return step.outcome === 'fail' ? `its newest check, ${at}, failed` : `checked ${at} and in service`;
}

function authorisedClause(step: Step): string {
  const kind = TRUCK_KINDS.find((known) => known === step.need);
  const trucks = kind === undefined ? 'this kind of truck' : truckKindWords(kind);
  if (step.cause === 'not-authorised') return `not authorised for ${trucks}`;
  if (step.cause === 'authorisation-expired') {
    const ends = step.haveFrom.map(({ value }) => String(value)).sort();
    return `the authorisation for ${trucks} ended ${instantWords(ends.at(-1) ?? 'earlier')}`;
  }
  return `authorised for ${trucks}`;
}

function conditionClause(step: Step): string {
  switch (step.cause) {
    case 'amber':
      return 'the steel here is amber: not reloaded before it is repaired';
    case 'red':
      return 'the steel here is red: emptied at once and not loaded';
    case 'red-take-down-only':
      return 'the steel here is red: take down only, and keep it empty';
    default:
      return step.have === 'sound'
        ? 'the steel here is sound'
        : `the steel here is ${step.have}: taking down is allowed, reloading is not`;
  }
}

function textOf(step: Step, field: string, missing: string): string {
  const value = step.haveFrom.find((from) => from.field === field)?.value;
  return typeof value === 'string' ? value : missing;
}
