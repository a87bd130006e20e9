import { describe, expect, it } from 'vitest';
import { NO_ANSWER } from '../../lib/grid/question.ts';
import { verdictShifts } from '../../lib/grid/verdict-shifts.ts';

const [clear, thin, unproven, refuse] = [0, 1, 2, 3];

describe('what becomes of the verdicts', () => {
  it('counts each change once, from the best before and to the worst after', () => {
    const before = Uint8Array.of(clear, clear, clear, thin, refuse, NO_ANSWER, unproven);
    const after = Uint8Array.of(clear, thin, refuse, refuse, clear, NO_ANSWER, unproven);
    expect(verdictShifts(before, after)).toEqual({
      asked: 6,
      changed: 4,
      shifts: [
        { from: 'clear', to: 'refuse', count: 1 },
        { from: 'clear', to: 'thin', count: 1 },
        { from: 'thin', to: 'refuse', count: 1 },
        { from: 'refuse', to: 'clear', count: 1 },
      ],
    });
  });

  it('is nothing where nothing is asked, or nothing changes', () => {
    expect(verdictShifts(Uint8Array.of(NO_ANSWER), Uint8Array.of(NO_ANSWER))).toEqual({
      asked: 0,
      changed: 0,
      shifts: [],
    });
    expect(verdictShifts(Uint8Array.of(thin, thin), Uint8Array.of(thin, thin))).toMatchObject({ changed: 0 });
  });

  it('throws when the places are not the same', () => {
    expect(() => verdictShifts(new Uint8Array(1), new Uint8Array(2))).toThrow('1 and 2 places');
  });
});
