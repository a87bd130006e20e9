import { describe, expect, it } from 'vitest';
import { PLAIN_LIFT_QUERY } from '../../app/_parts/lift-query.ts';
import type { RacksQuery } from '../../app/racks/racks-query.ts';
import { askRacks, findLocation, runLookedAt } from '../../app/racks/racks-question.ts';
import { makeIndex, makeRun } from '../site-builder.ts';

const NOW = '2026-03-02T06:30:00Z';
const index = makeIndex({ runs: [makeRun(), makeRun({ id: 'b', bays: [], frames: [] })] });
const plain: RacksQuery = {
  lift: PLAIN_LIFT_QUERY,
  run: null,
  row: 1,
  trucks: [],
  view: 'drawing',
  figure: 'most',
};

describe('askRacks', () => {
  it('asks all trucks in site order when none is named', () => {
    expect(askRacks(index, plain, NOW)).toEqual({
      kind: 'asked',
      question: {
        load: { kind: 'stored' },
        trucks: ['reach-1', 'counter-1'],
        context: { operation: 'retrieve', asOf: NOW, operator: null, stock: 'as-is', from: null },
      },
    });
  });

  it('asks about a known load with the trucks named', () => {
    const lift = {
      ...PLAIN_LIFT_QUERY,
      load: { kind: 'known' as const, id: 'drums' },
      operation: 'place' as const,
    };
    const asked = askRacks(index, { ...plain, lift, trucks: ['counter-1'] }, NOW);
    expect(asked).toMatchObject({
      question: { load: { kind: 'one', load: { id: 'drums' } }, trucks: ['counter-1'] },
    });
  });

  it('refuses every name the site does not have, with the nearest', () => {
    const lift = { ...PLAIN_LIFT_QUERY, load: { kind: 'known' as const, id: 'drum' }, operator: 'op-2' };
    const asked = askRacks(index, { ...plain, lift, trucks: ['reach-1', 'reach-9'] }, NOW);
    expect(asked.kind === 'refused' && asked.refused.map(({ path, expected }) => [path, expected])).toEqual([
      ['$.truck', { is: 'id-in', list: 'the trucks of this site', nearest: 'reach-1' }],
      ['$.operator', { is: 'id-in', list: 'the operators of this site', nearest: 'op-1' }],
      ['$.load', { is: 'id-in', list: 'the loads of this site', nearest: 'drums' }],
    ]);
  });
});

describe('runLookedAt', () => {
  const at = (run: string | null, location: string | null) =>
    runLookedAt(index, { ...plain, run, lift: { ...PLAIN_LIFT_QUERY, location } });
  it('is the run named', () => expect(at('b', 'a1-0-1')).toBe('b'));
  it('is the run of the location when none is named', () => expect(at(null, 'a1-0-1')).toBe('a'));
  it('is the first run when the address names none that there is', () => expect(at('zz', 'zz')).toBe('a'));
  it('is none in a site without runs', () => expect(runLookedAt(makeIndex({ runs: [] }), plain)).toBeNull());
});

describe('findLocation', () => {
  it.each([
    { words: 'A2-1-2', id: 'a2-1-2' },
    { words: 'a2', id: 'a2-0-1' },
    { words: '-2-2', id: 'a1-2-2' },
    { words: 'zz', id: null },
    { words: ' ', id: null },
  ])('finds $id for "$words"', ({ words, id }) => expect(findLocation(index, words)).toBe(id));
});
