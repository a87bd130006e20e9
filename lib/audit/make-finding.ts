import type { Cause, Step } from '../check/step.ts';
import type { RuleId } from '../model/rule-ids.ts';
import type { Figures, FigureUnit, Finding, FindingKind, PlateLine, Source, Subject } from './finding.ts';

/** A finding with its id. */
export function makeFinding(finding: Omit<Finding, 'id' | 'truck'> & { truck?: string | null }): Finding {
  const { kind, subject, truck = null } = finding;
  return { id: findingId(kind, subject), ...finding, truck };
}

/**
 * The id of a finding: its kind and what it is about, in words that stay the same from day to day. Lists of locations
 * are left out, so that a finding that grows stays the same finding.
 */
export function findingId(kind: FindingKind, subject: Subject): string {
  return [kind, ...subjectParts(subject)].map(escapePart).join('/');
}

function subjectParts(subject: Subject): string[] {
  switch (subject.of) {
    case 'stored-load':
      return [subject.location, subject.load];
    case 'level':
      return [subject.run, subject.bay, String(subject.level)];
    case 'bay':
      return [subject.run, subject.bay];
    case 'frame':
      return [subject.run, subject.frame];
    case 'aisle':
      return [subject.aisle, subject.overhead];
    case 'load':
      return [subject.load];
    case 'locations':
      return [subject.rule, subject.cause ?? ''];
    case 'truck':
      return subject.lacks === null ? [subject.truck] : [subject.truck, subject.lacks];
    case 'plate': {
      const lines = subject.lines === null ? [] : [subject.lines.lower, subject.lines.higher].map(lineWord);
      return [subject.truck, subject.mast, subject.attachment ?? '', ...lines];
    }
    case 'authorisation':
      return [subject.operator, subject.truckKind];
  }
}

function lineWord({ liftHeightMm, loadCentreMm, capacityKg }: PlateLine): string {
  return `${liftHeightMm}x${loadCentreMm}=${capacityKg}`;
}

/** Ids of a site may hold any sign: the one that joins the parts is written otherwise inside them. */
function escapePart(part: string): string {
  return part.replace(/[%/]/g, (sign) => (sign === '%' ? '%25' : '%2F'));
}

/** Figures of two numbers that were compared, or could not be. */
export function figuresOf(
  need: number | null,
  have: number | null,
  unit: FigureUnit,
  needIs: Figures['needIs'] = 'exact',
): Figures {
  return { need, have, excess: need === null || have === null ? null : need - have, unit, needIs };
}

/** The numbers of a step of the lift check; a step that compares words has none, and its unit is pallets: one. */
export function stepFigures(step: Step): Figures {
  const { need, have, unit } = step;
  if (unit === 'state') return figuresOf(null, null, 'pallets');
  return figuresOf(typeof need === 'number' ? need : null, typeof have === 'number' ? have : null, unit);
}

export function ruleSource(rule: RuleId, cause: Cause | null = null): Source {
  return { of: 'rule', rule, cause };
}

export function stepSource(step: Step): Source {
  return ruleSource(step.rule, step.cause ?? null);
}
