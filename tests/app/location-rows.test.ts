import { describe, expect, it } from 'vitest';
import { type RacksAnswer, spareAt } from '../../app/_parts/racks-answer.ts';
import { type Listing, listLocations } from '../../app/racks/location-rows.ts';
import { locationsCsv } from '../../app/racks/table-csv.ts';
import { VERDICTS } from '../../lib/check/step.ts';
import { answerGrid } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { summariseLocations } from '../../lib/grid/summary.ts';
import { RULE_IDS, type RuleId } from '../../lib/model/rule-ids.ts';
import { makeContext, makeIndex, makeLoad } from '../site-builder.ts';

const index = makeIndex({
  loads: [makeLoad(), makeLoad({ id: '=cmd', name: 'Anvils', grossKg: 1500 })],
  stock: [
    { location: 'a1-1-1', load: 'crates' },
    { location: 'a2-2-2', load: '=cmd' },
  ],
});
const question = {
  load: { kind: 'stored' as const },
  trucks: ['reach-1', 'counter-1'],
  context: makeContext({ operation: 'retrieve' }),
};
const grid = answerGrid(compileSite(index), question);
const answer: RacksAnswer = {
  index,
  places: [...index.places.values()],
  summary: summariseLocations(grid),
  trucks: question.trucks,
  assessedKg: grid.assessedKg,
};
const all: Listing = { first: 0, end: 12, keep: new Set([...VERDICTS, 'none']), find: '', sort: null };
const ids = (listing: Partial<Listing>) =>
  listLocations(answer, { ...all, ...listing }).map((place) => answer.places[place]!.id);

describe('listLocations', () => {
  it('lists a span in site order', () => {
    expect(ids({ first: 2, end: 4 })).toEqual(['a1-1-1', 'a1-1-2']);
  });

  it('leaves out what no question was asked of', () => {
    expect(ids({ keep: new Set(VERDICTS) })).toEqual(['a1-1-1', 'a2-2-2']);
  });

  it('finds words in location, standing load and truck', () => {
    expect(ids({ find: 'anvils' })).toEqual(['a2-2-2']);
    expect(ids({ find: 'COUNTER a1' })).toEqual(['a1-1-1']);
  });

  it('sorts, with what is not known last in both directions', () => {
    const keep = all.keep;
    expect(ids({ keep, sort: { column: 'spare', direction: 'up' } }).slice(0, 2)).toEqual([
      'a2-2-2',
      'a1-1-1',
    ]);
    expect(ids({ keep, sort: { column: 'spare', direction: 'down' } }).slice(0, 2)).toEqual([
      'a1-1-1',
      'a2-2-2',
    ]);
  });

  it('says what is to spare: most less the assessed mass, by the plate tilted forward (1700 kg)', () => {
    expect(spareAt(answer, 2)).toBe(1700 - 800);
    expect(spareAt(answer, 11)).toBe(1700 - 1500);
    expect(spareAt(answer, 0)).toBeNull();
  });
});

describe('spareAt', () => {
  const at = (bestRule: RuleId, mostKg: number) => {
    const summary = {
      ...answer.summary,
      bestRule: answer.summary.bestRule.with(2, RULE_IDS.indexOf(bestRule)),
      bestMostKg: answer.summary.bestMostKg.with(2, mostKg),
    };
    return spareAt({ ...answer, summary }, 2);
  };
  it('is negative where the load is too heavy', () => expect(at('plate-capacity', 700)).toBe(-100));
  it('counts a pair that is full already as too little by the whole load', () =>
    expect(at('beam-level', 0)).toBe(-800));
  it('is not a mass where no load may stand, whatever it weighs', () =>
    expect(at('rack-condition', 0)).toBeNull());
  it('is not known where the most is not known', () => expect(at('plate-capacity', -1)).toBeNull());
});

describe('locationsCsv', () => {
  it('writes kilograms and millimetres, and takes the sting out of formulas', () => {
    const lines = locationsCsv(answer, listLocations(answer, { ...all, keep: new Set(VERDICTS) })).split(
      '\r\n',
    );
    expect(lines[0]).toBe(
      'location,run,bay,level,row,beamTopMm,standing,verdict,decidedBy,truck,ableTrucks,assessedKg,mostKg,spareKg',
    );
    expect(lines[1]).toMatch(/^a1-1-1,a,a1,1,1,1500,crates,clear,.*,counter-1,2,800,1700,900$/);
    expect(lines[2]).toContain(`,"'=cmd",`);
  });

  it('leaves blank what cannot be said', () => {
    expect(locationsCsv(answer, [0]).split('\r\n')[1]).toBe('a1-0-1,a,a1,0,1,0,,,,,,,,');
  });

  it('writes a negative figure as a number, not as a formula made harmless', () => {
    const summary = { ...answer.summary, bestMostKg: answer.summary.bestMostKg.with(2, 700) };
    expect(locationsCsv({ ...answer, summary }, [2]).split('\r\n')[1]).toMatch(/,800,700,-100$/);
  });

  it('has its heading for no rows', () => {
    expect(locationsCsv(answer, [])).toMatch(/^location,/);
  });
});
