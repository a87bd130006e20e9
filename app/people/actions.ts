'use server';

import { revalidatePath } from 'next/cache';
import * as z from 'zod';
import { requireActor, requirePermission } from '@/app/_parts/require-permission.ts';
import { ROLES } from '@/lib/model/permissions.ts';
import { newPersonSchema, signInNameSchema } from '@/lib/model/person.ts';
import {
  addPerson,
  changeRole,
  disablePerson,
  enablePerson,
  endSessions,
  makePasswordLink,
  type PersonRefusal,
  type PersonSaved,
} from '@/lib/store/people.ts';
import type { Actor } from '@/lib/store/rows/policy.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { NOT_FROM_DEMO_SENTENCE } from '@/lib/words/people.ts';

/** What became of a change: what to say, and the path of a link to hand over where one was made. */
export type PeopleState =
  | { state: 'none' }
  | { state: 'done'; said: string; link: string | null }
  | { state: 'refused'; faults: string[] };

const changeSchema = z.discriminatedUnion('change', [
  z.object({ change: z.literal('role'), id: z.string(), role: z.enum(ROLES) }),
  z.object({ change: z.enum(['disable', 'enable', 'end-sessions', 'link']), id: z.string() }),
]);

/** Adds a person and answers the link with which they choose their password. */
export async function letIn(_before: PeopleState, form: FormData): Promise<PeopleState> {
  const actor = await requireActor('manage-people');
  if (await isOfDemo()) return NOT_FROM_DEMO;
  const fields = { name: form.get('name'), signInName: form.get('signInName'), role: form.get('role') };
  const person = newPersonSchema.safeParse(fields);
  if (!person.success) return { state: 'refused', faults: faultsOf(fields.signInName) };
  const db = serverDatabase();
  const saved = addPerson(db, person.data, actor);
  if (!saved.ok) return refused(saved.why);
  const link = makePasswordLink(db, saved.id, actor);
  if (!link.ok) return refused(link.why);
  revalidatePath('/people');
  return { state: 'done', said: `${person.data.name} is added.`, link: pathOf(link.token) };
}

/** Changes one person: the role, whether they may sign in, their sessions, or a new link for their password. */
export async function changePerson(_before: PeopleState, form: FormData): Promise<PeopleState> {
  const actor = await requireActor('manage-people');
  if (await isOfDemo()) return NOT_FROM_DEMO;
  const asked = changeSchema.safeParse(Object.fromEntries(form));
  if (!asked.success) return { state: 'refused', faults: ['This change is not known.'] };
  const outcome = carryOut(asked.data, actor);
  revalidatePath('/people');
  return outcome;
}

/** Nobody gets in for good, or into another's place, by having looked round without a password. */
async function isOfDemo(): Promise<boolean> {
  return (await requirePermission('manage-people')).isDemo;
}

const NOT_FROM_DEMO: PeopleState = { state: 'refused', faults: [NOT_FROM_DEMO_SENTENCE] };

function carryOut(asked: z.infer<typeof changeSchema>, actor: Actor): PeopleState {
  const db = serverDatabase();
  switch (asked.change) {
    case 'link': {
      const link = makePasswordLink(db, asked.id, actor);
      if (!link.ok) return refused(link.why);
      const said = 'The password until now counts until the link is used.';
      return { state: 'done', said, link: pathOf(link.token) };
    }
    case 'role':
      return told(
        changeRole(db, asked.id, asked.role, actor),
        'The role is changed, from the next request on.',
      );
    case 'disable':
      return told(disablePerson(db, asked.id, actor), 'Disabled, and signed out everywhere.');
    case 'enable':
      return told(enablePerson(db, asked.id, actor), 'May sign in again.');
    case 'end-sessions':
      return told(endSessions(db, asked.id, actor), 'Signed out everywhere.');
  }
}

function told(saved: PersonSaved, said: string): PeopleState {
  return saved.ok ? { state: 'done', said, link: null } : refused(saved.why);
}

function pathOf(token: string): string {
  return `/set-password?link=${token}`;
}

function refused(why: PersonRefusal): PeopleState {
  return { state: 'refused', faults: [REFUSALS[why]] };
}

const REFUSALS: Record<PersonRefusal, string> = {
  'sign-in-name-taken': 'Somebody has this sign-in name already.',
  'last-administrator': 'This is the last administrator who can sign in: make another one first.',
  'no-such-person': 'There is no such person, or they are disabled.',
  'link-is-void': 'This link is used or over.',
};

function faultsOf(signInName: unknown): string[] {
  return signInNameSchema.safeParse(signInName).success
    ? ['A name of at most 120 characters and a role were expected.']
    : [
        'A sign-in name of letters, digits, dots and dashes (at most 40), or an e-mail address, was expected.',
      ];
}
