import { describe, expect, it } from 'vitest';
import { RETEST_YEARS, type RetestRule } from '../../lib/check/walk-round/gas-cylinder.ts';
import { DAMAGE_KINDS } from '../../lib/rack/damage-class.ts';
import { PLUMB_RULES, type PlumbRule } from '../../lib/rack/frame-stability.ts';
import {
  damageAction,
  damageKindWords,
  loadingWords,
  plumbWords,
  stabilityWords,
} from '../../lib/words/rack-advice.ts';
import { chainStateWords, forkArmFaultWords, retestRuleWords } from '../../lib/words/wear.ts';

describe('the words of rack and wear advice', () => {
  it('say different things of different things', () => {
    const said = [
      ...DAMAGE_KINDS.map(damageKindWords),
      ...(['green', 'amber', 'red'] as const).map(damageAction),
      ...(['normal-anchors', 'stronger-anchors', 'ties-or-certified-anchors'] as const).map(stabilityWords),
      ...(Object.keys(PLUMB_RULES) as PlumbRule[]).map(plumbWords),
      ...(['uniform', 'central-point', 'third-points'] as const).map(loadingWords),
      ...(['good', 'plan-replacement', 'replace'] as const).map(chainStateWords),
      ...(Object.keys(RETEST_YEARS) as RetestRule[]).map(retestRuleWords),
    ];
    expect(new Set(said).size).toBe(said.length);
  });

  it('give what was measured and its limit for each fault of a fork arm', () => {
    expect(forkArmFaultWords({ what: 'tips', measured: 36.1, limit: 36, unit: 'mm' })).toBe(
      'tips at different heights: 36.1 mm, limit 36 mm',
    );
    expect(forkArmFaultWords({ what: 'angle', measured: 94, limit: 93, unit: 'deg' })).toContain('94 °');
  });
});
