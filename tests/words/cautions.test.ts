import { describe, expect, it } from 'vitest';
import { VERDICTS } from '../../lib/check/step.ts';
import { cautions, STANDING_CAUTIONS } from '../../lib/words/cautions.ts';
import { outcomeWord, VERDICT_MARKS, verdictWord } from '../../lib/words/verdict.ts';
import { answerTo } from '../check/judge.ts';
import { makeContext, makeFrame, makeLoad, makeRun, makeTruck } from '../site-builder.ts';

const named = makeContext({ asOf: '2026-03-02T10:00:00Z', operator: 'op-1' });

describe('cautions', () => {
  it('always end with what governs, and say nothing more of a lift fully judged', () => {
    expect(cautions(answerTo({ context: named }), named, 'weighed')).toEqual(STANDING_CAUTIONS);
  });

  it('say what was not judged', () => {
    const context = makeContext({ stock: 'empty' });
    const said = cautions(answerTo({ context }), context, 'weighed').join(' ');
    expect(said).toContain('No time was given');
    expect(said).toContain('Nobody was named');
    expect(said).toContain('taken as empty');
  });

  it('name the rules that stayed unknown beside a clear verdict, one or several', () => {
    const one = makeTruck({ forks: { lengthMm: null, armCapacityKg: 1000, armLoadCentreMm: 600 } });
    const two = makeTruck({ forks: { lengthMm: null, armCapacityKg: null, armLoadCentreMm: null } });
    expect(cautions(answerTo({ truck: one, context: named }), named, 'weighed')[0]).toBe(
      'One rule could not be judged and did not decide: Fork length.',
    );
    expect(cautions(answerTo({ truck: two, context: named }), named, 'weighed')[0]).toBe(
      '2 rules could not be judged and did not decide: Fork length, Fork arms.',
    );
  });

  it('warn of red steel when taking down', () => {
    const context = makeContext({ ...named, operation: 'retrieve' });
    const frames = ['a-f1', 'a-f2', 'a-f3'].map((id) => makeFrame({ id, condition: 'red' }));
    const answer = answerTo({ context, site: { runs: [makeRun({ frames })] } });
    expect(cautions(answer, context, 'weighed')[0]).toBe('Red steel: take down only, and keep it empty.');
  });

  it('ask for a declared mass to be weighed where the margin is thin', () => {
    const load = makeLoad({ grossKg: 1000, massBasis: 'declared' }); // 1100 kg of 1200 kg
    expect(cautions(answerTo({ load, context: named }), named, 'declared')[0]).toBe(
      'The mass is declared, not weighed. The margin is thin: weigh it before lifting.',
    );
    expect(cautions(answerTo({ load: makeLoad({ grossKg: null }), context: named }), named, null)[0]).toBe(
      "The load's mass is not known: weigh it.",
    );
  });
});

describe('a verdict', () => {
  it('has a word and a mark of its own', () => {
    expect(new Set(VERDICTS.map(verdictWord)).size).toBe(VERDICTS.length);
    expect(new Set(Object.values(VERDICT_MARKS)).size).toBe(VERDICTS.length);
    expect(outcomeWord('not-applicable')).toBe('Not asked');
  });
});
