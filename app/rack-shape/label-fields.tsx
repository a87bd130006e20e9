'use client';

import { ChoiceField, WordField } from '@/app/rack-shape/choice-field.tsx';
import { TypedField } from '@/app/rack-shape/typed-field.tsx';
import type { Typed } from '@/lib/rack-shape/description.ts';
import type { LabelPattern } from '@/lib/rack-shape/label-pattern.ts';
import styles from './rack-shape.module.css';

const ENDS = [
  { value: 'left', words: 'from the left' },
  { value: 'right', words: 'from the right' },
] as const;

/** How locations are named: the pattern, the words for aisle and side, and how bays, levels and positions are counted. */
export function LabelFields({
  labels,
  onChange,
  faultOf,
}: {
  labels: LabelPattern;
  onChange: (part: Partial<LabelPattern>, step: string) => void;
  faultOf: (field: string) => string | null;
}) {
  const count = (label: string, key: 'bayStart' | 'levelStart' | 'positionStart') => (
    <TypedField
      label={label}
      of="count"
      // a count that is not a number yet stands outside what is allowed, and is refused
      value={Number.isNaN(labels[key]) ? null : labels[key]}
      onChange={(value: Typed) => onChange({ [key]: typeof value === 'number' ? value : Number.NaN }, key)}
      fault={faultOf(`labels.${key}`)}
    />
  );
  return (
    <>
      <WordField
        label="Pattern"
        value={labels.pattern}
        onChange={(pattern) => onChange({ pattern }, 'pattern')}
        fault={faultOf('labels.pattern')}
        note="{aisle} {side} {bay} {level} {position} {row}; {bay:00} two digits, {level:A} letters"
      />
      <div className={styles.fields}>
        <WordField
          label="Aisle in labels"
          value={labels.aisle}
          onChange={(aisle) => onChange({ aisle }, 'aisle')}
        />
        <WordField
          label="Side in labels"
          value={labels.side}
          onChange={(side) => onChange({ side }, 'side')}
        />
        {count('First bay', 'bayStart')}
        <ChoiceField
          label="Count bays by"
          value={String(labels.bayStep) as '1' | '2'}
          choices={[
            { value: '1', words: '1: every number' },
            { value: '2', words: '2: odd or even' },
          ]}
          onChange={(step) => onChange({ bayStep: step === '2' ? 2 : 1 }, 'bayStep')}
        />
        <ChoiceField
          label="Count bays"
          value={labels.bayFrom}
          choices={ENDS}
          onChange={(bayFrom) => onChange({ bayFrom }, 'bayFrom')}
        />
        {count('Floor is level', 'levelStart')}
        {count('First position', 'positionStart')}
        <ChoiceField
          label="Count positions"
          value={labels.positionFrom}
          choices={ENDS}
          onChange={(positionFrom) => onChange({ positionFrom }, 'positionFrom')}
        />
      </div>
    </>
  );
}
