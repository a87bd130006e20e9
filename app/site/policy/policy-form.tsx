'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useMemo, useState } from 'react';
import { ChoiceEntry, MeasureEntry } from '@/app/_entry/fields.tsx';
import { useLeaveWarning, useSave } from '@/app/_entry/use-save.ts';
import { useSite } from '@/app/_parts/use-site.ts';
import { saveChangedPolicy } from '@/app/site/policy/actions.ts';
import { ConsequencePart } from '@/app/site/policy/consequence-part.tsx';
import { MustKnowField } from '@/app/site/policy/must-know-field.tsx';
import { PolicyRow } from '@/app/site/policy/policy-row.tsx';
import { usePolicyConsequences } from '@/app/site/policy/use-policy-consequences.ts';
import { CLEARANCE_WORDS, POLICY_FACTS, POLICY_UNITS, TILT_WORDS } from '@/app/site/policy-facts.ts';
import { keptMeasure } from '@/lib/entry/measure.ts';
import {
  fieldValue,
  judgePolicy,
  openPolicy,
  POLICY_FIELDS,
  POLICY_MEASURES,
  type PolicyDraft,
  type PolicyField,
} from '@/lib/entry/policy-draft.ts';
import { CLEARANCE_CLASSES, DEFAULT_POLICY, type Policy, type SitePolicy } from '@/lib/model/policy.ts';
import type { PolicyValue } from '@/lib/store/rows/policy.ts';
import { fieldFaultSentence } from '@/lib/words/entry.ts';
import styles from './policy.module.css';

const KEYS = Object.keys(POLICY_FACTS) as (keyof Policy)[];

/** The whole policy as a form: what it changes is looked at before it can be saved. */
export function PolicyForm({
  own,
  authors,
  revision,
}: {
  own: SitePolicy;
  authors: readonly PolicyValue[];
  revision: number;
}) {
  const router = useRouter();
  const site = useSite(revision);
  const [draft, setDraft] = useState(() => openPolicy(own));
  const { change, policy, faults } = useMemo(() => judgePolicy(own, draft), [own, draft]);
  const of = JSON.stringify(change);
  const isChanged = of !== '{}';
  const { work, ask } = usePolicyConsequences(site.state === 'ready' ? site.index.site : null);
  const isSeen = work.state === 'told' && work.of === of;
  const { outcome, isBusy, isStored, send } = useSave(
    saveChangedPolicy,
    ({ revision: made }) => `/site?saved=${made}`,
  );
  useLeaveWarning(() => isChanged && !isStored.current);

  const put = (part: Partial<PolicyDraft>) => setDraft((before) => ({ ...before, ...part }));
  const fault = (field: string) => {
    const found = faults.get(field);
    return found === undefined ? null : fieldFaultSentence(found);
  };
  const save = (basedOn: number) => {
    const form = new FormData();
    form.set('basedOn', String(basedOn));
    form.set('change', of);
    send(form);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (policy === null) document.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
    else if (isSeen) save(revision);
    else ask(policy, of);
  };
  const standing = openPolicy({});
  const isDefault = (key: keyof Policy) =>
    key === 'clearanceClass' || key === 'tilt'
      ? draft[key] === DEFAULT_POLICY[key]
      : key === 'mustKnow'
        ? draft.mustKnow.toSorted().join() === DEFAULT_POLICY.mustKnow.toSorted().join()
        : fieldsOf(key).every((field) => draft.measures[field].value === fieldValue(DEFAULT_POLICY, field));
  const toDefault = (key: keyof Policy) => {
    if (key === 'clearanceClass' || key === 'tilt' || key === 'mustKnow') put({ [key]: standing[key] });
    else
      put({
        measures: {
          ...draft.measures,
          ...Object.fromEntries(
            fieldsOf(key).map((field) => [field, keptMeasure(fieldValue(DEFAULT_POLICY, field))]),
          ),
        },
      });
  };
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      {KEYS.map((key) => (
        <PolicyRow
          key={key}
          of={key}
          author={authors.find((author) => author.key === key)}
          isChanged={key in change}
          onDefault={isDefault(key) ? null : () => toDefault(key)}
        >
          {key === 'clearanceClass' ? (
            <ChoiceEntry
              field={key}
              label="Class"
              fault={fault}
              value={draft.clearanceClass}
              choices={CLEARANCE_CLASSES.map((value) => [value, CLEARANCE_WORDS[value]])}
              onChange={(value) => value !== '' && put({ clearanceClass: value })}
            />
          ) : key === 'tilt' ? (
            <ChoiceEntry
              field={key}
              label="How loads are carried"
              fault={fault}
              value={draft.tilt}
              choices={(['as-rated', 'mast-kept-vertical'] as const).map((value) => [
                value,
                TILT_WORDS[value],
              ])}
              onChange={(value) => value !== '' && put({ tilt: value })}
            />
          ) : key === 'mustKnow' ? (
            <>
              <MustKnowField value={draft.mustKnow} onChange={(mustKnow) => put({ mustKnow })} />
              {fault(key) === null ? null : <p className="fault">{fault(key)}</p>}
            </>
          ) : (
            fieldsOf(key).map((field) => (
              <MeasureEntry
                key={field}
                field={field}
                label={field.includes('.') ? `On a ${field.split('.')[1]} mass` : 'Value'}
                fault={fault}
                of={POLICY_MEASURES[field]}
                {...(POLICY_UNITS[key] === undefined ? {} : { unit: POLICY_UNITS[key] })}
                value={draft.measures[field]}
                onChange={(value) => put({ measures: { ...draft.measures, [field]: value } })}
              />
            ))
          )}
        </PolicyRow>
      ))}
      <ConsequencePart
        own={own}
        policy={policy}
        change={change}
        faults={faults.size}
        work={site.state === 'failed' && work.state === 'busy' ? site : work}
        isSeen={isSeen}
        isBusy={isBusy}
        outcome={outcome}
        onKeepMine={save}
        onTakeTheirs={() => router.refresh()}
      />
    </form>
  );
}

/** The fields of a measured value: one, or one for each basis of a mass. */
function fieldsOf(key: keyof Policy): PolicyField[] {
  return POLICY_FIELDS.filter((field) => field === key || field.startsWith(`${key}.`));
}
