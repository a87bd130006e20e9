'use client';

import { useId } from 'react';
import type { AskedTime } from '@/app/_parts/lift-query.ts';

/** When checks, holds and expiry dates are judged: now, at a time, or not at all. */
export function TimeFields({ time, onTime }: { time: AskedTime; onTime: (time: AskedTime) => void }) {
  const field = useId();
  const begin = (kind: AskedTime['kind']) =>
    onTime(kind === 'at' ? { kind, instant: `${new Date().toISOString().slice(0, 16)}:00Z` } : { kind });
  return (
    <>
      <div className="field">
        <label htmlFor={field}>Checks, holds and expiry dates</label>
        <select
          id={field}
          value={time.kind}
          onChange={(event) => begin(event.target.value as AskedTime['kind'])}
        >
          <option value="now">judged as of now</option>
          <option value="at">judged at a time</option>
          <option value="not-judged">not judged</option>
        </select>
      </div>
      {time.kind === 'at' ? (
        <div className="field">
          <label htmlFor={`${field}-at`}>
            Time <span className="soft">UTC</span>
          </label>
          <input
            id={`${field}-at`}
            type="datetime-local"
            value={time.instant.length === 10 ? `${time.instant}T00:00` : time.instant.slice(0, 16)}
            onChange={({ target }) =>
              target.value !== '' && onTime({ kind: 'at', instant: `${target.value.slice(0, 16)}:00Z` })
            }
          />
        </div>
      ) : null}
    </>
  );
}
