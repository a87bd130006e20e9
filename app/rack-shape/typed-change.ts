import type { Condition, Run } from '@/lib/model/racking.ts';
import type { Typed } from '@/lib/rack-shape/description.ts';
import { labelsOf } from '@/lib/rack-shape/guess-labels.ts';
import type { LabelPattern } from '@/lib/rack-shape/label-pattern.ts';
import type { LevelFacts, RunChange, RunChangeKind } from '@/lib/rack-shape/run-change.ts';
import type { ShapeRefusal } from '@/lib/rack-shape/shape-fault.ts';

/** Whatever a change may be told by, as it is typed: one form for all kinds, so that a switch between them loses nothing. */
export type TypedChange = {
  kind: RunChangeKind;
  first: number;
  last: number;
  level: number;
  beamTopMm: Typed;
  beamHeightMm: Typed;
  pairCapacityKg: Typed;
  isPairNotKnown: boolean;
  maxUnitKg: Typed;
  isUnitNotStated: boolean;
  decking: 'as-it-is' | 'decked' | 'not-decked';
  clearWidthMm: Typed;
  maxBayLoadKg: Typed;
  isBayLoadNotStated: boolean;
  condition: Condition;
  typeId: string;
  before: number;
  like: number;
  name: string;
  leftMm: Typed;
  rightMm: Typed;
  leftColumns: Typed;
  id: string;
  aisleId: string;
  labels: LabelPattern;
};

/** The form before anything is typed: all bays of the run, its lowest beam, its own ids. */
export function plainChange(run: Run, kind: RunChangeKind): TypedChange {
  const inspects = kind === 'frame-condition' || kind === 'frame-type';
  const last = run.bays.length - 1;
  return {
    kind,
    first: kind === 'remove-bays' ? last : 0,
    last: inspects ? run.frames.length - 1 : last,
    level: run.bays[0]?.levels.find((level) => level.level > 0)?.level ?? 0,
    beamTopMm: null,
    beamHeightMm: null,
    pairCapacityKg: null,
    isPairNotKnown: false,
    maxUnitKg: null,
    isUnitNotStated: false,
    decking: 'as-it-is',
    clearWidthMm: null,
    maxBayLoadKg: null,
    isBayLoadNotStated: false,
    condition: 'amber',
    typeId: '',
    before: run.bays.length,
    like: last,
    name: '',
    leftMm: null,
    rightMm: null,
    leftColumns: 1,
    id: run.id,
    aisleId: run.aisleId,
    labels: labelsOf(run),
  };
}

export type ReadChange =
  | { state: 'ready'; change: RunChange }
  | { state: 'incomplete'; refusals: ShapeRefusal[] };

/** The change that was typed, or what of it is still missing or cannot be read. */
export function readChange(typed: TypedChange): ReadChange {
  const { kind, first, last, level } = typed;
  const range = { first, last };
  const read = reader(typed);
  const change = (): RunChange | null => {
    switch (kind) {
      case 'move-beam':
        return { kind, range, level, beamTopMm: read.needed('beamTopMm') };
      case 'level-facts': {
        const facts = read.levelFacts();
        return Object.keys(facts).length === 0 ? null : { kind, range, level, facts };
      }
      case 'add-level':
        return {
          kind,
          range,
          beamTopMm: read.needed('beamTopMm'),
          facts: {
            beamHeightMm: read.needed('beamHeightMm'),
            pairCapacityKg: read.optional('pairCapacityKg'),
            maxUnitKg: read.optional('maxUnitKg'),
            decked: typed.decking === 'decked',
          },
          labels: typed.labels,
        };
      case 'remove-level':
        return { kind, range, level };
      case 'bay-facts': {
        const clearWidthMm = read.optional('clearWidthMm');
        const maxBayLoadKg = read.optional('maxBayLoadKg');
        const facts = {
          ...(clearWidthMm === null ? {} : { clearWidthMm }),
          ...(typed.isBayLoadNotStated
            ? { maxBayLoadKg: null }
            : maxBayLoadKg === null
              ? {}
              : { maxBayLoadKg }),
        };
        return Object.keys(facts).length === 0 ? null : { kind, range, facts };
      }
      case 'level-condition':
        return { kind, range, level, condition: typed.condition };
      case 'frame-condition':
        return { kind, range, condition: typed.condition };
      case 'frame-type':
        return typed.typeId === '' ? null : { kind, range, typeId: typed.typeId };
      case 'insert-bay': {
        if (typed.name.trim() === '') read.missing('name');
        const { before, like, name, labels } = typed;
        return { kind, before, like, clearWidthMm: read.needed('clearWidthMm'), name, labels };
      }
      case 'split-bay':
        if (typed.name.trim() === '') read.missing('name');
        return {
          kind,
          bay: first,
          leftMm: read.needed('leftMm'),
          rightMm: read.needed('rightMm'),
          leftColumns: read.needed('leftColumns'),
          name: typed.name,
        };
      case 'remove-bays':
        return { kind, range };
      case 'renumber':
        return { kind, id: typed.id.trim(), aisleId: typed.aisleId, labels: typed.labels };
      default:
        return kind satisfies never;
    }
  };
  const made = change();
  if (made === null || read.refusals.length > 0) return { state: 'incomplete', refusals: read.refusals };
  return { state: 'ready', change: made };
}

type Figure =
  | 'beamTopMm'
  | 'beamHeightMm'
  | 'pairCapacityKg'
  | 'maxUnitKg'
  | 'clearWidthMm'
  | 'maxBayLoadKg'
  | 'leftMm'
  | 'rightMm'
  | 'leftColumns';

function reader(typed: TypedChange) {
  const refusals: ShapeRefusal[] = [];
  const missing = (field: string) => refusals.push({ field, fault: { is: 'missing' } });
  const optional = (field: Figure): number | null => {
    const value = typed[field];
    if (value !== 'unread') return value;
    refusals.push({ field, fault: { is: 'not-read' } });
    return null;
  };
  const needed = (field: Figure): number => {
    if (typed[field] === null) missing(field);
    return optional(field) ?? 0;
  };
  const levelFacts = (): Partial<LevelFacts> => {
    const [beamHeightMm, pairCapacityKg, maxUnitKg] = [
      optional('beamHeightMm'),
      optional('pairCapacityKg'),
      optional('maxUnitKg'),
    ];
    return {
      ...(beamHeightMm === null ? {} : { beamHeightMm }),
      ...(typed.isPairNotKnown
        ? { pairCapacityKg: null }
        : pairCapacityKg === null
          ? {}
          : { pairCapacityKg }),
      ...(typed.isUnitNotStated ? { maxUnitKg: null } : maxUnitKg === null ? {} : { maxUnitKg }),
      ...(typed.decking === 'as-it-is' ? {} : { decked: typed.decking === 'decked' }),
    };
  };
  return { refusals, missing, optional, needed, levelFacts };
}
