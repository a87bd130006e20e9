import { describe, expect, it } from 'vitest';
import { findLoads } from '../../app/_parts/find-loads.ts';
import { makeLoad } from '../site-builder.ts';

const loads = [
  makeLoad({ id: 'X-9', name: 'Crates of L-1 parts' }),
  makeLoad({ id: 'L-1', name: 'Slate tiles' }),
  makeLoad({ id: 'L-12', name: 'Roof slate, blue' }),
];
const ids = (words: string, limit = 9) => findLoads(loads, words, limit).map(({ id }) => id);

describe('findLoads', () => {
  it('lists the first loads when nothing is typed', () => expect(ids('', 2)).toEqual(['X-9', 'L-1']));
  it('puts loads whose id begins with the words first', () =>
    expect(ids('l-1')).toEqual(['L-1', 'L-12', 'X-9']));
  it('finds every word in id or name, in any order', () => expect(ids('blue ROOF')).toEqual(['L-12']));
  it('finds nothing for words that no load has', () => expect(ids('zinc')).toEqual([]));
  it('keeps to the limit', () => expect(ids('l-1', 1)).toEqual(['L-1']));
});
