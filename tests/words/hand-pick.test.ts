import { describe, expect, it } from 'vitest';
import { type HandLiftTask, judgeHandLift, MULTIPLIER_IDS } from '../../lib/hand-pick/hand-lift.ts';
import { reliefOf } from '../../lib/hand-pick/relief.ts';
import {
  handLiftSentence,
  handLiftWord,
  indexWords,
  multiplierName,
  multiplierWorking,
  reliefSentence,
} from '../../lib/words/hand-pick.ts';

const TASK: HandLiftTask = {
  massKg: 12,
  horizontalMm: 500,
  handHeightMm: 750,
  travelMm: 100,
  asymmetryDeg: 0,
  liftsPerMinute: 0.2,
  durationHours: 1,
  coupling: 'good',
};
const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('the words of a pick by hand', () => {
  it.each([
    { massKg: 11.5, word: 'Within the limit' },
    { massKg: 11.6, word: 'Above the limit' },
  ])('call $massKg kg against 11.5 kg: $word', ({ massKg, word }) => {
    expect(handLiftWord(judgeHandLift({ ...TASK, massKg }))).toBe(word);
  });

  it('say mass, limit and index in one sentence, the limit rounded down and the index up', () => {
    expect(plain(handLiftSentence(judgeHandLift(TASK), 'metric'))).toBe(
      'The case weighs 12 kg; up to 11.5 kg is recommended: index 1.05.',
    );
  });

  it('name what is outside the bounds instead of an index', () => {
    const lift = judgeHandLift({ ...TASK, horizontalMm: 700 });
    expect(handLiftWord(lift)).toBe('No weight recommended');
    expect(handLiftSentence(lift, 'metric')).toContain('hands out outside the bounds');
  });

  it.each([
    { index: 1, words: '1.00' },
    { index: 1.0000000001, words: '1.00' },
    { index: 1.001, words: '1.01' },
    { index: 0.758, words: '0.76' },
  ])('round the index $index up to $words', ({ index, words }) => {
    expect(indexWords(index)).toBe(words);
  });

  it('say what one change would bring', () => {
    const lift = judgeHandLift(TASK);
    expect(plain(reliefSentence(reliefOf(lift)[0]!, lift, 'metric'))).toBe(
      'Bring the case within 250 mm of the ankles: index 0.53, 23 kg recommended.',
    );
  });

  it('have a name and a working for every multiplier', () => {
    for (const id of MULTIPLIER_IDS) {
      expect(multiplierName(id)).not.toBe('');
      expect(multiplierWorking(id, TASK, 'lb-in')).not.toContain('undefined');
    }
  });
});
