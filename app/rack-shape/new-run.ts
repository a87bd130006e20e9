import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import type { LevelShape, RunDescription } from '@/lib/rack-shape/description.ts';
import { labelsOf, plainLabels } from '@/lib/rack-shape/guess-labels.ts';
import type { Neighbours } from '@/lib/rack-shape/neighbours.ts';
import { copyRun, type NewName } from '@/lib/rack-shape/renumber-run.ts';
import type { Shaped } from '@/lib/rack-shape/shape-fault.ts';
import { shapeRun } from '@/lib/rack-shape/shape-run.ts';

/** A new run as it is being typed. */
export type NewRun =
  | { kind: 'described'; description: RunDescription }
  | ({ kind: 'copy'; of: Run } & NewName);

export function shapeNew(typed: NewRun, neighbours: Neighbours): Shaped<Run> {
  return typed.kind === 'copy'
    ? copyRun(typed.of, typed, neighbours)
    : shapeRun(typed.description, neighbours);
}

/** What the form begins with: a copy under the next free side, or a run to type over whose capacities are not known. */
export function firstDescription(site: Site, copyOf: Run | null): NewRun {
  const aisleId = copyOf?.aisleId ?? site.aisles[0]?.id ?? '';
  const side = freeSide(site, aisleId);
  const id = `${aisleId}-${side}`;
  if (copyOf !== null) {
    const labels = { ...labelsOf(copyOf), aisle: aisleId, side };
    return { kind: 'copy', of: copyOf, id, aisleId, labels };
  }
  return {
    kind: 'described',
    description: {
      id,
      aisleId,
      frameDepthMm: 1100,
      bayCount: 6,
      clearWidthsMm: [2700],
      frameTypeId: site.frameTypes[0]?.id ?? '',
      endFrameTypeId: null,
      maxBayLoadKg: null,
      floor: { positions: 3, depthPositions: 1 },
      levels: [1500, 3000].map(beginningLevel),
      labels: plainLabels(aisleId, side),
    },
  };
}

function beginningLevel(beamTopMm: number): LevelShape {
  return {
    beamTopMm,
    beamHeightMm: 120,
    pairCapacityKg: null,
    maxUnitKg: null,
    decked: false,
    depthPositions: 1,
    positions: 3,
  };
}

const SIDES = 'LRABCDEFGHIJKMNOPQSTUVWXYZ';

function freeSide(site: Site, aisleId: string): string {
  const taken = new Set(site.runs.map((run) => run.id));
  return [...SIDES].find((side) => !taken.has(`${aisleId}-${side}`)) ?? 'new';
}
