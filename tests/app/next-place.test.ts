import { describe, expect, it } from 'vitest';
import { nextPlace } from '../../app/trucks/_entry/next-place.ts';

const SIZE = { rows: 2, columns: 2 };
const HELD = { isAtStart: true, isAtEnd: true };
const INSIDE = { isAtStart: false, isAtEnd: false };
const at = (row: number, column: number) => ({ row, column });

describe('a key in the grid of a plate', () => {
  it.each([
    ['ArrowUp', at(0, 0), at(-1, 0), 'to the load centre'],
    ['ArrowUp', at(-1, 0), null, 'not past it'],
    ['ArrowUp', at(0, -1), null, 'not into the corner'],
    ['ArrowUp', at(1, -1), at(0, -1), 'among the lift heights'],
    ['ArrowDown', at(-1, 1), at(0, 1), 'from a load centre into its column'],
    ['ArrowDown', at(1, 1), null, 'not past the last row'],
    ['ArrowLeft', at(0, 0), at(0, -1), 'to the lift height'],
    ['ArrowLeft', at(-1, 0), null, 'not into the corner'],
    ['ArrowRight', at(0, 1), null, 'not past the last column'],
    ['ArrowRight', at(0, -1), at(0, 0), 'from a lift height into its row'],
    ['Enter', at(0, 1), at(1, 1), 'down'],
    ['Enter', at(1, 1), 'new-row', 'behind the last row'],
    ['Tab', at(0, 0), null, 'which the browser moves by itself'],
    ['7', at(0, 0), null, 'which is typed'],
  ] as const)('%s leads %s', (key, from, to, _why) => {
    expect(nextPlace(key, false, from, SIZE, HELD)).toEqual(to);
  });

  it('moves left and right within the text first', () => {
    expect(nextPlace('ArrowLeft', false, at(0, 1), SIZE, INSIDE)).toBeNull();
    expect(nextPlace('ArrowRight', false, at(0, 0), SIZE, INSIDE)).toBeNull();
  });

  it('leads up with shift and Enter, and never out of the form', () => {
    expect(nextPlace('Enter', true, at(1, 0), SIZE, HELD)).toEqual(at(0, 0));
    expect(nextPlace('Enter', true, at(-1, 0), SIZE, HELD)).toEqual(at(-1, 0));
  });
});
