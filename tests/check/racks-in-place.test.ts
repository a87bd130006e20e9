import { describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { racksInPlace } from '../../lib/check/racks-in-place.ts';
import { markThin } from '../../lib/check/thin.ts';
import { demoSite } from '../../lib/demo/demo-site.ts';
import { indexSite } from '../../lib/model/site-index.ts';

describe('what the racks say of what stands', () => {
  const index = indexSite(demoSite());

  it('is what the whole lift check says of them, whatever the truck', () => {
    const outcomes = new Set<string>();
    for (const [at, { location, load }] of index.site.stock.entries()) {
      const truck = index.site.trucks[at % index.site.trucks.length]!;
      const context = {
        operation: 'place',
        asOf: null,
        operator: null,
        stock: 'as-is',
        from: location,
      } as const;
      const whole = checkLift(index, {
        load: index.loads.get(load)!,
        truck,
        place: index.places.get(location)!,
        context,
      });
      for (const step of racksInPlace(index, location)) {
        outcomes.add(step.outcome);
        expect(markThin(step, index.policy.thinPercent)).toEqual(
          whole.steps.find(({ rule }) => rule === step.rule),
        );
      }
    }
    expect([...outcomes].sort()).toEqual(['fail', 'not-applicable', 'pass', 'unknown']);
  });

  it('cannot be asked where nothing stands', () => {
    const empty = [...index.places.keys()].find((id) => !index.stockAt.has(id))!;
    expect(() => racksInPlace(index, empty)).toThrow('no pallet in');
  });
});
