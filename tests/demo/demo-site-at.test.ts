import { describe, expect, it } from 'vitest';
import { truckFitState } from '../../lib/check/truck-fit-state.ts';
import { DEMO_AS_OF, demoSite } from '../../lib/demo/demo-site.ts';
import { demoSiteAt } from '../../lib/demo/demo-site-at.ts';
import { instantMs } from '../../lib/model/quantities.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';

describe('the demo moved to another day', () => {
  const later = '2031-02-03T22:10:05Z';

  it('is the demo itself at its own time', () => {
    expect(demoSiteAt(DEMO_AS_OF)).toEqual(
      JSON.parse(JSON.stringify(demoSite()), (_, value) =>
        typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value) ? `${value}T00:00:00Z` : value,
      ),
    );
  });

  it('is still a site that is accepted', () => {
    expect(readSite(demoSiteAt(later)).ok).toBe(true);
  });

  it('has the same trucks fit at the new time as at the old', () => {
    const [before, after] = [indexSite(demoSite()), indexSite(demoSiteAt(later))];
    const states = (index: typeof before, asOf: string) =>
      index.site.trucks.map((truck) => truckFitState(index, truck, instantMs(asOf)).state);
    expect(states(after, later)).toEqual(states(before, DEMO_AS_OF));
    expect(new Set(states(after, later)).size).toBeGreaterThan(2);
  });
});
