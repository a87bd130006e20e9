import { describe, expect, it } from 'vitest';
import { demoRuns } from '../../lib/demo/demo-racking.ts';
import { guessLabels } from '../../lib/rack-shape/guess-labels.ts';
import { letters } from '../../lib/rack-shape/label-pattern.ts';
import { locationsOf } from '../../lib/rack-shape/neighbours.ts';
import { shapeRun } from '../../lib/rack-shape/shape-run.ts';
import { makeRun } from '../site-builder.ts';
import { describeRun, made, neighbours } from './describe.ts';

const labels = describeRun().labels;
const endsOf = (change: Partial<typeof labels>, deep: 1 | 2 = 1) => {
  const floor = { positions: 2, depthPositions: deep };
  const ids = locationsOf(
    made(shapeRun(describeRun({ floor, levels: [], labels: { ...labels, ...change } }), neighbours)),
  );
  return [ids[0], ids.at(-1)];
};

describe('labels', () => {
  it.each<[string, Partial<typeof labels>, string[]]>([
    ['count bays from the left', {}, ['B-R-01-0-1', 'B-R-03-0-2']],
    ['count bays from the right', { bayFrom: 'right' }, ['B-R-03-0-1', 'B-R-01-0-2']],
    ['give one side of the aisle the odd bays', { bayStep: 2 }, ['B-R-01-0-1', 'B-R-05-0-2']],
    ['and the other the even ones', { bayStart: 2, bayStep: 2 }, ['B-R-02-0-1', 'B-R-06-0-2']],
    ['count positions from the right', { positionFrom: 'right' }, ['B-R-01-0-2', 'B-R-03-0-1']],
    ['call the floor 1', { levelStart: 1 }, ['B-R-01-1-1', 'B-R-03-1-2']],
    ['write levels in letters', { pattern: '{bay}{level:A}{position}', levelStart: 1 }, ['1A1', '3A2']],
    ['write bays in letters', { pattern: '{bay:A}{level}{position}', bayStart: 26 }, ['Z01', 'AB02']],
    ['pad with zeros', { pattern: '{bay:0000}.{level:00}.{position}' }, ['0001.00.1', '0003.00.2']],
  ])('%s', (_name, change, ends) => {
    expect(endsOf(change)).toEqual(ends);
  });

  it('count positions on into the rear row, or begin again where {row} tells the rows apart', () => {
    expect(endsOf({}, 2)).toEqual(['B-R-01-0-1', 'B-R-03-0-4']);
    expect(endsOf({ pattern: '{bay}-{level}-{row:A}{position}' }, 2)).toEqual(['1-0-A1', '3-0-B2']);
  });

  it('in letters go on after Z with two', () => {
    expect([1, 26, 27, 52, 53, 702, 703].map(letters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
    expect(() => letters(0)).toThrow();
  });

  it('of every run of the demo are read back from its ids', () => {
    for (const run of demoRuns()) expect(guessLabels(run)?.pattern).toBe(labels.pattern);
  });

  it('that follow no usual pattern are not guessed', () => {
    expect(guessLabels(makeRun())).toBeNull();
  });
});
