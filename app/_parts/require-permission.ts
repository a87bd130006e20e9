import 'server-only';
import { headers } from 'next/headers';
import { forbidden, unauthorized } from 'next/navigation';
import { cache } from 'react';
import { may, type Permission } from '@/lib/model/permissions.ts';
import { type Person, whoIs } from '@/lib/model/person.ts';
import type { Actor } from '@/lib/store/rows/policy.ts';
import { type SignedIn, whoIsSignedIn } from '@/lib/store/sign-in.ts';

/** Who sends the request that is being answered, or null. Looked up once for each. */
export const currentlySignedIn = cache(async (): Promise<SignedIn | null> => whoIsSignedIn(await headers()));

/**
 * Every page, action and route handler asks this first. Answers the person; else the request ends here: 401 for
 * nobody, 403 for somebody whose role may not do this.
 */
export async function requirePermission(what: Permission): Promise<Person> {
  const by = await currentlySignedIn();
  if (by === null) unauthorized();
  if (!may(by.person.role, what)) forbidden();
  return by.person;
}

/** The same for a change: who makes it and when, as the change log keeps it. */
export async function requireActor(what: Permission): Promise<Actor> {
  const person = await requirePermission(what);
  return { who: whoIs(person), at: new Date().toISOString() };
}
