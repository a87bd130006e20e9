import { describe, expect, it } from 'vitest';
import { filterOf, readChangesAsk, writeChangesAsk } from '../../app/changes/changes-query.ts';

describe('the address of the list of changes', () => {
  it('is read back as it was written', () => {
    const ask = {
      who: 'A & B',
      noun: 'truck',
      kind: 'revert',
      find: '50 %',
      from: '2026-03-01',
      before: 7,
    } as const;
    const raw = Object.fromEntries(new URLSearchParams(writeChangesAsk(ask)));
    expect(readChangesAsk(raw)).toEqual({ ask, refused: [] });
  });

  it('names what cannot be read and leaves out nothing else', () => {
    const { ask, refused } = readChangesAsk({ noun: 'lorry', from: 'yesterday', find: 'x', who: '' });
    expect(ask).toEqual({ find: 'x' });
    expect(refused.map(({ path }) => path)).toEqual(['$.noun', '$.from']);
  });

  it('includes the whole of its last day, also at the end of a month', () => {
    expect(filterOf({ from: '2026-02-28', to: '2026-02-28' })).toEqual({
      from: '2026-02-28',
      to: '2026-03-01',
    });
    expect(filterOf({ find: 'x', before: 3 })).toEqual({ text: 'x' });
  });
});
