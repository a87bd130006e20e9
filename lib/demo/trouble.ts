import type { Condition } from '../model/racking.ts';

export type Trouble =
  | { kind: 'overloaded-beam'; bay: string; level: number; load: string }
  | { kind: 'overloaded-bay'; bay: string; load: string; maxBayLoadKg: number }
  | {
      kind: 'overloaded-frame';
      bays: readonly [string, string];
      frame: string;
      frameType: string;
      load: string;
    }
  | { kind: 'stranded'; location: string; load: string; evenIfAllWereFit: boolean }
  | { kind: 'one-truck'; location: string; load: string; truck: string }
  | { kind: 'too-tall'; location: string; load: string }
  | { kind: 'unknown-mass'; location: string; load: string }
  | { kind: 'unplaceable'; load: string }
  | { kind: 'damaged-frame'; frame: string; condition: Condition }
  | { kind: 'damaged-level'; bay: string; level: number; condition: Condition }
  | { kind: 'pair-capacity-missing'; bay: string; level: number }
  | { kind: 'gap-beyond-ratings'; bay: string; level: number; beamTopMm: number }
  | { kind: 'aisle-not-surveyed'; aisle: string }
  | { kind: 'no-turning-data'; truck: string }
  | { kind: 'plate-short'; truck: string }
  | { kind: 'truck-unfit'; truck: string; why: 'held' | 'check-failed' | 'never-checked' | 'check-too-old' };

export const TROUBLE: readonly Trouble[] = [
  { kind: 'overloaded-beam', bay: 'A5-L-03', level: 2, load: 'ODD-02' },
  { kind: 'overloaded-beam', bay: 'A5-R-09', level: 1, load: 'ODD-02' },
  { kind: 'overloaded-bay', bay: 'A4-L-11', load: 'ODD-01', maxBayLoadKg: 8000 },
  {
    kind: 'overloaded-frame',
    bays: ['A3-R-12', 'A3-R-13'],
    frame: 'A3-R-F12',
    frameType: 'UF-90',
    load: 'ODD-01',
  },
  { kind: 'stranded', location: 'A6-L-04-6-2', load: 'ODD-03', evenIfAllWereFit: false },
  { kind: 'stranded', location: 'A5-R-06-4-5', load: 'ODD-04', evenIfAllWereFit: true },
  { kind: 'stranded', location: 'A3-L-14-5-1', load: 'ODD-04', evenIfAllWereFit: true },
  { kind: 'one-truck', location: 'A2-L-02-0-1', load: 'ODD-05', truck: 'CB-2' },
  { kind: 'one-truck', location: 'A2-R-05-1-2', load: 'ODD-05', truck: 'CB-2' },
  { kind: 'one-truck', location: 'A1-R-07-2-1', load: 'ODD-06', truck: 'CB-2' },
  { kind: 'too-tall', location: 'A6-R-10-3-1', load: 'ODD-07' },
  { kind: 'too-tall', location: 'A6-L-13-2-3', load: 'ODD-07' },
  { kind: 'unknown-mass', location: 'A4-R-05-1-2', load: 'ODD-11' },
  { kind: 'unknown-mass', location: 'A8-L-02-1-1', load: 'ODD-12' },
  { kind: 'unknown-mass', location: 'A8-R-04-0-1', load: 'ODD-11' },
  { kind: 'unplaceable', load: 'ODD-08' },
  { kind: 'unplaceable', load: 'ODD-09' },
  { kind: 'unplaceable', load: 'ODD-10' },
  { kind: 'damaged-frame', frame: 'A3-R-F05', condition: 'amber' },
  { kind: 'damaged-frame', frame: 'A1-R-F03', condition: 'red' },
  { kind: 'damaged-level', bay: 'A4-L-04', level: 3, condition: 'red' },
  { kind: 'damaged-level', bay: 'A7-R-08', level: 2, condition: 'amber' },
  { kind: 'pair-capacity-missing', bay: 'A4-R-10', level: 2 },
  { kind: 'gap-beyond-ratings', bay: 'A8-R-01', level: 1, beamTopMm: 2300 },
  { kind: 'aisle-not-surveyed', aisle: 'A8' },
  { kind: 'no-turning-data', truck: 'CB-4' },
  { kind: 'plate-short', truck: 'RT-3' },
  { kind: 'truck-unfit', truck: 'NA-3', why: 'held' },
  { kind: 'truck-unfit', truck: 'CB-4', why: 'check-failed' },
  { kind: 'truck-unfit', truck: 'SK-2', why: 'never-checked' },
  { kind: 'truck-unfit', truck: 'OP-1', why: 'check-too-old' },
];
