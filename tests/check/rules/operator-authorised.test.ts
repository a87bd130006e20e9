import { describe, expect, it } from 'vitest';
import type { TruckKind } from '../../../lib/model/truck.ts';
import { core, stepOf } from '../judge.ts';

function withAuthorisations(...authorisations: { kind: TruckKind; expires: string | null }[]) {
  return { operators: [{ id: 'op-1', name: 'Operator one', authorisations }] };
}
const ends = (expires: string) => withAuthorisations({ kind: 'reach', expires });

describe('operator-authorised', () => {
  it.each([
    { asOf: '2026-05-31T23:59:59Z', outcome: 'pass', cause: undefined, why: 'a second before it ends' },
    {
      asOf: '2026-06-01T00:00:00Z',
      outcome: 'pass',
      cause: undefined,
      why: 'ends exactly now: still counts',
    },
    { asOf: '2026-06-01T00:00:01Z', outcome: 'fail', cause: 'authorisation-expired', why: 'a second after' },
    { asOf: null, outcome: 'pass', cause: undefined, why: 'without a time expiry is not judged' },
  ])('at $asOf an authorisation to 1 June gives $outcome: $why', ({ asOf, outcome, cause }) => {
    const step = stepOf('operator-authorised', {
      site: ends('2026-06-01T00:00:00Z'),
      context: { operator: 'op-1', asOf },
    });
    expect(step).toMatchObject({ outcome, need: 'reach' });
    expect(step.cause).toBe(cause);
  });

  it('reads a date without a time as its first moment', () => {
    const context = { operator: 'op-1', asOf: '2026-06-01T00:00:01Z' };
    expect(stepOf('operator-authorised', { site: ends('2026-06-01'), context }).outcome).toBe('fail');
  });

  it('takes any valid one of several for the kind', () => {
    const site = withAuthorisations(
      { kind: 'reach', expires: '2025-01-01' },
      { kind: 'reach', expires: null },
    );
    const context = { operator: 'op-1', asOf: '2026-06-01T00:00:01Z' };
    expect(stepOf('operator-authorised', { site, context })).toMatchObject({
      outcome: 'pass',
      have: 'authorised',
    });
  });

  it('fails without an authorisation for the kind', () => {
    const site = withAuthorisations({ kind: 'counterbalance', expires: null });
    expect(core(stepOf('operator-authorised', { site, context: { operator: 'op-1' } }))).toEqual({
      outcome: 'fail',
      need: 'reach',
      have: 'not authorised',
      cause: 'not-authorised',
    });
  });

  it('is not asked when nobody is named', () => {
    expect(stepOf('operator-authorised')).toMatchObject({
      outcome: 'not-applicable',
      cause: 'no-operator-given',
    });
  });

  it('throws for an operator who is not one of the site', () => {
    expect(() => stepOf('operator-authorised', { context: { operator: 'nobody' } })).toThrow(
      'no operator nobody',
    );
  });
});
