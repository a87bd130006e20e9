import { OutcomeBadge } from '@/app/_parts/outcome-badge.tsx';
import { driversOf } from '@/app/trucks/drivers-of.ts';
import { FIT_WORDS } from '@/app/trucks/truck-words.ts';
import { truckFitState } from '@/lib/check/truck-fit-state.ts';
import { instantMs } from '@/lib/model/quantities.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { Truck } from '@/lib/model/truck.ts';
import { instantWords } from '@/lib/words/plain-words.ts';
import styles from './truck.module.css';

const CHECKS_SHOWN = 8;

/** Whether the truck may be used now, on the strength of which check, and by whom. */
export function TruckService({ index, truck, nowIso }: { index: SiteIndex; truck: Truck; nowIso: string }) {
  const { outcome, words } = FIT_WORDS[truckFitState(index, truck, instantMs(nowIso)).state];
  const checks = (index.checksOf.get(truck.id) ?? []).toReversed();
  const drivers = driversOf(index, truck.kind, instantMs(nowIso));
  return (
    <div className="stack">
      <p className={styles.fit}>
        <OutcomeBadge outcome={outcome} words={words} />{' '}
        <span className="soft">at {instantWords(nowIso)}</span>
      </p>
      {truck.hold === null ? null : (
        <p>
          <strong>On hold since {instantWords(truck.hold.since)}:</strong> {truck.hold.reason}
        </p>
      )}
      <div>
        <h3>Checks before the shift</h3>
        <p className="soft dense">A check counts for {index.policy.checkValidHours} hours (site policy).</p>
        {checks.length === 0 ? (
          <p>None on record.</p>
        ) : (
          <ul className={styles.checks}>
            {checks.slice(0, CHECKS_SHOWN).map((check) => (
              <li key={`${check.at} ${check.by}`}>
                <OutcomeBadge
                  outcome={check.result === 'pass' ? 'pass' : 'fail'}
                  words={check.result === 'pass' ? 'Passed' : 'Failed'}
                />{' '}
                {instantWords(check.at)}, {check.by}
                {check.defects.length === 0 ? '' : `: ${check.defects.join('; ')}`}
              </li>
            ))}
          </ul>
        )}
        {checks.length > CHECKS_SHOWN ? (
          <p className="soft">{checks.length - CHECKS_SHOWN} older ones not shown.</p>
        ) : null}
      </div>
      <div>
        <h3>Who may drive it</h3>
        {drivers.length === 0 ? (
          <p>Nobody on record is authorised for this kind of truck.</p>
        ) : (
          <ul className={styles.checks}>
            {drivers.map(({ operator, expires, state }) => (
              <li key={operator.id}>
                {operator.name} <span className="soft">{operator.id}</span>
                {', '}
                {state === 'ended' ? <strong>ended {instantWords(expires ?? '')}</strong> : null}
                {state === 'in force' ? (expires === null ? 'no end' : `to ${instantWords(expires)}`) : null}
              </li>
            ))}
          </ul>
        )}
      </div>
    </div>
  );
}
