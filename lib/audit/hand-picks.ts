import { exceedsRecommended } from '../hand-pick/hand-lift.ts';
import { handPickAt } from '../hand-pick/pick-face.ts';
import type { Load } from '../model/load.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding } from './make-finding.ts';

const EQUATION = { of: 'standard', name: 'NIOSH publication 94-110' } as const;

/**
 * From which locations is a case lifted by hand with an index above 1, or outside the bounds of the equation (excess
 * null)? `plan`. A pallet so high that no hands reach it (VM 0, above 175 cm) is not picked where it stands: those are
 * one `note` a load, that it must be brought down first.
 */
export function heavyHandPicks({ stored }: AuditCase): Finding[] {
  const findings: Finding[] = [];
  const tooHigh = new Map<Load, string[]>();
  for (const { place, load } of stored) {
    const lift = handPickAt(place, load)?.origin;
    if (lift === undefined || !exceedsRecommended(lift)) continue;
    if (lift.result.kind === 'outside' && lift.result.beyond.includes('VM')) {
      const list = tooHigh.get(load);
      if (list) list.push(place.id);
      else tooHigh.set(load, [place.id]);
      continue;
    }
    const index = lift.result.kind === 'index' ? lift.result.liftingIndex : null;
    findings.push(
      makeFinding({
        kind: 'hand-pick',
        severity: 'plan',
        subject: { of: 'stored-load', location: place.id, load: load.id },
        figures: figuresOf(index, 1, 'index'),
        source: EQUATION,
        advice: 'lighten-the-pick',
      }),
    );
  }
  for (const [load, locations] of tooHigh) {
    findings.push(
      makeFinding({
        kind: 'hand-pick-too-high',
        severity: 'note',
        subject: { of: 'load', load: load.id, locations },
        figures: figuresOf(locations.length, 0, 'pallets'),
        source: EQUATION,
        advice: 'bring-down-before-picking',
      }),
    );
  }
  return findings;
}
