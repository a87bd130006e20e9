import { instantMs } from '../model/quantities.ts';
import { type Operator, TRUCK_KINDS } from '../model/truck.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding } from './finding.ts';
import { figuresOf, makeFinding, ruleSource } from './make-finding.ts';

export const SOON_DAYS = 30;
const MS_PER_DAY = 86_400_000;

/**
 * Whose authorisations for a kind of truck have ended at the time asked about, or end within 30 days of it?
 *
 * Of several for one kind the one that ends last counts. Equality: one that ends exactly at asOf has not ended, one
 * that ends in exactly 30 days is found. Ended: `plan` (the lift check refuses that driver), ending: `note`. Not asked
 * without a time.
 */
export function endingAuthorisations({ index, asOfMs }: AuditCase): Finding[] {
  if (asOfMs === null) return [];
  return index.site.operators.flatMap((operator) =>
    TRUCK_KINDS.flatMap((truckKind) => {
      const endsMs = lastEndMs(operator, truckKind);
      const daysLeft = endsMs === null ? Number.POSITIVE_INFINITY : (endsMs - asOfMs) / MS_PER_DAY;
      if (daysLeft > SOON_DAYS) return [];
      const ended = daysLeft < 0;
      return makeFinding({
        kind: ended ? 'authorisation-ended' : 'authorisation-ending',
        severity: ended ? 'plan' : 'note',
        subject: { of: 'authorisation', operator: operator.id, truckKind },
        figures: figuresOf(ended ? 0 : SOON_DAYS, daysLeft, 'days'),
        source: ruleSource('operator-authorised', ended ? 'authorisation-expired' : null),
        advice: ended ? 'do-not-let-drive' : 'renew-authorisation',
      });
    }),
  );
}

/** When the last of the authorisations for a kind ends; null: one has no end, or there is none. */
function lastEndMs({ authorisations }: Operator, kind: (typeof TRUCK_KINDS)[number]): number | null {
  let lastMs: number | null = null;
  for (const held of authorisations) {
    if (held.kind !== kind) continue;
    if (held.expires === null) return null;
    lastMs = Math.max(lastMs ?? Number.NEGATIVE_INFINITY, instantMs(held.expires));
  }
  return lastMs;
}
