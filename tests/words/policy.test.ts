import { describe, expect, it } from 'vitest';
import { ALWAYS_MUST_KNOW } from '../../lib/model/rule-ids.ts';
import { THIN_SPACE } from '../../lib/units/format-quantity.ts';
import { mustStayWords, shiftsWords } from '../../lib/words/policy.ts';

describe('the words about a policy', () => {
  it.each([
    { shifts: { asked: 0, changed: 0, shifts: [] }, says: 'nothing stands in the racks' },
    { shifts: { asked: 2000, changed: 0, shifts: [] }, says: 'none of 2 000 changes' },
    {
      shifts: { asked: 2000, changed: 1200, shifts: [{ from: 'clear', to: 'thin', count: 1200 } as const] },
      says: '1 200 of 2 000 change: 1 200 from clear to thin',
    },
  ])('say "$says"', ({ shifts, says }) => {
    expect(shiftsWords(shifts).replaceAll(THIN_SPACE, ' ')).toBe(says);
  });

  it('give each rule that stays the paper it stands on', () => {
    for (const rule of ALWAYS_MUST_KNOW) expect(mustStayWords(rule)).toMatch(/capacity plate|load notice/);
    expect(mustStayWords('plate-capacity')).toContain('capacity plate');
    expect(mustStayWords('unit-load')).toContain('load notice');
  });
});
