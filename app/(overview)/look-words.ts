import type { Verdict } from '@/lib/check/step.ts';
import { verdictWord } from '@/lib/words/verdict.ts';
import type { Look } from './overview-query.ts';

export const LOOK_LABELS: Record<Look, string> = {
  trucks: 'Who can take down',
  'take-down': 'Taking down',
  'put-back': 'Putting back',
};

export const LOOK_MEANINGS: Record<Look, string> = {
  trucks: 'How many trucks are clear or thin to take down what stands in each location.',
  'take-down': 'The best truck’s verdict on taking down what stands in each location.',
  'put-back':
    'The best truck’s verdict on putting what stands in each location back there: overloads show here.',
};

/** What a mark stands for in a look: a verdict, or how many trucks there are. */
export function codeWord(verdict: Verdict, look: Look): string {
  if (look !== 'trucks') return verdictWord(verdict);
  switch (verdict) {
    case 'clear':
      return 'Two trucks or more';
    case 'thin':
      return 'One truck only';
    case 'unproven':
      return 'None proven';
    case 'refuse':
      return 'No truck';
  }
}
