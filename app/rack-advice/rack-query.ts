import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { measureReader, typedText } from '@/app/_parts/typed-measures.ts';
import type { Bay, Run } from '@/lib/model/racking.ts';
import { cameAs, nearestTo, type Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import { DAMAGE_KINDS, type DamageKind } from '@/lib/rack/damage-class.ts';

export type RackQuery = {
  bay: { run: Run; bay: Bay; bayIndex: number } | null;
  /** Second moment of area of one beam. */
  inertiaMm4: number | null;
  /** How far a load's centre is off the middle between the beams, and its mass. */
  offset: { massKg: number; offsetMm: number } | null;
  damage: { kind: DamageKind; bowMm: number; lengthMm: number | null } | null;
  /** Size of a base plate. */
  plate: { plateWidthMm: number; plateDepthMm: number } | null;
  refused: readonly Refusal[];
};

const MM4_PER_CM4 = 10_000;

/**
 * What does this address ask of a bay's steel? bay; inertia (cm4), mass and offset; kind, bow and length of a bend; plate-width and
 * plate-depth of a foot.
 * What cannot be read is refused by name.
 */
export function readRackQuery(index: SiteIndex, raw: RawQuery): RackQuery {
  const { read, refused } = measureReader(raw);
  const id = typedText(raw, 'bay');
  const bay = id === undefined ? null : findBay(index, id);
  if (id !== undefined && bay === null) {
    const ids = index.site.runs.flatMap((run) => run.bays.map((each) => each.id));
    const expected = { is: 'id-in', list: 'the bays of this site', nearest: nearestTo(id, ids) } as const;
    refused.push({ path: '$.bay', came: cameAs(id), expected });
  }
  const above = (name: string, value: number | null) => {
    if (value === 0) refused.push({ path: `$.${name}`, came: '0', expected: { is: 'above', limit: 0 } });
    return value === 0 ? null : value;
  };
  const inertiaCm4 = above('inertia', read('inertia', 'number'));
  const massKg = read('mass', 'mass');
  const offsetMm = read('offset', 'length');
  const bowMm = read('bow', 'length');
  const lengthMm = above('length', read('length', 'length'));
  const plateWidthMm = above('plate-width', read('plate-width', 'length'));
  const plateDepthMm = above('plate-depth', read('plate-depth', 'length'));
  const kindText = typedText(raw, 'kind');
  const kind = DAMAGE_KINDS.find((each) => each === kindText);
  if (kindText !== undefined && kind === undefined) {
    refused.push({
      path: '$.kind',
      came: cameAs(kindText),
      expected: { is: 'one-of', values: DAMAGE_KINDS },
    });
  }
  const reachMm = bay === null ? null : bay.run.frameDepthMm / 2;
  if (reachMm !== null && offsetMm !== null && offsetMm > reachMm) {
    refused.push({ path: '$.offset', came: String(offsetMm), expected: { is: 'at-most', limit: reachMm } });
  }
  const offsetFits = offsetMm !== null && (reachMm === null || offsetMm <= reachMm);
  return {
    bay,
    inertiaMm4: inertiaCm4 === null ? null : inertiaCm4 * MM4_PER_CM4,
    offset: massKg !== null && offsetFits ? { massKg, offsetMm } : null,
    damage: bowMm === null ? null : { kind: kind ?? 'upright-cross-aisle', bowMm, lengthMm },
    plate: plateWidthMm === null || plateDepthMm === null ? null : { plateWidthMm, plateDepthMm },
    refused,
  };
}

function findBay(index: SiteIndex, id: string): RackQuery['bay'] {
  for (const run of index.site.runs) {
    const bayIndex = run.bays.findIndex((bay) => bay.id === id);
    if (bayIndex >= 0) return { run, bay: run.bays[bayIndex]!, bayIndex };
  }
  return null;
}
