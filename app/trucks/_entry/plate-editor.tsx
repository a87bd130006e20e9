'use client';

import { useId, useState } from 'react';
import { ChoiceEntry, type FaultOf, TextEntry } from '@/app/_entry/fields.tsx';
import { PlateGridEditor } from '@/app/trucks/_entry/plate-grid-editor.tsx';
import { blankBlock, type PlateBlock, type PlateDraft } from '@/lib/entry/plate-draft.ts';
import styles from './plate-editor.module.css';

const MAST_CHOICES = [
  ['vertical', 'Vertical'],
  ['forward-tilt', 'Tilted forward'],
] as const;

/** All grids of a plate: one for each mast position and attachment that the plate states. */
export function PlateEditor({
  plate,
  attachments,
  fault,
  onChange,
}: {
  plate: PlateDraft;
  /** What the trucks of the site have, to choose from. */
  attachments: readonly string[];
  fault: FaultOf;
  onChange: (plate: PlateDraft) => void;
}) {
  const id = useId();
  const [added, setAdded] = useState<number | null>(null);
  const add = () => {
    const isTilt = plate.some(({ mast, attachment }) => mast === 'vertical' && attachment === null);
    const last = plate.at(-1);
    const block = blankBlock(
      plate,
      { mast: isTilt ? 'forward-tilt' : 'vertical', attachment: null },
      last?.rows.length,
      last?.loadCentres.length,
    );
    setAdded(block.key);
    onChange([...plate, block]);
  };
  return (
    <div className="stack">
      {plate.length === 0 ? <p className={styles.none}>The plate states nothing yet.</p> : null}
      {plate.map((block, at) => (
        <section key={block.key} className={styles.block} aria-labelledby={`${id}-${block.key}`}>
          <h3 id={`${id}-${block.key}`}>{blockName(block)}</h3>
          <div className={styles.kinds}>
            <ChoiceEntry
              field={`plate.${at}.mast`}
              label="Mast"
              fault={fault}
              value={block.mast}
              choices={MAST_CHOICES}
              onChange={(mast) => onChange(plate.with(at, { ...block, mast: mast || 'vertical' }))}
            />
            <TextEntry
              field={`plate.${at}.attachment`}
              label="Attachment"
              fault={fault}
              note="Empty: the forks alone"
              value={block.attachment ?? ''}
              suggestions={attachments}
              onChange={(text) =>
                onChange(plate.with(at, { ...block, attachment: text.trim() === '' ? null : text }))
              }
            />
          </div>
          <PlateGridEditor
            block={block}
            at={at}
            name={blockName(block)}
            fault={fault}
            onChange={(changed) => onChange(plate.with(at, changed))}
            onTakeOut={() => onChange(plate.toSpliced(at, 1))}
          />
        </section>
      ))}
      <div>
        <button type="button" onClick={add}>
          {plate.length === 0 ? 'Add a grid' : 'Add a grid for another mast position or attachment'}
        </button>
        <span className="unseen" role="status">
          {plate.some(({ key }) => key === added) ? 'A grid was added' : ''}
        </span>
      </div>
      <p className="soft dense">
        An empty cell states nothing. Arrow keys and Enter move between cells; a block copied from a
        spreadsheet is pasted where the cursor stands, with its headings where it has them.
      </p>
    </div>
  );
}

function blockName({ mast, attachment }: PlateBlock): string {
  return `Mast ${mast === 'vertical' ? 'vertical' : 'tilted forward'}, ${attachment ?? 'forks'}`;
}
