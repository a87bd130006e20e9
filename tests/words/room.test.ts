import { describe, expect, it } from 'vitest';
import { THIN_SPACE } from '../../lib/units/format-quantity.ts';
import { answerSentence } from '../../lib/words/answer.ts';
import { originSentence } from '../../lib/words/origin.ts';
import { answerLead, governingLead } from '../../lib/words/room.ts';
import { answerTo } from '../check/judge.ts';
import { makeLoad } from '../site-builder.ts';

const plain = (text: string) => text.replaceAll(THIN_SPACE, ' ');

describe('what a reader is told first', () => {
  it('of a clear lift is what is left and whose limit it is; what governs stays as it is', () => {
    const answer = answerTo();
    expect(answer).toMatchObject({ verdict: 'clear', governing: 'depth-reach' });
    const { title, sentence } = answerLead(answer, 'metric');
    expect(plain(title)).toBe('1 200 kg at most here: unit load on the notice');
    expect(plain(sentence)).toBe('This load leaves 400 kg of it.');
    expect(governingLead(answer, 'metric').title).toBe('Reach in depth');
    expect(plain(answerSentence(answer, 'metric'))).toBe(
      'Clear. 1 200 kg at most here: unit load on the notice. This load leaves 400 kg of it.',
    );
  });

  it.each([
    { grossKg: 1080, verdict: 'clear', title: '1 200 kg at most here: unit load on the notice' },
    { grossKg: 1081, verdict: 'thin', title: 'Unit load' },
    { grossKg: 1201, verdict: 'refuse', title: 'Unit load' },
    { grossKg: null, verdict: 'unproven', title: 'Capacity plate' },
  ])('with $grossKg kg ($verdict) is "$title"', ({ grossKg, verdict, title }) => {
    const answer = answerTo({ load: makeLoad({ grossKg }) });
    expect(answer.verdict).toBe(verdict);
    expect(plain(answerLead(answer, 'metric').title)).toBe(title);
  });
});

describe('the items of a load', () => {
  const item = {
    of: 'load',
    subject: 'L-1',
    field: 'items[0] tile 300 x 600 x 31',
    value: 744,
    unit: 'kg',
  } as const;

  it('are multiplied out', () => {
    expect(plain(originSentence(item, 'metric'))).toBe(
      'Load facts, L-1: tile 300 x 600, 31 x 24 kg = 744 kg',
    );
  });

  it('keep their kilograms in pounds, where the product alone is exact', () => {
    // 744 kg / 0.45359237 = 1640.24 lb, shown rounded up as every need is
    expect(plain(originSentence(item, 'lb-in'))).toBe(
      'Load facts, L-1: tile 300 x 600, 31 x 24 kg = 744 kg (1 641 lb)',
    );
  });
});
