import { describe, expect, it } from 'vitest';
import { compareAudits } from '../../lib/audit/compare.ts';
import type { Finding } from '../../lib/audit/finding.ts';
import { figuresOf, findingId, makeFinding, ruleSource } from '../../lib/audit/make-finding.ts';

function bayOverload(bay: string, needKg: number | null, severity: Finding['severity'] = 'stop'): Finding {
  return makeFinding({
    kind: 'bay-overload',
    severity,
    subject: { of: 'bay', run: 'a', bay },
    figures: figuresOf(needKg, 1000, 'kg'),
    source: ruleSource('bay-load'),
    advice: 'take-load-off',
  });
}

describe('two audits of one site', () => {
  it('tell what is new, gone, worse, better and as it was', () => {
    const before = [
      bayOverload('gone', 1100),
      bayOverload('same', 1100),
      bayOverload('up', 1100),
      bayOverload('down', 1100),
    ];
    const now = [
      bayOverload('new', 1100),
      bayOverload('same', 1100),
      bayOverload('up', 1101),
      bayOverload('down', 1099),
    ];
    const { fresh, gone, worse, better, unchanged } = compareAudits(before, now);
    expect(fresh).toEqual([now[0]]);
    expect(gone).toEqual([before[0]]);
    expect(unchanged).toEqual([now[1]]);
    expect(worse).toEqual([{ before: before[2], now: now[2] }]);
    expect(better).toEqual([{ before: before[3], now: now[3] }]);
  });

  it('count a graver severity as worse whatever the figures', () => {
    const { worse } = compareAudits([bayOverload('x', 1200, 'plan')], [bayOverload('x', 1100, 'stop')]);
    expect(worse).toHaveLength(1);
  });

  it('count an excess that is no longer known as worse, and one that now is as better', () => {
    expect(compareAudits([bayOverload('x', 1100)], [bayOverload('x', null)]).worse).toHaveLength(1);
    expect(compareAudits([bayOverload('x', null)], [bayOverload('x', 1100)]).better).toHaveLength(1);
    expect(compareAudits([bayOverload('x', null)], [bayOverload('x', null)]).unchanged).toHaveLength(1);
  });
});

describe('the id of a finding', () => {
  it('does not depend on figures or on how many places there are', () => {
    expect(bayOverload('x', 1100).id).toBe(bayOverload('x', 1500).id);
    const id = (locations: string[]) => findingId('mass-unknown', { of: 'load', load: 'l', locations });
    expect(id(['a'])).toBe(id(['a', 'b']));
  });

  it('tells subjects apart whatever signs their ids hold', () => {
    const id = (location: string, load: string) =>
      findingId('one-truck', { of: 'stored-load', location, load });
    expect(id('a/b', 'c')).not.toBe(id('a', 'b/c'));
    expect(id('a%2Fb', 'c')).not.toBe(id('a/b', 'c'));
  });
});
