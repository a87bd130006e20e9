import { describe, expect, it } from 'vitest';
import { handPickHref, readHandPick } from '../../app/hand-pick/hand-pick-query.ts';
import type { HandPick } from '../../lib/model/load.ts';
import { makeIndex, makeLoad } from '../site-builder.ts';

const PICK: HandPick = {
  massKg: 9,
  horizontalMm: 400,
  gripHeightMm: 300,
  destinationHeightMm: 750,
  asymmetryDeg: 0,
  liftsPerMinute: 1,
  durationHours: 2,
  coupling: 'fair',
};
const index = makeIndex({
  loads: [makeLoad({ id: 'picked', handPick: PICK }), makeLoad()],
  stock: [
    { location: 'a1-1-1', load: 'picked' },
    { location: 'a1-2-1', load: 'picked' },
    { location: 'a2-1-1', load: 'crates' },
  ],
});

function asked(raw: Record<string, string>) {
  const read = readHandPick(index, raw);
  if (read.kind !== 'asked') throw new Error(JSON.stringify(read));
  return read;
}

function refusedPaths(raw: Record<string, string | undefined>): string[] {
  const read = readHandPick(index, raw);
  return read.kind === 'refused' ? read.refused.map(({ path }) => path) : [read.kind];
}

describe('readHandPick', () => {
  it('asks nothing of an address without a pick', () => {
    expect(readHandPick(index, {}).kind).toBe('nothing');
    expect(readHandPick(index, { units: 'metric', mass: ' ' }).kind).toBe('nothing');
  });

  it('takes the load that stands at the location, and the height of its beam', () => {
    const { face } = asked({ location: 'a1-1-1' });
    expect(face).toMatchObject({ beamTopMm: 1500, pick: PICK });
    expect(face.load?.id).toBe('picked');
  });

  it('puts what is typed in place of what the load states', () => {
    const { face } = asked({
      location: 'a1-1-1',
      mass: '20 lb',
      'hands-out': '12',
      hold: 'poor',
      units: 'lb-in',
    });
    expect(face.pick.massKg).toBeCloseTo(9.0718474, 12);
    expect(face.pick.horizontalMm).toBeCloseTo(304.8, 9);
    expect(face.pick).toMatchObject({ gripHeightMm: 300, coupling: 'poor' });
  });

  it('works without a location from a typed height', () => {
    expect(asked({ load: 'picked', 'beam-top': '0' }).face.beamTopMm).toBe(0);
    expect(asked({ load: 'picked', 'beam-top': '1.4 m' }).face.beamTopMm).toBe(1400);
  });

  it.each([
    { minutes: '8', rate: '10', liftsPerMinute: 80 / 15 },
    { minutes: '15', rate: '10', liftsPerMinute: 10 },
  ])('spreads $rate a minute over $minutes of 15 minutes', ({ minutes, rate, liftsPerMinute }) => {
    expect(asked({ location: 'a1-1-1', rate, minutes }).face.pick.liftsPerMinute).toBeCloseTo(
      liftsPerMinute,
      12,
    );
  });

  it('adds the other pick faces of the shift', () => {
    const { job } = asked({ location: 'a1-1-1', also: 'a1-2-1' });
    expect(job.map(({ place, beamTopMm }) => [place?.id, beamTopMm])).toEqual([['a1-2-1', 3000]]);
  });

  it.each([
    { raw: { location: 'a1-1-9' }, names: ['$.location', '$.mass'] },
    { raw: { load: 'picked' }, names: ['$.location'] },
    { raw: { location: 'a1-1-1', mass: 'heavy' }, names: ['$.mass'] },
    { raw: { location: 'a1-1-1', twist: '200' }, names: ['$.twist'] },
    { raw: { location: 'a1-1-1', hours: '9' }, names: ['$.hours'] },
    { raw: { location: 'a1-1-1', rate: '-1' }, names: ['$.rate'] },
    { raw: { location: 'a1-1-1', hold: 'firm' }, names: ['$.hold'] },
    { raw: { location: 'a1-1-1', also: 'a2-1-1' }, names: ['$.also'] },
    { raw: { location: 'a1-1-1', also: 'nowhere' }, names: ['$.also'] },
    { raw: { location: 'a1-1-1', minutes: '16' }, names: ['$.minutes'] },
    { raw: { location: 'a1-1-1', minutes: '5', rate: '16' }, names: ['$.rate'] },
    { raw: { location: 'a2-1-1' }, names: ['$.mass', '$.hands-out'] },
  ])('refuses $raw by name: $names', ({ raw, names }) => {
    expect(refusedPaths({ ...raw })).toEqual(expect.arrayContaining(names));
  });

  it('reads back the address it writes', () => {
    const href = handPickHref({ location: 'a1-1-1', load: 'picked', also: ['a1-2-1'] });
    const raw = Object.fromEntries(new URL(href, 'http://site').searchParams);
    const read = asked(raw);
    expect(read.face.place?.id).toBe('a1-1-1');
    expect(read.job).toHaveLength(1);
  });
});
