import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type FullConfig, request } from '@playwright/test';
import { hashPassword } from 'better-auth/crypto';
import { ROLES, type Role } from '../../lib/model/permissions.ts';
import { makeLink } from '../../lib/store/one-time-links.ts';
import { closeDatabase, openDatabase } from '../../lib/store/open-database.ts';
import {
  addFirstAdministrator,
  addPerson,
  makePasswordLink,
  setPasswordByLink,
} from '../../lib/store/people.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const states = fileURLToPath(new URL('./output/signed-in', import.meta.url));

export const PASSWORD = 'seven tall blue racks';

/** What a browser of somebody in this role remembers: `test.use({ storageState: signedInAs('safety-officer') })`. */
export function signedInAs(role: Role): string {
  return join(states, `${role}.json`);
}

/** How the people of the tests are called: "Test planner", who signs in as "planner". */
export function testPerson(role: Role) {
  return { name: `Test ${role.replace('-', ' ')}`, signInName: role };
}

/** A browser with no session, as everybody begins. */
export const SIGNED_OUT = { cookies: [], origins: [] };

/** Before all tests, once the server answers: one person for each role, signed in. Playwright asks for the default export. */
export default async function signEveryRoleIn(config: FullConfig): Promise<void> {
  const baseURL = config.projects[0]!.use.baseURL!;
  await addPeople();
  mkdirSync(states, { recursive: true });
  for (const role of ROLES) {
    const context = await request.newContext({ baseURL, extraHTTPHeaders: { origin: baseURL } });
    const answer = await context.post('/api/auth/sign-in', { data: { name: role, password: PASSWORD } });
    if (answer.status() !== 204) throw new Error(`signing in as ${role}: ${answer.status()}`);
    await context.storageState({ path: signedInAs(role) });
    await context.dispose();
  }
}

async function addPeople(): Promise<void> {
  const db = openDatabase(join(process.env.SCREENS_DATA!, 'tinewise.db'), join(root, 'drizzle'));
  const passwordHash = await hashPassword(PASSWORD);
  const now = new Date();
  const actor = { who: 'the tests', at: now.toISOString() };
  const token = makeLink(db, { kind: 'first-administrator' }, now);
  addFirstAdministrator(db, { token, person: testPerson('administrator'), passwordHash }, now);
  for (const role of ROLES.filter((other) => other !== 'administrator')) {
    const added = addPerson(db, { ...testPerson(role), role }, actor);
    const link = added.ok ? makePasswordLink(db, added.id, actor) : added;
    if (!link.ok) throw new Error(`adding the ${role}: ${link.why}`);
    setPasswordByLink(db, { token: link.token, passwordHash }, now);
  }
  closeDatabase(db);
}
