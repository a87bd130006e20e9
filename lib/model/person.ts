import * as z from 'zod';
import { ROLES, type Role } from './permissions.ts';

/** Somebody who is signed in. `isDemo`: a built-in person of the demo, who has no password. */
export type Person = { id: string; name: string; signInName: string; role: Role; isDemo: boolean };

/** How a person is written down beside what they did: the sign-in name tells two of the same name apart. */
export function whoIs({ name, signInName }: { name: string; signInName: string }): string {
  return `${name} (${signInName})`;
}

export const PASSWORD_LENGTH = { from: 12, to: 128 } as const;
const DIFFERENT_CHARACTERS = 5;

/** What a person signs in with: a short name, or an e-mail address. Case does not count. */
export const signInNameSchema = z
  .string()
  .trim()
  .toLowerCase()
  .max(200)
  .refine((value) => SHORT_NAME.test(value) || z.email().safeParse(value).success);

const SHORT_NAME = /^[a-z0-9](?:[a-z0-9._-]{0,38}[a-z0-9])?$/;

export const personNameSchema = z.string().trim().min(1).max(120);

export const newPersonSchema = z.strictObject({
  name: personNameSchema,
  signInName: signInNameSchema,
  role: z.enum(ROLES),
});
export type NewPerson = z.infer<typeof newPersonSchema>;

/** ".invalid" is reserved for names that no mail can ever reach (RFC 2606). */
const NO_MAIL = '@sign-in-name.invalid';

/**
 * The address under which a sign-in name is kept: an e-mail address is itself, a short name gets an ending that no mail
 * reaches. Nothing is ever sent to either.
 */
export function addressOfSignInName(signInName: string): string {
  const name = signInName.trim().toLowerCase();
  return name.includes('@') ? name : `${name}${NO_MAIL}`;
}

export function signInNameOfAddress(address: string): string {
  return address.endsWith(NO_MAIL) ? address.slice(0, -NO_MAIL.length) : address;
}

export type PasswordFault = 'too-short' | 'too-long' | 'few-characters' | 'holds-name';

/**
 * Why may this not be a password? Length does the work (NIST SP 800-63B section 5.1.1.2: no rules of composition); what
 * is refused besides are a few characters over and over, and the person's own names. Exactly 12 characters are enough.
 */
export function passwordFaults(
  password: string,
  person: { name: string; signInName: string },
): PasswordFault[] {
  const length = [...password].length;
  const faults: PasswordFault[] = [];
  if (length < PASSWORD_LENGTH.from) faults.push('too-short');
  if (length > PASSWORD_LENGTH.to) faults.push('too-long');
  if (new Set(password).size < DIFFERENT_CHARACTERS) faults.push('few-characters');
  if (namesOf(person).some((name) => password.toLowerCase().includes(name))) faults.push('holds-name');
  return faults;
}

/** The parts of a person's names that are long enough to be guessed first. */
function namesOf({ name, signInName }: { name: string; signInName: string }): string[] {
  const parts = [...name.toLowerCase().split(/\s+/), signInName.toLowerCase(), signInName.split('@')[0]!];
  return parts.filter((part) => [...part].length >= 4);
}
