import { COUPLINGS } from '../model/load.ts';
import { MASS_BASES } from '../model/policy.ts';
import { CONDITIONS } from '../model/racking.ts';
import { MASTS, POWERS, TRUCK_KINDS } from '../model/truck.ts';

/** The lists that can be imported and exported, in the order in which they lean on one another. */
export const LIST_NAMES = [
  'palletTypes',
  'frameTypes',
  'aisles',
  'docks',
  'locations',
  'trucks',
  'plateRatings',
  'operators',
  'loads',
  'items',
  'stock',
  'checks',
] as const;
export type ListName = (typeof LIST_NAMES)[number];

/** What a cell of a column can say. */
export type FactKind =
  | 'id'
  | 'text'
  | 'texts' // several texts in one cell, parted by semicolons
  | 'length'
  | 'surveyed' // a length, or "none": surveyed, nothing there
  | 'mass'
  | 'number'
  | 'yes-no'
  | 'time'
  | 'choice';

/**
 * One column of a list. `fact` is the path of the fact inside its entry (`turning.outsideRadiusMm`), for locations the
 * name of the fact; `label` is the header that an export writes, without the unit.
 */
export type Fact = {
  fact: string;
  label: string;
  kind: FactKind;
  /** Whether an entry cannot do without it. */
  needed: boolean;
  choices?: readonly string[];
  /** A unit that has no other (m/s, degrees): shown in the header, never converted. */
  fixedUnit?: string;
};

const fact = (name: string, label: string, kind: FactKind, needed = false): Fact => ({
  fact: name,
  label,
  kind,
  needed,
});
const must = (name: string, label: string, kind: FactKind): Fact => fact(name, label, kind, true);
const choice = (name: string, label: string, choices: readonly string[], needed = true): Fact => ({
  ...fact(name, label, 'choice', needed),
  choices,
});
const fixed = (name: string, label: string, fixedUnit: string): Fact => ({
  ...fact(name, label, 'number'),
  fixedUnit,
});

