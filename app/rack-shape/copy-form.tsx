'use client';

import { ChoiceField, WordField } from '@/app/rack-shape/choice-field.tsx';
import { LabelFields } from '@/app/rack-shape/label-fields.tsx';
import type { Site } from '@/lib/model/site.ts';
import type { NewName } from '@/lib/rack-shape/renumber-run.ts';
import styles from './rack-shape.module.css';

/** Where a copy stands and what it is called; its steel is that of the run it is a copy of, sound and empty. */
export function CopyForm({
  site,
  copy,
  onChange,
  faultOf,
}: {
  site: Site;
  copy: NewName;
  onChange: (part: Partial<NewName>, step: string | null) => void;
  faultOf: (field: string) => string | null;
}) {
  return (
    <>
      <div className={styles.fields}>
        <ChoiceField
          label="Aisle"
          value={copy.aisleId}
          choices={site.aisles.map(({ id }) => ({ value: id, words: id }))}
          fault={faultOf('aisleId')}
          onChange={(aisleId) =>
            onChange(
              { aisleId, id: `${aisleId}-${copy.labels.side}`, labels: { ...copy.labels, aisle: aisleId } },
              null,
            )
          }
        />
        <WordField
          label="Run"
          value={copy.id}
          onChange={(id) => onChange({ id }, 'id')}
          fault={faultOf('id')}
        />
      </div>
      <LabelFields
        labels={copy.labels}
        onChange={(part, step) => onChange({ labels: { ...copy.labels, ...part } }, step)}
        faultOf={faultOf}
      />
    </>
  );
}
