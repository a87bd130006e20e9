import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contextOf,
  type LiftQuery,
  PLAIN_LIFT_QUERY,
  readLiftQuery,
  typedLoad,
  writeLiftQuery,
} from '../../app/_parts/lift-query.ts';

const read = (address: string) => readLiftQuery(Object.fromEntries(new URLSearchParams(address)));

describe('readLiftQuery', () => {
  it('takes an address with nothing in it as: take down what stands there, as of now', () => {
    expect(read('')).toEqual({ query: PLAIN_LIFT_QUERY, refused: [] });
  });

  it('takes a known load as one to put away unless the address says otherwise', () => {
    expect(read('load=L1').query.operation).toBe('place');
    expect(read('load=L1&operation=retrieve').query.operation).toBe('retrieve');
  });

  it('counts a typed mass as declared, the basis that carries an allowance', () => {
    const { query } = read('mass=980&depth=1200&width=800&height=1450');
    expect(query.load).toEqual({
      kind: 'typed',
      massKg: 980,
      basis: 'declared',
      depthMm: 1200,
      widthMm: 800,
      heightMm: 1450,
      palletType: null,
    });
  });

  it('allows a typed load of unknown mass', () => {
    expect(read('depth=1200&width=800&height=1450').query.load).toMatchObject({
      kind: 'typed',
      massKg: null,
    });
  });

  it.each([
    { address: 'mass=heavy&depth=1200&width=800&height=1450', path: '$.mass' },
    { address: 'mass=0&depth=1200&width=800&height=1450', path: '$.mass' },
    { address: 'mass=-1&depth=1200&width=800&height=1450', path: '$.mass' },
    { address: 'mass=NaN&depth=1200&width=800&height=1450', path: '$.mass' },
    { address: 'mass=980&width=800&height=1450', path: '$.depth' },
    { address: 'mass=980&depth=1e9&width=800&height=1450', path: '$.depth' },
    { address: 'operation=throw', path: '$.operation' },
    { address: 'asOf=yesterday', path: '$.asOf' },
    { address: 'stock=full', path: '$.stock' },
  ])('names $path and does not guess when it reads "$address"', ({ address, path }) => {
    const { refused } = read(address);
    expect(refused.map((entry) => entry.path)).toEqual([path]);
  });

  it('does not judge a typed load with a size missing: it asks about what stands there and says what is missing', () => {
    const { query, refused } = read('mass=980');
    expect(query.load).toEqual({ kind: 'stored' });
    expect(refused.map((entry) => entry.path)).toEqual(['$.depth', '$.width', '$.height']);
  });

  it('takes the first of a parameter given twice', () => {
    expect(readLiftQuery({ truck: ['T1', 'T2'] }).query.truck).toBe('T1');
  });
});

const idText = fc.stringMatching(/^[A-Za-z0-9&=?%+-]([A-Za-z0-9 &=?%+-]{0,8}[A-Za-z0-9&=?%+-])?$/);
const sizeNumber = fc.double({ min: 0.1, max: 1e7, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const anyQuery: fc.Arbitrary<LiftQuery> = fc.record({
  location: maybe(idText),
  truck: maybe(idText),
  load: fc.oneof(
    fc.record({ kind: fc.constant('known' as const), id: idText }),
    fc.constant({ kind: 'stored' as const }),
    fc
      .record({
        massKg: maybe(sizeNumber),
        basis: fc.constantFrom('weighed' as const, 'calculated' as const, 'declared' as const),
        depthMm: sizeNumber,
        widthMm: sizeNumber,
        heightMm: sizeNumber,
        palletType: maybe(idText),
      })
      .map((typed) => ({
        kind: 'typed' as const,
        ...typed,
        // a mass that is not known has no basis of its own: the address leaves it out
        basis: typed.massKg === null ? ('declared' as const) : typed.basis,
      })),
  ),
  operation: fc.constantFrom('place' as const, 'retrieve' as const),
  time: fc.constantFrom(
    { kind: 'now' as const },
    { kind: 'not-judged' as const },
    { kind: 'at' as const, instant: '2026-03-02T06:30:00Z' },
    { kind: 'at' as const, instant: '2026-03-02' },
  ),
  stock: fc.constantFrom('as-is' as const, 'empty' as const),
  from: maybe(idText),
  operator: maybe(idText),
});

describe('writeLiftQuery', () => {
  it('is read back as what was written, whatever characters the ids hold', () => {
    fc.assert(
      fc.property(anyQuery, (query) => {
        expect(read(writeLiftQuery(query))).toEqual({ query, refused: [] });
      }),
    );
  });
});

describe('contextOf', () => {
  const now = '2026-03-02T06:30:00Z';
  it.each([
    { time: { kind: 'now' as const }, asOf: now },
    { time: { kind: 'at' as const, instant: '2026-01-01' }, asOf: '2026-01-01' },
    { time: { kind: 'not-judged' as const }, asOf: null },
  ])('asks $time.kind as of $asOf', ({ time, asOf }) => {
    expect(contextOf({ ...PLAIN_LIFT_QUERY, time }, now).asOf).toBe(asOf);
  });
});

describe('typedLoad', () => {
  it('leaves the centre unstated, so that half the depth and half the height count', () => {
    const load = typedLoad(
      {
        kind: 'typed',
        massKg: 980,
        basis: 'weighed',
        depthMm: 1200,
        widthMm: 800,
        heightMm: 1450,
        palletType: null,
      },
      'a typed load',
    );
    expect(load).toMatchObject({ grossKg: 980, centreFromHeelMm: null, centreHeightMm: null });
  });
});
