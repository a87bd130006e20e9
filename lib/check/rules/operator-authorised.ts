import { instantMs } from '../../model/quantities.ts';
import { found } from '../../model/site-index.ts';
import type { LiftCase } from '../lift-case.ts';
import { origin } from '../origins.ts';
import { notApplicable, type RuleAnswer } from '../rule-answer.ts';

/**
 * May the named operator drive this kind of truck at asOf?
 *
 * Needs an authorisation for truck.kind that has not ended: any one of several will do. Expiry is judged only when
 * asOf is given. Equality: one that ends exactly at asOf still counts. Not asked when nobody is named.
 * Throws when the operator is not one of the site's. Source: training and authorisation by kind (OSHA 1910.178(l)).
 */
export function checkOperatorAuthorised(lift: LiftCase): RuleAnswer {
  const { index, truck, context, asOfMs } = lift;
  if (context.operator === null) return notApplicable('operator-authorised', 'state', 'no-operator-given');
  const operator = found(index.operators, context.operator, 'operator');
  const ofKind = operator.authorisations.filter(({ kind }) => kind === truck.kind);
  const valid = ofKind.some(
    ({ expires }) => expires === null || asOfMs === null || asOfMs <= instantMs(expires),
  );
  const answer = {
    rule: 'operator-authorised',
    unit: 'state',
    need: truck.kind,
    needFrom: [origin('truck', truck.id, 'kind', truck.kind, 'state')],
    haveFrom:
      ofKind.length === 0
        ? [origin('authorisation', operator.id, truck.kind, null, null)]
        : ofKind.map(({ kind, expires }) =>
            origin('authorisation', operator.id, kind, expires ?? 'no end', 'state'),
          ),
  } as const;
  if (valid) return { ...answer, outcome: 'pass', have: 'authorised' };
  return ofKind.length === 0
    ? { ...answer, outcome: 'fail', have: 'not authorised', cause: 'not-authorised' }
    : { ...answer, outcome: 'fail', have: 'authorisation ended', cause: 'authorisation-expired' };
}
