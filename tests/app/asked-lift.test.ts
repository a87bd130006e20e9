import { describe, expect, it } from 'vitest';
import { resolveLift } from '../../app/_parts/asked-lift.ts';
import { readLiftQuery } from '../../app/_parts/lift-query.ts';
import { makeIndex } from '../site-builder.ts';

const NOW = '2026-03-02T06:30:00Z';
const index = makeIndex({ stock: [{ location: 'a1-1-1', load: 'crates' }] });
const ask = (address: string) =>
  resolveLift(index, readLiftQuery(Object.fromEntries(new URLSearchParams(address))), NOW);
const refusedOf = (address: string) => {
  const resolved = ask(address);
  if (resolved.kind !== 'refused') throw new Error('the question was not refused');
  return resolved.refused;
};

describe('resolveLift', () => {
  it('resolves a location, a truck and a known load', () => {
    const resolved = ask('location=a1-2-1&truck=reach-1&load=drums');
    expect(resolved.kind).toBe('asked');
    if (resolved.kind !== 'asked') return;
    expect(resolved.asked.place.id).toBe('a1-2-1');
    expect(resolved.asked.truck?.id).toBe('reach-1');
    expect(resolved.asked.load.id).toBe('drums');
    expect(resolved.asked.context).toEqual({
      operation: 'place',
      asOf: NOW,
      operator: null,
      stock: 'as-is',
      from: null,
    });
  });

  it('asks all trucks when none is named', () => {
    const resolved = ask('location=a1-2-1&load=drums');
    expect(resolved.kind === 'asked' && resolved.asked.truck).toBeNull();
  });

  it('takes down what stands at the place when no load is named', () => {
    const resolved = ask('location=a1-1-1');
    expect(resolved.kind === 'asked' && resolved.asked.load.id).toBe('crates');
    expect(resolved.kind === 'asked' && resolved.asked.context.operation).toBe('retrieve');
  });

  it('puts back what stands at a place as coming from that place, so that it is not in its own way', () => {
    const resolved = ask('location=a1-1-1&operation=place');
    expect(resolved.kind === 'asked' && resolved.asked.context.from).toBe('a1-1-1');
  });

  it('says that a load is missing where nothing stands', () => {
    expect(refusedOf('location=a1-1-2')).toEqual([
      { path: '$.load', came: 'nothing', expected: { is: 'present' } },
    ]);
  });

  it('names every id that does not resolve, with the nearest there is', () => {
    const refused = refusedOf('location=a1-2-9&truck=reach-2&load=drum&operator=op-9&from=a9-9-9');
    expect(refused.map(({ path }) => path)).toEqual([
      '$.location',
      '$.truck',
      '$.from',
      '$.operator',
      '$.load',
    ]);
    expect(refused.find(({ path }) => path === '$.load')?.expected).toEqual({
      is: 'id-in',
      list: 'the loads of this site',
      nearest: 'drums',
    });
  });

  it('passes on a value that could not be read and answers nothing in its stead', () => {
    expect(
      refusedOf('location=a1-2-1&mass=heavy&depth=1200&width=800&height=1000').map(({ path }) => path),
    ).toEqual(['$.mass']);
  });

  it('refuses a pallet type that the site does not have for a load typed in', () => {
    const refused = refusedOf('location=a1-2-1&mass=900&depth=1200&width=800&height=1000&pallet=p999');
    expect(refused.map(({ path }) => path)).toEqual(['$.pallet']);
  });

  it('needs a location', () => {
    expect(refusedOf('load=drums').map(({ path }) => path)).toEqual(['$.location']);
  });
});
