import { type Instant, instantMs } from '../model/quantities.ts';
import type { Site } from '../model/site.ts';
import { DEMO_AS_OF, demoSite } from './demo-site.ts';

/**
 * The demo with its calendar moved so that its shift begins at a given time: walk-rounds made just before it are fresh,
 * and what expired or was held some days before DEMO_AS_OF did so as many days before asOf. Seconds are kept, no parts of them.
 */
export function demoSiteAt(asOf: Instant): Site {
  const site = demoSite();
  const byMs = instantMs(asOf) - instantMs(DEMO_AS_OF);
  const moved = (at: Instant): Instant => `${new Date(instantMs(at) + byMs).toISOString().slice(0, 19)}Z`;
  for (const check of site.checks) check.at = moved(check.at);
  for (const truck of site.trucks) if (truck.hold !== null) truck.hold.since = moved(truck.hold.since);
  for (const operator of site.operators) {
    for (const authorisation of operator.authorisations) {
      if (authorisation.expires !== null) authorisation.expires = moved(authorisation.expires);
    }
  }
  return site;
}
