import { describe, expect, it } from 'vitest';
import {
  addressOfSignInName,
  newPersonSchema,
  passwordFaults,
  signInNameOfAddress,
  signInNameSchema,
} from '../../lib/model/person.ts';

const ANN = { name: 'Ann Marlowe', signInName: 'a.marlowe' };

describe('a password', () => {
  // NIST SP 800-63B 5.1.1.2: length and words of the context, no rules of composition
  it.each([
    ['eleven characters are too few', 'abcdefghijk', ['too-short']],
    ['twelve are enough', 'abcdefghijkl', []],
    ['thirteen are', 'abcdefghijklm', []],
    ['a sign of two code units counts once', `abcdefghij${'🚚'}`, ['too-short']],
    ['127 characters are', 'abcdefghijk'.repeat(12).slice(0, 127), []],
    ['128 are', 'abcdefghijk'.repeat(12).slice(0, 128), []],
    ['129 are too many', 'abcdefghijk'.repeat(12).slice(0, 129), ['too-long']],
    ['four different ones are too few', 'abcdabcdabcd', ['few-characters']],
    ['five are enough', 'abcdeabcdeabcde', []],
    ['small letters alone are no fault', 'correct horse battery', []],
    ['the first name is short and common, so it may stand', 'Ann loves tall racks', []],
    ['the family name may not', 'xx MARLOWE likes pallets', ['holds-name']],
    ['nor the sign-in name', 'my a.marlowe secret', ['holds-name']],
    ['nothing at all', '', ['too-short', 'few-characters']],
  ])('%s', (_why, password, expected) => {
    expect(passwordFaults(password, ANN)).toEqual(expected);
  });
});

describe('a sign-in name', () => {
  it.each([
    ['jo', 'jo'],
    ['  Jo.Ellis ', 'jo.ellis'],
    ['x', 'x'],
    ['jo@depot.example', 'jo@depot.example'],
    ['a'.repeat(40), 'a'.repeat(40)],
  ])('%j is one', (typed, expected) => {
    expect(signInNameSchema.parse(typed)).toBe(expected);
  });

  it.each(['', ' ', '.jo', 'jo.', 'jo ellis', 'jo@', '@jo', 'jö', 'a'.repeat(41), 'a\0b', 'jo@sign-in-name'])(
    '%j is none',
    (typed) => {
      expect(signInNameSchema.safeParse(typed).success).toBe(false);
    },
  );

  it.each(['jo', 'jo.ellis', 'jo@depot.example'])(
    '%s comes back from the address it is kept under',
    (name) => {
      expect(addressOfSignInName(name)).toMatch(/^[^@]+@[^@]+$/);
      expect(signInNameOfAddress(addressOfSignInName(name))).toBe(name);
    },
  );
});

describe('a new person', () => {
  it('has a name, a sign-in name and a known role, and nothing else', () => {
    const person = { name: 'Jo', signInName: 'jo', role: 'viewer' };
    expect(newPersonSchema.safeParse(person).success).toBe(true);
    expect(newPersonSchema.safeParse({ ...person, role: 'owner' }).success).toBe(false);
    expect(newPersonSchema.safeParse({ ...person, name: ' ' }).success).toBe(false);
    expect(newPersonSchema.safeParse({ ...person, isDemo: true }).success).toBe(false);
  });
});