/** The columns of every list, in the order in which an export writes them. */
export const LIST_FACTS: Record<ListName, readonly Fact[]> = {
  palletTypes: [
    must('id', 'Pallet type', 'id'),
    must('depthMm', 'Depth', 'length'),
    must('widthMm', 'Width', 'length'),
    must('tareKg', 'Tare', 'mass'),
    must('entryHeightMm', 'Entry height', 'length'),
  ],
  frameTypes: [
    must('id', 'Frame type', 'id'),
    fact('maxGapMm', 'Largest gap', 'length'),
    fact('capacityKg', 'Frame capacity', 'mass'),
  ],
  aisles: [
    must('id', 'Aisle', 'id'),
    must('clearWidthMm', 'Clear width', 'length'),
    fact('overheadClearMm', 'Overhead clear', 'surveyed'),
    fact('sprinklerMm', 'Sprinkler height', 'surveyed'),
  ],
  docks: [must('id', 'Dock', 'id'), must('xMm', 'X', 'length'), must('yMm', 'Y', 'length')],
  locations: [
    fact('location', 'Location', 'id'),
    must('run', 'Run', 'id'),
    must('aisle', 'Aisle', 'id'),
    fact('bay', 'Bay', 'id'),
    fact('bayOrder', 'Bay number along the run', 'number'),
    fact('level', 'Level', 'number'),
    fact('row', 'Row', 'choice'),
    fact('position', 'Position', 'number'),
    must('beamTopMm', 'Beam top', 'length'),
    must('beamHeightMm', 'Beam height', 'length'),
    fact('pairCapacityKg', 'Pair capacity', 'mass'),
    fact('maxUnitKg', 'Unit load limit', 'mass'),
    must('depthPositions', 'Depth positions', 'number'),
    must('decked', 'Decked', 'yes-no'),
    choice('levelCondition', 'Level condition', CONDITIONS),
    must('bayClearWidthMm', 'Bay clear width', 'length'),
    fact('maxBayLoadKg', 'Bay load limit', 'mass'),
    fact('leftFrame', 'Left frame', 'id'),
    must('leftFrameType', 'Left frame type', 'id'),
    choice('leftFrameCondition', 'Left frame condition', CONDITIONS),
    fact('rightFrame', 'Right frame', 'id'),
    must('rightFrameType', 'Right frame type', 'id'),
    choice('rightFrameCondition', 'Right frame condition', CONDITIONS),
    fact('frameType', 'Frame type of both', 'id'),
    choice('frameCondition', 'Frame condition of both', CONDITIONS, false),
    must('frameDepthMm', 'Frame depth', 'length'),
    fact('at.xMm', 'Run X', 'length'),
    fact('at.yMm', 'Run Y', 'length'),
    fixed('at.headingDeg', 'Run heading', 'deg'),
  ].map((entry) => (entry.fact === 'row' ? { ...entry, choices: ['front', 'rear'] } : entry)),
  trucks: [
    must('id', 'Truck', 'id'),
    must('name', 'Truck name', 'text'),
    choice('kind', 'Kind', TRUCK_KINDS),
    choice('power', 'Power', POWERS),
    must('maxLiftMm', 'Max lift', 'length'),
    fact('loweredMm', 'Mast lowered', 'length'),
    fact('extendedMm', 'Mast extended', 'length'),
    fact('freeLiftMm', 'Free lift', 'length'),
    must('reachDepth', 'Reach depth', 'number'),
    fact('turning.outsideRadiusMm', 'Outside radius', 'length'),
    fact('turning.loadDistanceMm', 'Load distance', 'length'),
    fact('turning.insideOffsetMm', 'Inside offset', 'length'),
    fact('statedAisleMm', 'Stated aisle', 'length'),
    fact('forks.lengthMm', 'Fork length', 'length'),
    fact('forks.armCapacityKg', 'Fork arm capacity', 'mass'),
    fact('forks.armLoadCentreMm', 'Fork arm load centre', 'length'),
    fact('fittedAttachment', 'Fitted attachment', 'text'),
    fact('hold.since', 'Held since', 'time'),
    fact('hold.reason', 'Hold reason', 'text'),
    fixed('speeds.travelMps', 'Travel speed', 'm/s'),
    fixed('speeds.liftMps', 'Lift speed', 'm/s'),
    fact('plate.verticalLoadCentreMm', 'Vertical load centre', 'length'),
  ],
  plateRatings: [
    must('truck', 'Truck', 'id'),
    choice('mast', 'Mast', MASTS),
    fact('attachment', 'Attachment', 'text'),
    must('liftHeightMm', 'Lift height', 'length'),
    must('loadCentreMm', 'Load centre', 'length'),
    must('capacityKg', 'Capacity', 'mass'),
  ],
  operators: [
    must('id', 'Operator', 'id'),
    must('name', 'Operator name', 'text'),
    choice('kind', 'Authorised for', TRUCK_KINDS, false),
    fact('expires', 'Expires', 'time'),
  ],
  loads: [
    must('id', 'Load', 'id'),
    must('name', 'Load name', 'text'),
    fact('palletType', 'Pallet type', 'id'),
    fact('grossKg', 'Gross mass', 'mass'),
    choice('massBasis', 'Mass basis', MASS_BASES),
    must('depthMm', 'Load depth', 'length'),
    must('widthMm', 'Load width', 'length'),
    must('heightMm', 'Load height', 'length'),
    fact('centreFromHeelMm', 'Centre from heel', 'length'),
    fact('centreHeightMm', 'Centre height', 'length'),
    fact('picksPerWeek', 'Picks per week', 'number'),
    fact('group', 'Group', 'text'),
    fact('handPick.massKg', 'Case mass', 'mass'),
    fact('handPick.horizontalMm', 'Case reach', 'length'),
    fact('handPick.gripHeightMm', 'Case grip height', 'length'),
    fact('handPick.destinationHeightMm', 'Case destination height', 'length'),
    fixed('handPick.asymmetryDeg', 'Case asymmetry', 'deg'),
    fact('handPick.liftsPerMinute', 'Case lifts per minute', 'number'),
    fixed('handPick.durationHours', 'Case lifting duration', 'h'),
    choice('handPick.coupling', 'Case coupling', COUPLINGS, false),
  ],
  items: [
    must('load', 'Load', 'id'),
    must('name', 'Item name', 'text'),
    must('massKg', 'Item mass', 'mass'),
    must('count', 'Count', 'number'),
  ],
  stock: [must('location', 'Location', 'id'), must('load', 'Load', 'id')],
  checks: [
    must('truck', 'Truck', 'id'),
    must('at', 'Checked at', 'time'),
    must('by', 'Checked by', 'text'),
    choice('result', 'Result', ['pass', 'fail']),
    fact('defects', 'Defects', 'texts'),
  ],
};

/** The fact of this name in a list; throws for a name that the list does not have (a bug, mappings are read first). */
export function factOf(list: ListName, name: string): Fact {
  const found = LIST_FACTS[list].find((entry) => entry.fact === name);
  if (found === undefined) throw new Error(`the list ${list} has no fact ${name}`);
  return found;
}

/** The header that an export writes over a fact, with its unit: "Beam top (mm)". */
export function exportHeader(entry: Fact): string {
  const unit =
    entry.kind === 'length' || entry.kind === 'surveyed'
      ? 'mm'
      : entry.kind === 'mass'
        ? 'kg'
        : entry.fixedUnit;
  return unit === undefined ? entry.label : `${entry.label} (${unit})`;
}
