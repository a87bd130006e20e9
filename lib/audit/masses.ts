import type { Step } from '../check/step.ts';
import { stepUse } from '../check/step-use.ts';
import { UNKNOWN_KG } from '../grid/load-columns.ts';
import { THIN } from '../grid/tally.ts';
import type { Load } from '../model/load.ts';
import { type AuditCase, governingStep, takeDown } from './audit-case.ts';
import { isDeclared } from './back-in-place.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource, stepFigures } from './make-finding.ts';

/** Which loads stand somewhere and have no known mass? Their places make every sum around them unknown: `plan`. */
export function unweighedLoads({ site, stored }: AuditCase): Finding[] {
  const places = new Map<Load, string[]>();
  for (const { at, place, load } of stored) {
    if (site.loads.assessedKg[site.standing[at]!] !== UNKNOWN_KG) continue;
    const list = places.get(load);
    if (list) list.push(place.id);
    else places.set(load, [place.id]);
  }
  return [...places].map(([load, locations]) =>
    makeFinding({
      kind: 'mass-unknown',
      severity: 'plan',
      subject: { of: 'load', load: load.id, locations },
      figures: figuresOf(locations.length, 0, 'pallets'),
      source: ruleSource('plate-capacity', 'mass-unknown'),
      advice: 'weigh',
    }),
  );
}

const RACK_MASS_RULES = ['unit-load', 'beam-level', 'bay-load', 'frame-load'] as const;

/**
 * Which loads of declared mass stand where that mass only just passes? A thin step of the racks' rules where it
 * stands, or no truck of the site that is better than thin at taking it down. Weighed, they may turn out clear, or not
 * allowed: `plan`. One finding a load, with the figures of the step of the highest use.
 */
export function thinDeclared(audit: AuditCase): Finding[] {
  const worst = new Map<Load, { step: Step; locations: Set<string> }>();
  const add = (load: Load, location: string, step: Step) => {
    const known = worst.get(load);
    if (known === undefined) {
      worst.set(load, { step, locations: new Set([location]) });
      return;
    }
    known.locations.add(location);
    if (stepUse(step) > stepUse(known.step)) known.step = step;
  };
  for (const { place, load, steps } of audit.notClear) {
    if (!isDeclared(audit.index, load)) continue;
    for (const rule of RACK_MASS_RULES) {
      const step = steps.get(rule)!;
      if (step.outcome === 'thin') add(load, place.id, step);
    }
  }
  const { verdict, bestTruck } = audit.fleet;
  for (const one of audit.stored) {
    if (verdict[one.at] !== THIN || !isDeclared(audit.index, one.load)) continue;
    add(
      one.load,
      one.place.id,
      governingStep(takeDown(audit, one, audit.index.site.trucks[bestTruck[one.at]!]!)),
    );
  }
  return [...worst].map(([load, { step, locations }]) =>
    makeFinding({
      kind: 'declared-thin',
      severity: 'plan',
      subject: { of: 'load', load: load.id, locations: [...locations] },
      figures: stepFigures(step),
      source: ruleSource(step.rule),
      advice: 'weigh',
    }),
  );
}
