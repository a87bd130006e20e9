import { describe, expect, it } from 'vitest';
import { core, stepOf } from '../judge.ts';

const stocked = { stock: [{ location: 'a1-1-1', load: 'crates' }] };

describe('slot-free', () => {
  it('passes where nothing stands', () => {
    expect(core(stepOf('slot-free'))).toEqual({ outcome: 'pass', need: 'empty', have: 'empty' });
  });

  it('fails where a pallet stands, another pallet of the same unit load included', () => {
    expect(core(stepOf('slot-free', { site: stocked }))).toEqual({
      outcome: 'fail',
      need: 'empty',
      have: 'occupied',
      cause: 'occupied',
    });
  });

  it('passes where the pallet that stands is the one being moved', () => {
    expect(stepOf('slot-free', { site: stocked, context: { from: 'a1-1-1' } }).outcome).toBe('pass');
    expect(stepOf('slot-free', { site: stocked, context: { from: 'a1-1-2' } }).outcome).toBe('fail');
  });

  it('is not asked when taking down or when the racks are taken as empty', () => {
    expect(stepOf('slot-free', { site: stocked, context: { operation: 'retrieve' } }).cause).toBe(
      'taking-down',
    );
    expect(stepOf('slot-free', { site: stocked, context: { stock: 'empty' } })).toMatchObject({
      outcome: 'not-applicable',
      cause: 'racks-taken-as-empty',
    });
  });
});
