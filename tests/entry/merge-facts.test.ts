import { describe, expect, it } from 'vitest';
import {
  fieldsToMerge,
  LOAD_FIELDS,
  mergeFacts,
  TRUCK_FIELDS,
  valueAt,
} from '../../lib/entry/merge-facts.ts';
import { loadSchema } from '../../lib/model/load.ts';
import { type Truck, truckSchema } from '../../lib/model/truck.ts';
import { makeTruck } from '../site-builder.ts';

const base: Truck = makeTruck();
const mine: Truck = {
  ...base,
  name: 'Mine',
  maxLiftMm: 7000,
  plate: { ...base.plate, verticalLoadCentreMm: 700 },
};
const theirs: Truck = { ...base, name: 'Theirs', loweredMm: 2200, maxLiftMm: 7000 };

describe('two changes of one fact', () => {
  it('are asked about where they differ: by both, by one; not where both made it alike', () => {
    expect(fieldsToMerge(TRUCK_FIELDS, { base, mine, theirs })).toEqual([
      { path: 'name', changedBy: 'both' },
      { path: 'loweredMm', changedBy: 'theirs' },
      { path: 'plate.verticalLoadCentreMm', changedBy: 'mine' },
    ]);
  });

  it('become one fact field by field', () => {
    const chosen = new Map([
      ['name', 'theirs'],
      ['loweredMm', 'theirs'],
      ['plate.verticalLoadCentreMm', 'mine'],
    ] as const);
    expect(mergeFacts({ mine, theirs }, chosen)).toEqual({
      ...theirs,
      plate: { ...base.plate, verticalLoadCentreMm: 700 },
    });
    expect(mergeFacts({ mine, theirs }, new Map())).toEqual(theirs);
  });

  it.each([
    ['truck', TRUCK_FIELDS, Object.keys(truckSchema.shape)],
    ['load', LOAD_FIELDS, Object.keys(loadSchema.shape)],
  ])('can be told apart in every field of a %s but its id', (_noun, fields, keys) => {
    const covered = new Set(fields.map((path) => path.split('.')[0]));
    expect([...covered].sort()).toEqual(keys.filter((key) => key !== 'id').sort());
    expect(fields.filter((path) => path.startsWith('plate')).sort()).toEqual(
      _noun === 'truck' ? ['plate.ratings', 'plate.verticalLoadCentreMm'] : [],
    );
  });

  it('reads a nested value', () => {
    expect(valueAt(base, 'plate.verticalLoadCentreMm')).toBe(600);
  });
});
