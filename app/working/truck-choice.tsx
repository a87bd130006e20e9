import type { AskedLift } from '@/app/_parts/asked-lift.ts';
import type { LiftQuery } from '@/app/_parts/lift-query.ts';
import { RankedTrucks } from '@/app/_parts/ranked-trucks.tsx';
import { rankTrucks } from '@/lib/check/rank-trucks.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

/** A lift with no truck named: all of them, best first, each a step from its working. */
export function TruckChoice({
  index,
  asked,
  query,
  units,
}: {
  index: SiteIndex;
  asked: AskedLift;
  query: LiftQuery;
  units: DisplayUnits;
}) {
  return (
    <div className="stack">
      <h1>
        Which truck for {asked.load.name} at {asked.place.id}?
      </h1>
      <p>No truck is named. Choose one to see its working.</p>
      <RankedTrucks
        answers={rankTrucks(index, asked)}
        index={index}
        query={query}
        units={units}
        label="Trucks, best first"
      />
    </div>
  );
}
