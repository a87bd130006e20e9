'use server';

import { hashPassword } from 'better-auth/crypto';
import { redirect } from 'next/navigation';
import { typedPassword } from '@/app/_parts/typed-password.ts';
import { newPersonSchema } from '@/lib/model/person.ts';
import { purposeOfLink } from '@/lib/store/one-time-links.ts';
import { addFirstAdministrator } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

export type AdministratorState = { faults: string[] };

const VOID = 'This link is used or over. Stop Tinewise and start it again: a new one is printed.';

/** Makes the first administrator. The link is the permission: nobody can be signed in yet. */
export async function makeFirstAdministrator(
  _before: AdministratorState,
  form: FormData,
): Promise<AdministratorState> {
  const db = serverDatabase();
  const token = String(form.get('link') ?? '');
  if (purposeOfLink(db, token, new Date())?.kind !== 'first-administrator') return { faults: [VOID] };
  const person = newPersonSchema.omit({ role: true }).safeParse({
    name: form.get('name'),
    signInName: form.get('signInName'),
  });
  if (!person.success) {
    return {
      faults: [
        'A name, and a sign-in name of letters, digits, dots and dashes or an e-mail address, were expected.',
      ],
    };
  }
  const typed = typedPassword(form, person.data);
  if (!typed.ok) return { faults: typed.faults };
  const passwordHash = await hashPassword(typed.password);
  const saved = addFirstAdministrator(db, { token, person: person.data, passwordHash }, new Date());
  if (!saved.ok) return { faults: [VOID] };
  redirect('/sign-in');
}
