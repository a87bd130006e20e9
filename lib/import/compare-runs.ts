import type { Bay, Run } from '../model/racking.ts';
import { changedFields } from './compare-entries.ts';
import type { Change, Comparison, FieldValue, Subject } from './draft.ts';

type Part = Subject & { facts: readonly (readonly [string, FieldValue])[] };

/** What a run taken in would add or change: the run, its frames, bays, levels and locations, each fact by fact. */
export function compareRuns(before: Run | null, after: Run): Comparison {
  const known = new Map(
    (before === null ? [] : partsOf(before)).map((part) => [`${part.what} ${part.id}`, part]),
  );
  const added: Subject[] = [];
  const changed: Change[] = [];
  let unchanged = 0;
  for (const { what, id, facts } of partsOf(after)) {
    const was = known.get(`${what} ${id}`);
    if (was === undefined) {
      added.push({ what, id });
      continue;
    }
    const fields = changedFields(facts.map(([fact, value], at) => [fact, was.facts[at]![1], value] as const));
    if (fields.length === 0) unchanged++;
    else changed.push({ what, id, fields });
  }
  return { added, changed, unchanged };
}

function partsOf(run: Run): Part[] {
  const runFacts: Part['facts'] = [
    ['aisle', run.aisleId],
    ['frameDepthMm', run.frameDepthMm],
    ['at.xMm', run.at?.xMm ?? null],
    ['at.yMm', run.at?.yMm ?? null],
    ['at.headingDeg', run.at?.headingDeg ?? null],
  ];
  const parts: Part[] = [{ what: 'run', id: run.id, facts: runFacts }];
  for (const [at, frame] of run.frames.entries()) {
    parts.push({
      what: 'frame',
      id: `${run.id} ${at + 1}`,
      facts: [
        ['frame', frame.id],
        ['frameType', frame.typeId],
        ['frameCondition', frame.condition],
      ],
    });
  }
  for (const [at, bay] of run.bays.entries()) parts.push(...partsOfBay(run.id, bay, at + 1));
  return parts;
}

function partsOfBay(run: string, bay: Bay, number: number): Part[] {
  const parts: Part[] = [
    {
      what: 'bay',
      id: `${run} ${bay.id}`,
      facts: [
        ['bayOrder', number],
        ['bayClearWidthMm', bay.clearWidthMm],
        ['maxBayLoadKg', bay.maxBayLoadKg],
      ],
    },
  ];
  for (const level of bay.levels) {
    parts.push({
      what: 'level',
      id: `${run} ${bay.id} ${level.level}`,
      facts: [
        ['beamTopMm', level.beamTopMm],
        ['beamHeightMm', level.beamHeightMm],
        ['pairCapacityKg', level.pairCapacityKg],
        ['maxUnitKg', level.maxUnitKg],
        ['depthPositions', level.depthPositions],
        ['decked', level.decked],
        ['levelCondition', level.condition],
      ],
    });
    const perRow = level.locations.length / level.depthPositions;
    for (const [at, id] of level.locations.entries()) {
      parts.push({
        what: 'location',
        id,
        facts: [
          ['bay', bay.id],
          ['level', level.level],
          ['row', at < perRow ? 'front' : 'rear'],
          ['position', (at < perRow ? at : at - perRow) + 1],
        ],
      });
    }
  }
  return parts;
}
