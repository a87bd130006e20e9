import { describe, expect, it } from 'vitest';
import type { Condition } from '../../../lib/model/racking.ts';
import { makeBay, makeFrame, makeLevel, makeRun } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

function steel(level: Condition, left: Condition, right: Condition) {
  const levels = [makeLevel('a1', 0, { condition: level }), makeLevel('a1', 1, { condition: level })];
  const frames = [
    makeFrame({ id: 'a-f1', condition: left }),
    makeFrame({ id: 'a-f2', condition: right }),
    makeFrame({ id: 'a-f3', condition: 'red' }),
  ];
  return { runs: [makeRun({ frames, bays: [makeBay('a1', { levels }), makeBay('a2')] })] };
}

describe('rack-condition', () => {
  it.each([
    { level: 'sound', left: 'sound', right: 'sound', place: 'pass', worst: 'sound' },
    { level: 'amber', left: 'sound', right: 'sound', place: 'fail', worst: 'amber' },
    { level: 'sound', left: 'amber', right: 'sound', place: 'fail', worst: 'amber' },
    { level: 'sound', left: 'sound', right: 'red', place: 'fail', worst: 'red' },
    { level: 'red', left: 'amber', right: 'sound', place: 'fail', worst: 'red' },
  ] as const)(
    'level $level, frames $left and $right: placing gives $place',
    ({ level, left, right, place, worst }) => {
      const step = stepOf('rack-condition', { site: steel(level, left, right) });
      expect(step).toMatchObject({ outcome: place, need: 'sound', have: worst });
      expect(step.cause).toBe(worst === 'sound' ? undefined : worst);
    },
  );

  it('is asked on the floor', () => {
    expect(stepOf('rack-condition', { site: steel('sound', 'red', 'sound'), at: 'a1-0-1' }).outcome).toBe(
      'fail',
    );
  });

  it('lets everything be taken down, with a warning where steel is red', () => {
    const context = { operation: 'retrieve' } as const;
    expect(core(stepOf('rack-condition', { site: steel('sound', 'amber', 'sound'), context }))).toEqual({
      outcome: 'pass',
      need: 'any condition',
      have: 'amber',
    });
    expect(stepOf('rack-condition', { site: steel('sound', 'red', 'sound'), context })).toMatchObject({
      outcome: 'pass',
      cause: 'red-take-down-only',
    });
  });
});
