'use client';

import { ChoiceField, TickField } from '@/app/rack-shape/choice-field.tsx';
import { TypedField } from '@/app/rack-shape/typed-field.tsx';
import type { LevelShape } from '@/lib/rack-shape/description.ts';
import styles from './rack-shape.module.css';

/** The beam levels of a described run, the lowest first. */
export function LevelRows({
  levels,
  onChange,
  faultOf,
}: {
  levels: readonly LevelShape[];
  onChange: (levels: readonly LevelShape[], step: string | null) => void;
  faultOf: (field: string) => string | null;
}) {
  const top = levels.at(-1);
  const below = levels.at(-2);
  const add = () => {
    const pitch =
      typeof top?.beamTopMm === 'number'
        ? top.beamTopMm - (typeof below?.beamTopMm === 'number' ? below.beamTopMm : 0)
        : 1500;
    const beamTopMm = (typeof top?.beamTopMm === 'number' ? top.beamTopMm : 0) + pitch;
    onChange([...levels, { ...(top ?? FIRST_LEVEL), beamTopMm }], null);
  };
  return (
    <>
      {levels.map((level, at) => {
        const set = (part: Partial<LevelShape>) =>
          onChange(levels.with(at, { ...level, ...part }), `level ${at} ${Object.keys(part)[0]}`);
        const fault = (key: keyof LevelShape) => faultOf(`levels[${at}].${key}`);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a level is its place
          <fieldset key={at} className={styles.level}>
            <legend>Level {at + 1}</legend>
            <div className={styles.fields}>
              <TypedField
                label="Beam top"
                of="length"
                value={level.beamTopMm}
                onChange={(beamTopMm) => set({ beamTopMm })}
                fault={fault('beamTopMm')}
              />
              <TypedField
                label="Beam height"
                of="length"
                value={level.beamHeightMm}
                onChange={(beamHeightMm) => set({ beamHeightMm })}
                fault={fault('beamHeightMm')}
              />
              <TypedField
                label="Pair capacity"
                of="mass"
                value={level.pairCapacityKg}
                onChange={(pairCapacityKg) => set({ pairCapacityKg })}
                fault={fault('pairCapacityKg')}
                note={level.pairCapacityKg === null ? 'not known: no lift is proven' : undefined}
              />
              <TypedField
                label="Unit limit"
                of="mass"
                value={level.maxUnitKg}
                onChange={(maxUnitKg) => set({ maxUnitKg })}
                fault={fault('maxUnitKg')}
                note={level.maxUnitKg === null ? 'the notice states none' : undefined}
              />
              <TypedField
                label="Positions in a row"
                of="count"
                value={level.positions}
                onChange={(positions) => set({ positions })}
                fault={fault('positions')}
              />
              <ChoiceField
                label="Depth"
                value={String(level.depthPositions) as '1' | '2'}
                choices={DEPTHS}
                onChange={(depth) => set({ depthPositions: depth === '2' ? 2 : 1 })}
              />
            </div>
            <div className={styles.spread}>
              <TickField label="Decked" value={level.decked} onChange={(decked) => set({ decked })} />
              <button type="button" onClick={() => onChange(levels.toSpliced(at, 1), null)}>
                Take out level {at + 1}
              </button>
            </div>
          </fieldset>
        );
      })}
      {faultOf('levels') === null ? null : <p className="fault">{faultOf('levels')}</p>}
      <button type="button" onClick={add}>
        Add a beam level
      </button>
    </>
  );
}

export const DEPTHS = [
  { value: '1', words: 'one deep' },
  { value: '2', words: 'two deep' },
] as const;

const FIRST_LEVEL: LevelShape = {
  beamTopMm: 0,
  beamHeightMm: 120,
  pairCapacityKg: null,
  maxUnitKg: null,
  decked: false,
  depthPositions: 1,
  positions: 3,
};
