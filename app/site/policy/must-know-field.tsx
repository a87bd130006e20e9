import { ALWAYS_MUST_KNOW, RULE_IDS, type RuleId } from '@/lib/model/rule-ids.ts';
import { mustStayWords } from '@/lib/words/policy.ts';
import { ruleQuestion, ruleTitle } from '@/lib/words/rule.ts';
import styles from './policy.module.css';

/** Which rules make a lift unproven while their facts are missing. Six stand on a plate or a notice and always do. */
export function MustKnowField({
  value,
  onChange,
}: {
  value: readonly RuleId[];
  onChange: (rules: RuleId[]) => void;
}) {
  return (
    <ul className={styles.rules}>
      {RULE_IDS.map((rule) => {
        const isFixed = ALWAYS_MUST_KNOW.some((fixed) => fixed === rule);
        return (
          <li key={rule}>
            <label>
              <input
                type="checkbox"
                checked={value.includes(rule)}
                disabled={isFixed}
                aria-describedby={`must-${rule}`}
                onChange={({ target }) =>
                  onChange(target.checked ? [...value, rule] : value.filter((other) => other !== rule))
                }
              />
              <span>{ruleTitle(rule)}</span>
            </label>
            <span id={`must-${rule}`} className="soft dense">
              {isFixed ? mustStayWords(rule) : ruleQuestion(rule)}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
