'use server';

import { hashPassword, verifyPassword } from 'better-auth/crypto';
import { headers } from 'next/headers';
import { currentlySignedIn, requirePermission } from '@/app/_parts/require-permission.ts';
import { typedPassword } from '@/app/_parts/typed-password.ts';
import { addressOfSignInName } from '@/lib/model/person.ts';
import { passwordHashOf, replacePassword } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { networkAddressOf } from '@/lib/store/sign-in.ts';
import { countTry, forgiveTry } from '@/lib/store/sign-in-limit.ts';
import { tooManyTriesSentence } from '@/lib/words/people.ts';

export type ChangePasswordState =
  | { state: 'none' }
  | { state: 'done' }
  | { state: 'refused'; faults: string[] };

/** A person's own change of password. Tries with a wrong one until now count as tries to sign in. */
export async function changePassword(
  _before: ChangePasswordState,
  form: FormData,
): Promise<ChangePasswordState> {
  const person = await requirePermission('read');
  const { sessionId } = (await currentlySignedIn())!;
  const db = serverDatabase();
  const hash = passwordHashOf(db, person.id);
  if (person.isDemo || hash === null) return refused(['People of the demo have no password.']);
  const typed = typedPassword(form, person);
  if (!typed.ok) return refused(typed.faults);
  const tried = {
    account: addressOfSignInName(person.signInName),
    address: networkAddressOf(await headers()),
  };
  const waitS = countTry(db, tried, new Date());
  if (waitS > 0) return refused([tooManyTriesSentence(waitS)]);
  const isRight = await verifyPassword({ hash, password: String(form.get('current') ?? '') });
  if (!isRight) return refused(['The password until now is a different one.']);
  forgiveTry(db, tried);
  const passwordHash = await hashPassword(typed.password);
  replacePassword(db, { id: person.id, keepSession: sessionId, passwordHash }, new Date());
  return { state: 'done' };
}

function refused(faults: string[]): ChangePasswordState {
  return { state: 'refused', faults };
}
