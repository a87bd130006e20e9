'use client';

import entryStyles from '@/app/_entry/entry.module.css';
import { type FaultOf, MeasureEntry, TextEntry } from '@/app/_entry/fields.tsx';
import styles from '@/app/loads/_entry/load-entry.module.css';
import { blankItem, type ItemDraft, type LoadDraft } from '@/lib/entry/load-draft.ts';
import { MASS_BASES, type MassBasis } from '@/lib/model/policy.ts';
import { BASIS_MEANINGS, ITEMS_MEANING, MASS_FROM_WORDS } from '@/lib/words/entry.ts';

type Props = { draft: LoadDraft; fault: FaultOf; onChange: (draft: LoadDraft) => void };

/** How the mass is known: from scales, told, calculated elsewhere, or added up here from items and pallet. */
export function MassPart({ draft, fault, onChange }: Props) {
  return (
    <>
      <fieldset className={entryStyles.choices}>
        <legend>How is its mass known?</legend>
        {MASS_BASES.map((basis) => (
          <Way
            key={basis}
            words={MASS_FROM_WORDS[basis]}
            meaning={BASIS_MEANINGS[basis]}
            isChosen={draft.massFrom === 'stated' && draft.massBasis === basis}
            onChoose={() => onChange({ ...draft, massFrom: 'stated', massBasis: basis as MassBasis })}
          />
        ))}
        <Way
          words="From its items and pallet"
          meaning={ITEMS_MEANING}
          isChosen={draft.massFrom === 'items'}
          onChoose={() => onChange({ ...draft, massFrom: 'items', massBasis: 'calculated' })}
        />
      </fieldset>
      {draft.massFrom === 'stated' ? (
        <div className={entryStyles.fields}>
          <MeasureEntry
            field="grossKg"
            label="Gross mass, pallet included"
            of="mass"
            fault={fault}
            note="Empty: not known. Then no lift of it is proven"
            value={draft.measures.grossKg}
            onChange={(grossKg) => onChange({ ...draft, measures: { ...draft.measures, grossKg } })}
          />
        </div>
      ) : null}
      <Items draft={draft} fault={fault} onChange={onChange} />
    </>
  );
}

function Way({
  words,
  meaning,
  isChosen,
  onChoose,
}: {
  words: string;
  meaning: string;
  isChosen: boolean;
  onChoose: () => void;
}) {
  return (
    <label className={entryStyles.option}>
      <input type="radio" name="mass-from" checked={isChosen} onChange={onChoose} />
      <span>
        {words} <span className={`soft dense ${entryStyles.meaning}`}>{meaning}</span>
      </span>
    </label>
  );
}

function Items({ draft, fault, onChange }: Props) {
  const put = (at: number, item: ItemDraft) => onChange({ ...draft, items: draft.items.with(at, item) });
  return (
    <div className="stack">
      <h3>Items{draft.massFrom === 'items' ? '' : ', for the record: the stated mass counts'}</h3>
      {draft.items.length === 0 ? <p className="soft">None listed.</p> : null}
      <ul className={styles.items}>
        {draft.items.map((item, at) => (
          <li key={item.key} className={styles.item}>
            <TextEntry
              field={`items.${at}.name`}
              label={`Item ${at + 1}`}
              fault={fault}
              value={item.name}
              onChange={(name) => put(at, { ...item, name })}
            />
            <MeasureEntry
              field={`items.${at}.massKg`}
              label="One weighs"
              of="mass"
              fault={fault}
              value={item.mass}
              onChange={(mass) => put(at, { ...item, mass })}
            />
            <MeasureEntry
              field={`items.${at}.count`}
              label="How many"
              of="number"
              fault={fault}
              value={item.count}
              onChange={(count) => put(at, { ...item, count })}
            />
            <button type="button" onClick={() => onChange({ ...draft, items: draft.items.toSpliced(at, 1) })}>
              Take out<span className="unseen"> item {at + 1}</span>
            </button>
          </li>
        ))}
      </ul>
      <div>
        <button
          type="button"
          onClick={() => onChange({ ...draft, items: [...draft.items, blankItem(draft.items)] })}
        >
          Add an item
        </button>
      </div>
    </div>
  );
}
