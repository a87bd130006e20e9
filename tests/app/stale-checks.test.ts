import { describe, expect, it } from 'vitest';
import { lastStaleCheck } from '../../app/_parts/stale-checks.ts';
import { makeIndex } from '../site-builder.ts';

const index = makeIndex(); // both trucks were checked at 06:00; a check counts for 12 hours

describe('lastStaleCheck', () => {
  it.each([
    { now: '2026-03-02T17:59:59Z', last: null },
    { now: '2026-03-02T18:00:00Z', last: null },
    { now: '2026-03-02T18:00:01Z', last: '2026-03-02T06:00:00Z' },
  ])('says $last at $now', ({ now, last }) => expect(lastStaleCheck(index, now)).toBe(last));

  it('says nothing where no check was ever made: that is another matter', () => {
    expect(lastStaleCheck(makeIndex({ checks: [] }), '2026-03-02T18:00:01Z')).toBeNull();
  });

  it('does not count a check that lies ahead', () => {
    expect(lastStaleCheck(index, '2026-03-01T00:00:00Z')).toBeNull();
  });
});
