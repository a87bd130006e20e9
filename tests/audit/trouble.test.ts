import { describe, expect, it } from 'vitest';
import { auditSite } from '../../lib/audit/audit-site.ts';
import type { Finding, FindingKind, Severity } from '../../lib/audit/finding.ts';
import { DEMO_AS_OF, demoSite } from '../../lib/demo/demo-site.ts';
import { TROUBLE, type Trouble } from '../../lib/demo/trouble.ts';
import { indexSite } from '../../lib/model/site-index.ts';

const { findings } = auditSite(indexSite(demoSite()), { asOf: DEMO_AS_OF });

/** What the audit must say of a planted trouble. */
function expected(trouble: Trouble): { kind: FindingKind; severity: Severity } {
  switch (trouble.kind) {
    case 'overloaded-beam':
      return { kind: 'beam-level-overload', severity: 'stop' };
    case 'overloaded-bay':
      return { kind: 'bay-overload', severity: 'stop' };
    case 'overloaded-frame':
      return { kind: 'frame-overload', severity: 'stop' };
    case 'stranded':
      return trouble.evenIfAllWereFit
        ? { kind: 'stranded-for-fleet', severity: 'stop' }
        : { kind: 'stranded', severity: 'plan' };
    case 'one-truck':
      return { kind: 'one-truck', severity: 'plan' };
    case 'too-tall': // 1320 + 75 (Y of class 400) > 1390: not even the standard's clearance
      return { kind: 'load-too-tall', severity: 'stop' };
    case 'unknown-mass':
      return { kind: 'mass-unknown', severity: 'plan' };
    case 'unplaceable':
      return { kind: 'unplaceable', severity: 'note' };
    case 'damaged-frame':
    case 'damaged-level':
      return trouble.condition === 'red'
        ? { kind: 'red-steel-loaded', severity: 'stop' }
        : { kind: 'amber-steel-loaded', severity: 'plan' };
    case 'pair-capacity-missing':
      return { kind: 'pair-capacity-missing', severity: 'plan' };
    case 'gap-beyond-ratings':
      return { kind: 'frame-gap-beyond-ratings', severity: 'plan' };
    case 'aisle-not-surveyed':
      return { kind: 'aisle-not-surveyed', severity: 'note' };
    case 'no-turning-data':
      return { kind: 'truck-facts-missing', severity: 'plan' };
    case 'plate-short':
      return { kind: 'plate-stops-below-mast', severity: 'plan' };
    case 'truck-unfit':
      switch (trouble.why) {
        case 'held':
          return { kind: 'truck-held', severity: 'note' };
        case 'check-failed':
          return { kind: 'truck-check-failed', severity: 'stop' };
        case 'never-checked':
        case 'check-too-old':
          return { kind: 'truck-unchecked', severity: 'plan' };
      }
  }
}

/** Is this finding about the place, load or truck of the trouble? */
function isAbout({ subject, truck }: Finding, trouble: Trouble): boolean {
  switch (trouble.kind) {
    case 'overloaded-beam':
    case 'damaged-level':
    case 'pair-capacity-missing':
      return subject.of === 'level' && subject.bay === trouble.bay && subject.level === trouble.level;
    case 'overloaded-bay':
      return subject.of === 'bay' && subject.bay === trouble.bay;
    case 'overloaded-frame':
    case 'damaged-frame':
      return subject.of === 'frame' && subject.frame === trouble.frame;
    case 'one-truck':
      return subject.of === 'stored-load' && subject.location === trouble.location && truck === trouble.truck;
    case 'stranded':
    case 'too-tall':
      return subject.of === 'stored-load' && subject.location === trouble.location;
    case 'unknown-mass':
      return (
        subject.of === 'load' && subject.load === trouble.load && subject.locations.includes(trouble.location)
      );
    case 'unplaceable':
      return subject.of === 'load' && subject.load === trouble.load;
    case 'gap-beyond-ratings': // bay 01 of the run stands between its first two frames
      return subject.of === 'frame' && subject.frame === trouble.bay.replace('-01', '-F00');
    case 'aisle-not-surveyed':
      return subject.of === 'aisle' && subject.aisle === trouble.aisle;
    case 'no-turning-data':
      return subject.of === 'truck' && subject.truck === trouble.truck && subject.lacks === trouble.kind;
    case 'plate-short':
      return subject.of === 'plate' && subject.truck === trouble.truck;
    case 'truck-unfit':
      return subject.of === 'truck' && subject.truck === trouble.truck && subject.lacks === null;
  }
}

describe('the trouble planted in the demo depot is found', () => {
  it.each(TROUBLE.map((trouble) => ({ trouble, named: JSON.stringify(trouble) })))(
    '$named',
    ({ trouble }) => {
      const { kind, severity } = expected(trouble);
      const found = findings.filter((finding) => finding.kind === kind && isAbout(finding, trouble));
      expect(found.map((finding) => finding.severity)).toContain(severity);
    },
  );

  it('and hardly any other: each finding to stop for goes back to a planted trouble', () => {
    const odd = findings.filter(
      (finding) =>
        finding.severity === 'stop' &&
        finding.kind !== 'unit-overload' && // the stranded slabs are too heavy for their levels as well
        !TROUBLE.some((trouble) => isAbout(finding, trouble)),
    );
    expect(odd).toEqual([]);
  });
});
