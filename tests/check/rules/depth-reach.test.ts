import { describe, expect, it } from 'vitest';
import { makeBay, makeLevel, makeRun, makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const doubleDeep = {
  runs: [
    makeRun({
      bays: [
        makeBay('a1', {
          levels: [makeLevel('a1', 1, { depthPositions: 2, locations: ['f1', 'f2', 'r1', 'r2'] })],
        }),
        makeBay('a2'),
      ],
    }),
  ],
};
const reaching = makeTruck({ reachDepth: 2 });

describe('depth-reach', () => {
  it.each([
    { at: 'f1', reachDepth: 1, need: 1, outcome: 'pass' },
    { at: 'f1', reachDepth: 2, need: 1, outcome: 'pass' },
    { at: 'r1', reachDepth: 2, need: 2, outcome: 'pass' },
    { at: 'r1', reachDepth: 1, need: 2, outcome: 'fail' },
  ] as const)('$at with a reach of $reachDepth: $outcome', ({ at, reachDepth, need, outcome }) => {
    const step = stepOf('depth-reach', { site: doubleDeep, at, truck: makeTruck({ reachDepth }) });
    expect(core(step)).toEqual({ outcome, need, have: reachDepth });
  });

  it.each([
    { stock: 'f1', context: {}, cause: 'front-occupied', why: 'a pallet stands in front' },
    { stock: 'f2', context: {}, cause: undefined, why: 'it stands in front of another column' },
    { stock: 'f1', context: { from: 'f1' }, cause: undefined, why: 'it is the one being moved' },
    { stock: 'f1', context: { stock: 'empty' }, cause: undefined, why: 'the racks are taken as empty' },
  ] as const)('a rear location passes with cause $cause: $why', ({ stock, context, cause }) => {
    const site = { ...doubleDeep, stock: [{ location: stock, load: 'crates' }] };
    const step = stepOf('depth-reach', { site, at: 'r1', truck: reaching, context });
    expect(step.outcome).toBe('pass');
    expect(step.cause).toBe(cause);
  });

  it('warns of the pallet in front when taking down too, and fails without the warning when out of reach', () => {
    const site = { ...doubleDeep, stock: [{ location: 'f1', load: 'crates' }] };
    const context = { operation: 'retrieve' } as const;
    expect(stepOf('depth-reach', { site, at: 'r1', truck: reaching, context }).cause).toBe('front-occupied');
    expect(stepOf('depth-reach', { site, at: 'r1', context }).cause).toBeUndefined();
  });
});
