import { describe, expect, it } from 'vitest';
import { makeTruck } from '../../site-builder.ts';
import { core, stepOf } from '../judge.ts';

const asOf = '2026-03-02T18:00:00Z';

function checked(...checks: [at: string, result: 'pass' | 'fail'][]) {
  return { checks: checks.map(([at, result]) => ({ truck: 'reach-1', at, by: 'Operator one', result })) };
}

describe('truck-fit', () => {
  it.each([
    { at: '2026-03-02T06:00:01Z', outcome: 'pass', why: 'a second younger than 12 hours' },
    { at: '2026-03-02T06:00:00Z', outcome: 'pass', why: 'exactly 12 hours old still counts' },
    { at: '2026-03-02T05:59:59Z', outcome: 'unknown', cause: 'check-too-old', why: 'a second older' },
    { at: asOf, outcome: 'pass', why: 'made at the very moment' },
    {
      at: '2026-03-02T18:00:01Z',
      outcome: 'unknown',
      cause: 'never-checked',
      why: 'made after the time asked about',
    },
  ])('a check at $at gives $outcome: $why', ({ at, outcome, cause }) => {
    const step = stepOf('truck-fit', { site: checked([at, 'pass']), context: { asOf } });
    expect(step.outcome).toBe(outcome);
    expect(step.cause).toBe(cause);
    expect(step.need).toBe('in service');
  });

  it('goes by the newest check, whichever way it went', () => {
    const failedLast = checked(['2026-03-02T16:00:00Z', 'fail'], ['2026-03-02T08:00:00Z', 'pass']);
    const passedLast = checked(['2026-03-02T16:00:00Z', 'pass'], ['2026-03-02T08:00:00Z', 'fail']);
    expect(core(stepOf('truck-fit', { site: failedLast, context: { asOf } }))).toEqual({
      outcome: 'fail',
      need: 'in service',
      have: 'check failed',
      cause: 'check-failed',
    });
    expect(stepOf('truck-fit', { site: passedLast, context: { asOf } }).outcome).toBe('pass');
  });

  it('lets a failed check decide among several at one moment, in either order', () => {
    const at = '2026-03-02T16:00:00Z';
    expect(
      stepOf('truck-fit', { site: checked([at, 'fail'], [at, 'pass']), context: { asOf } }).outcome,
    ).toBe('fail');
    expect(
      stepOf('truck-fit', { site: checked([at, 'pass'], [at, 'fail']), context: { asOf } }).outcome,
    ).toBe('fail');
  });

  it('fails a failed check however old it is', () => {
    const site = checked(['2026-02-01T06:00:00Z', 'fail']);
    expect(stepOf('truck-fit', { site, context: { asOf } }).cause).toBe('check-failed');
  });

  it('fails on any hold, even with a good check', () => {
    const truck = makeTruck({ hold: { since: '2026-03-01T00:00:00Z', reason: 'mast chain' } });
    const site = checked(['2026-03-02T16:00:00Z', 'pass']);
    const step = stepOf('truck-fit', { site, truck, context: { asOf } });
    expect(core(step)).toEqual({ outcome: 'fail', need: 'in service', have: 'held', cause: 'held' });
    expect(step.haveFrom.map(({ value }) => value)).toContain('mast chain');
  });

  it('is not asked without a time, hold or no hold', () => {
    const truck = makeTruck({ hold: { since: '2026-03-01T00:00:00Z', reason: 'mast chain' } });
    expect(core(stepOf('truck-fit', { truck }))).toEqual({
      outcome: 'not-applicable',
      need: null,
      have: null,
      cause: 'no-time-given',
    });
  });

  it('refuses to judge at a time that is no time', () => {
    expect(() => stepOf('truck-fit', { context: { asOf: 'this morning' } })).toThrow('asOf');
  });
});
