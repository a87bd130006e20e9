import { mostAt, type RacksAnswer, ruleAt, spareAt, truckAt, verdictAt } from '@/app/_parts/racks-answer.ts';
import type { Place } from '@/lib/model/site-index.ts';
import { type DisplayUnits, formatMass } from '@/lib/units/format-quantity.ts';
import { ruleTitle } from '@/lib/words/rule.ts';
import { verdictWord } from '@/lib/words/verdict.ts';

/** A cell in words, as its mark, colour and figure show it: what a screen reader hears while the cursor moves. */
export function locationWords(
  place: Place,
  answer: RacksAnswer | null,
  at: number,
  units: DisplayUnits,
): string {
  const where = `${place.id}: level ${place.level.level}${place.row === 2 ? ', rear row' : ''}`;
  if (answer === null) return `${where}. Not judged yet.`;
  const standing = answer.index.stockAt.get(place.id);
  const stands = standing === undefined ? 'empty' : `${standing.id} ${standing.name} stands here`;
  const verdict = verdictAt(answer, at);
  if (verdict === null) return `${where}, ${stands}. Nothing is asked.`;
  const rule = ruleAt(answer, at);
  const most = mostAt(answer, at);
  const spare = spareAt(answer, at);
  const parts = [
    `${where}, ${stands}`,
    `${verdictWord(verdict)}${rule === null || verdict === 'clear' ? '' : `, decided by: ${ruleTitle(rule)}`}`,
    most === null ? 'most not known' : `most ${formatMass(most, units, 'down')}`,
    spare === null
      ? null
      : spare < 0
        ? `${formatMass(-spare, units, 'up')} too much`
        : `${formatMass(spare, units, 'down')} to spare`,
    answer.trucks.length > 1 ? `best with ${truckAt(answer, at)}` : null,
  ];
  return `${parts.filter((part) => part !== null).join(' · ')}.`;
}
