import type { Condition, Run } from '../model/racking.ts';
import type { LabelPattern } from './label-pattern.ts';

/** Bays of a run by place, both ends included. */
export type BayRange = { first: number; last: number };

export type LevelFacts = {
  beamHeightMm: number;
  pairCapacityKg: number | null;
  maxUnitKg: number | null;
  decked: boolean;
};
export type BayFacts = { clearWidthMm: number; maxBayLoadKg: number | null };

/** One change of a run, as a person states it. A fact that is left out of `facts` stays as it is. */
export type RunChange =
  | { kind: 'move-beam'; range: BayRange; level: number; beamTopMm: number }
  | { kind: 'level-facts'; range: BayRange; level: number; facts: Partial<LevelFacts> }
  | { kind: 'add-level'; range: BayRange; beamTopMm: number; facts: LevelFacts; labels: LabelPattern }
  | { kind: 'remove-level'; range: BayRange; level: number }
  | { kind: 'bay-facts'; range: BayRange; facts: Partial<BayFacts> }
  | { kind: 'level-condition'; range: BayRange; level: number; condition: Condition }
  | { kind: 'frame-condition'; range: BayRange; condition: Condition }
  | { kind: 'frame-type'; range: BayRange; typeId: string }
  | {
      kind: 'insert-bay';
      before: number;
      like: number;
      clearWidthMm: number;
      name: string;
      labels: LabelPattern;
    }
  | { kind: 'split-bay'; bay: number; leftMm: number; rightMm: number; leftColumns: number; name: string }
  | { kind: 'remove-bays'; range: BayRange }
  | { kind: 'renumber'; id: string; aisleId: string; labels: LabelPattern };
export type RunChangeKind = RunChange['kind'];

export type ChangeOf<K extends RunChangeKind> = Extract<RunChange, { kind: K }>;

/** Is this a range of bays of the run? */
export function isRange(run: Run, { first, last }: BayRange): boolean {
  return (
    Number.isInteger(first) && Number.isInteger(last) && 0 <= first && first <= last && last < run.bays.length
  );
}
