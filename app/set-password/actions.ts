'use server';

import { hashPassword } from 'better-auth/crypto';
import { redirect } from 'next/navigation';
import { typedPassword } from '@/app/_parts/typed-password.ts';
import { purposeOfLink } from '@/lib/store/one-time-links.ts';
import { findPerson, setPasswordByLink } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

export type PasswordState = { faults: string[] };

const VOID = 'This link is used or over. An administrator can give you a new one.';

/** Sets the password of the person that the link was made for. The link is the permission. */
export async function setPassword(_before: PasswordState, form: FormData): Promise<PasswordState> {
  const db = serverDatabase();
  const token = String(form.get('link') ?? '');
  const purpose = purposeOfLink(db, token, new Date());
  const person = purpose?.kind === 'password' ? findPerson(db, purpose.person) : null;
  if (person === null) return { faults: [VOID] };
  const typed = typedPassword(form, person);
  if (!typed.ok) return { faults: typed.faults };
  const passwordHash = await hashPassword(typed.password);
  if (!setPasswordByLink(db, { token, passwordHash }, new Date()).ok) return { faults: [VOID] };
  redirect('/sign-in');
}
