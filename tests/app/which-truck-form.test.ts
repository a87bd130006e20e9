import { describe, expect, it } from 'vitest';
import { askWhichTruck } from '../../app/which-truck/ask-which-truck.ts';
import { fieldText, readFormAddress } from '../../app/which-truck/form-address.ts';
import { makeIndex } from '../site-builder.ts';

const NOW = '2026-03-02T06:30:00Z';
const index = makeIndex({ stock: [{ location: 'a1-1-1', load: 'crates' }] });
const parameters = (address: string) => Object.fromEntries(new URLSearchParams(address));
const read = (address: string) => readFormAddress(parameters(address), index);
const ask = (address: string) => askWhichTruck(index, parameters(address), NOW);
const refusedAt = (address: string) => {
  const answer = ask(address);
  return answer.kind === 'refused' ? answer.refused.map(({ path }) => path) : answer.kind;
};

describe('readFormAddress', () => {
  it.each([
    { typed: '980', typedIn: 'metric', kg: '980', why: 'a bare number counts in the units of the form' },
    { typed: '980 kg', typedIn: 'lb-in', kg: '980', why: 'a unit of its own goes before those of the form' },
    { typed: '1 000', typedIn: 'metric', kg: '1000', why: 'digits may be grouped' },
    { typed: '2.4 t', typedIn: 'metric', kg: '2400', why: 'tonnes are known' },
  ])('reads the mass "$typed" in $typedIn as $kg kg: $why', ({ typed, typedIn, kg }) => {
    expect(read(`typedIn=${typedIn}&mass=${encodeURIComponent(typed)}`).raw.mass).toBe(kg);
  });

  it('reads a bare number of a form in pounds and inches as pounds and inches', () => {
    const { raw } = read('typedIn=lb-in&mass=1000&depth=48');
    expect(Number(raw.mass)).toBeCloseTo(453.59237, 9);
    expect(Number(raw.depth)).toBeCloseTo(1219.2, 9);
  });

  it('reads a bare number of a link, which names no units, as kilograms and millimetres', () => {
    const { raw, sent } = read('mass=1000&depth=1200');
    expect(raw).toMatchObject({ mass: '1000', depth: '1200' });
    expect(sent).toBe(false);
  });

  it.each(['heavy', '-5', '0', '1e3', '1,5', '12 stone'])(
    'refuses the mass "%s" of a form and leaves it out, rather than read it in other units',
    (typed) => {
      const { raw, refused } = read(`typedIn=lb-in&mass=${encodeURIComponent(typed)}`);
      expect(refused.map(({ path, came }) => [path, came])).toEqual([['$.mass', JSON.stringify(typed)]]);
      expect(raw.mass).toBeUndefined();
    },
  );

  it.each([
    { asOf: '2026-03-02T06:30', read: '2026-03-02T06:30:00Z' },
    { asOf: '2026-03-02T06:30:15', read: '2026-03-02T06:30:15Z' },
    { asOf: '2026-03-02T06:30:00Z', read: '2026-03-02T06:30:00Z' },
    { asOf: '', read: undefined },
  ])('takes the time "$asOf" as $read', ({ asOf, read: expected }) => {
    expect(read(`typedIn=metric&asOf=${asOf}`).raw.asOf).toBe(expected);
  });

  it('lets "not judged" go before a time', () => {
    expect(readFormAddress({ asOf: ['2026-03-02T06:30', 'not-judged'] }, index).raw.asOf).toBe('not-judged');
  });

  it('spells ids as the site does, whatever capitals and blanks were typed', () => {
    const { raw } = read('location=%20A1-1-1%20&load=CRATES');
    expect(raw).toMatchObject({ location: 'a1-1-1', load: 'crates' });
  });
});

describe('fieldText', () => {
  it('gives back what was typed, faults and all', () => {
    expect(fieldText({ typedIn: 'metric', mass: 'heavy' }, 'mass', 'metric')).toBe('heavy');
    expect(fieldText({ typedIn: 'metric', mass: '980' }, 'mass', 'metric')).toBe('980');
  });

  it('adds the unit where the form now reads in other units, so that the number keeps its meaning', () => {
    expect(fieldText({ typedIn: 'metric', mass: '980' }, 'mass', 'lb-in')).toBe('980 kg');
    expect(fieldText({ typedIn: 'lb-in', depth: '48' }, 'depth', 'metric')).toBe('48 in');
    expect(fieldText({ depth: '1200' }, 'depth', 'lb-in')).toBe('1200 mm');
  });
});

describe('askWhichTruck', () => {
  it('has nothing to say to an empty address, nor to a link that fills in a part', () => {
    expect(ask('').kind).toBe('blank');
    expect(ask('load=crates').kind).toBe('blank');
  });

  it('asks once a place and a load are there', () => {
    expect(ask('location=a1-2-1&load=crates').kind).toBe('asked');
    expect(ask('typedIn=metric&location=a1-1-1&operation=retrieve').kind).toBe('asked');
    expect(
      ask('typedIn=metric&location=a1-2-1&operation=place&mass=900&depth=1200&width=800&height=1000').kind,
    ).toBe('asked');
  });

  it('wants to know what is put away when the form is sent without a load, even where something stands', () => {
    expect(refusedAt('typedIn=metric&location=a1-1-1&operation=place')).toEqual(['$.load']);
  });

  it('names each field that is missing or cannot be read, once', () => {
    expect(refusedAt('typedIn=metric')).toEqual(['$.location']);
    expect(refusedAt('typedIn=metric&location=a1-2-1&operation=place&mass=heavy&depth=1200')).toEqual([
      '$.mass',
      '$.width',
      '$.height',
    ]);
    expect(refusedAt('typedIn=metric&location=nowhere&operation=place&load=crates')).toEqual(['$.location']);
  });

  it('never asks about a truck that a link names: it ranks them all', () => {
    expect(ask('location=a1-2-1&load=crates&truck=reach-1').query.truck).toBeNull();
  });
});
