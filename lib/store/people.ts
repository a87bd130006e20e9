import { randomUUID } from 'node:crypto';
import { and, asc, count, desc, eq, isNull, max, ne } from 'drizzle-orm';
import type { Role } from '../model/permissions.ts';
import { addressOfSignInName, type NewPerson, signInNameOfAddress, whoIs } from '../model/person.ts';
import { makeLink, takeLink, voidLinks } from './one-time-links.ts';
import type { Database } from './open-database.ts';
import type { Actor } from './rows/policy.ts';
import { accounts, type PEOPLE_CHANGES, people, peopleChanges, sessions } from './tables/people.ts';
import { writeTransaction } from './transaction.ts';

/** What the administrator sees of a person. Never the password, which nobody sees. */
export type ListedPerson = {
  id: string;
  name: string;
  signInName: string;
  role: Role;
  isDisabled: boolean;
  hasPassword: boolean;
  sessionCount: number;
  lastSeenAt: string | null;
};

export type PersonRefusal = 'sign-in-name-taken' | 'last-administrator' | 'no-such-person' | 'link-is-void';
export type PersonSaved = { ok: true; id: string } | { ok: false; why: PersonRefusal };

/** Is there nobody yet who could sign in with a password? Built-in people of the demo do not count. */
export function needsAdministrator(db: Database): boolean {
  return db.select({ n: count() }).from(people).where(eq(people.isDemo, false)).all()[0]!.n === 0;
}

export function listPeople(db: Database): ListedPerson[] {
  const passwords = new Set(
    db
      .select({ id: accounts.userId })
      .from(accounts)
      .all()
      .map((row) => row.id),
  );
  const held = db
    .select({ id: sessions.userId, n: count(), seen: max(sessions.updatedAt) })
    .from(sessions)
    .groupBy(sessions.userId)
    .all();
  const sessionsOf = new Map(held.map((row) => [row.id, row]));
  const rows = db.select().from(people).where(eq(people.isDemo, false)).orderBy(asc(people.name)).all();
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    signInName: signInNameOfAddress(row.email),
    role: row.role,
    isDisabled: row.disabledAt !== null,
    hasPassword: passwords.has(row.id),
    sessionCount: sessionsOf.get(row.id)?.n ?? 0,
    lastSeenAt: sessionsOf.get(row.id)?.seen?.toISOString() ?? null,
  }));
}

export function findPerson(db: Database, id: string): ListedPerson | null {
  return listPeople(db).find((person) => person.id === id) ?? null;
}

/** A new person without a password: the administrator hands over a link to choose one. */
export function addPerson(db: Database, person: NewPerson, actor: Actor): PersonSaved {
  return changePeople(db, () => {
    if (isTaken(db, person.signInName)) return { ok: false, why: 'sign-in-name-taken' };
    const id = insertPerson(db, person, actor);
    return { ok: true, id };
  });
}

/** The first administrator, by the link that was printed at the start: once, and only while there is nobody. */
export function addFirstAdministrator(
  db: Database,
  made: { token: string; person: Omit<NewPerson, 'role'>; passwordHash: string },
  at: Date,
): PersonSaved {
  return changePeople(db, () => {
    const purpose = takeLink(db, made.token, at);
    if (purpose?.kind !== 'first-administrator' || !needsAdministrator(db)) {
      return { ok: false, why: 'link-is-void' };
    }
    const who = whoIs(made.person);
    const id = insertPerson(db, { ...made.person, role: 'administrator' }, { who, at: at.toISOString() });
    putPassword(db, id, made.passwordHash, at);
    return { ok: true, id };
  });
}

/** Sets a password by a one-time link. Whoever was signed in as this person is no longer. */
export function setPasswordByLink(
  db: Database,
  made: { token: string; passwordHash: string },
  at: Date,
): PersonSaved {
  return changePeople(db, () => {
    const purpose = takeLink(db, made.token, at);
    if (purpose?.kind !== 'password') return { ok: false, why: 'link-is-void' };
    const row = rowOf(db, purpose.person);
    if (row === null || row.disabledAt !== null) return { ok: false, why: 'link-is-void' };
    putPassword(db, row.id, made.passwordHash, at);
    db.delete(sessions).where(eq(sessions.userId, row.id)).run();
    record(db, selfOf(row, at), 'password-set', row.email);
    return { ok: true, id: row.id };
  });
}

/** A one-time link's token by which a person chooses a password; the old password counts until then. */
export function makePasswordLink(
  db: Database,
  id: string,
  actor: Actor,
): { ok: true; token: string } | { ok: false; why: PersonRefusal } {
  const row = rowOf(db, id);
  if (row === null || row.disabledAt !== null) return { ok: false, why: 'no-such-person' };
  const token = makeLink(db, { kind: 'password', person: id }, new Date(actor.at));
  record(db, actor, 'link-made', row.email);
  return { ok: true, token };
}

/** The newest things done to people first. */
export function readPeopleChanges(db: Database, limit: number) {
  return db.select().from(peopleChanges).orderBy(desc(peopleChanges.id)).limit(limit).all();
}

/** The hash of a person's password, or null where there is none yet. */
export function passwordHashOf(db: Database, id: string): string | null {
  return (
    db.select({ hash: accounts.password }).from(accounts).where(eq(accounts.userId, id)).all()[0]?.hash ??
    null
  );
}

/** A person's own change of password: all their other sessions end, this one stays. Links for them are void. */
export function replacePassword(
  db: Database,
  { id, keepSession, passwordHash }: { id: string; keepSession: string; passwordHash: string },
  at: Date,
): void {
  changePeople(db, () => {
    const row = rowOf(db, id);
    if (row === null) return { ok: false, why: 'no-such-person' };
    putPassword(db, id, passwordHash, at);
    record(db, selfOf(row, at), 'password-set', row.email);
    db.delete(sessions)
      .where(and(eq(sessions.userId, id), ne(sessions.id, keepSession)))
      .run();
    voidLinks(db, { kind: 'password', person: id });
    return { ok: true, id };
  });
}

export function changeRole(db: Database, id: string, role: Role, actor: Actor): PersonSaved {
  return changePeople(db, () => {
    const row = rowOf(db, id);
    if (row === null) return { ok: false, why: 'no-such-person' };
    if (row.role === role) return { ok: true, id };
    if (isLastAdministrator(db, row)) return { ok: false, why: 'last-administrator' };
    db.update(people).set({ role }).where(eq(people.id, id)).run();
    record(db, actor, 'role-changed', row.email, role);
    return { ok: true, id };
  });
}

/** A disabled person's sessions and links end at once; what they have done stays under their name. */
export function disablePerson(db: Database, id: string, actor: Actor): PersonSaved {
  return changePeople(db, () => {
    const row = rowOf(db, id);
    if (row === null) return { ok: false, why: 'no-such-person' };
    if (row.disabledAt !== null) return { ok: true, id };
    if (isLastAdministrator(db, row)) return { ok: false, why: 'last-administrator' };
    db.update(people)
      .set({ disabledAt: new Date(actor.at) })
      .where(eq(people.id, id))
      .run();
    db.delete(sessions).where(eq(sessions.userId, id)).run();
    voidLinks(db, { kind: 'password', person: id });
    record(db, actor, 'disabled', row.email);
    return { ok: true, id };
  });
}

export function enablePerson(db: Database, id: string, actor: Actor): PersonSaved {
  return changePeople(db, () => {
    const row = rowOf(db, id);
    if (row === null) return { ok: false, why: 'no-such-person' };
    if (row.disabledAt === null) return { ok: true, id };
    db.update(people).set({ disabledAt: null }).where(eq(people.id, id)).run();
    record(db, actor, 'enabled', row.email);
    return { ok: true, id };
  });
}

/** Signs a person out everywhere. */
export function endSessions(db: Database, id: string, actor: Actor): PersonSaved {
  return changePeople(db, () => {
    const row = rowOf(db, id);
    if (row === null) return { ok: false, why: 'no-such-person' };
    const ended = db.delete(sessions).where(eq(sessions.userId, id)).returning({ id: sessions.id }).all();
    if (ended.length > 0) record(db, actor, 'sessions-ended', row.email);
    return { ok: true, id };
  });
}

type Row = typeof people.$inferSelect;
type PeopleChange = (typeof PEOPLE_CHANGES)[number];

function changePeople(db: Database, change: () => PersonSaved): PersonSaved {
  return writeTransaction(db, change);
}

function rowOf(db: Database, id: string): Row | null {
  const real = and(eq(people.id, id), eq(people.isDemo, false));
  return db.select().from(people).where(real).all()[0] ?? null;
}

function selfOf(row: Row, at: Date): Actor {
  return { who: whoIs({ name: row.name, signInName: signInNameOfAddress(row.email) }), at: at.toISOString() };
}

function isTaken(db: Database, signInName: string): boolean {
  const same = eq(people.email, addressOfSignInName(signInName));
  return db.select({ id: people.id }).from(people).where(same).all().length > 0;
}

/** Would nobody be left to let anybody in? */
function isLastAdministrator(db: Database, row: Row): boolean {
  if (row.role !== 'administrator' || row.disabledAt !== null) return false;
  const others = and(
    eq(people.role, 'administrator'),
    eq(people.isDemo, false),
    isNull(people.disabledAt),
    ne(people.id, row.id),
  );
  const withPassword = db
    .select({ id: people.id })
    .from(people)
    .innerJoin(accounts, eq(accounts.userId, people.id))
    .where(others);
  return withPassword.all().length === 0;
}

function insertPerson(db: Database, { name, signInName, role }: NewPerson, actor: Actor): string {
  const id = randomUUID();
  const email = addressOfSignInName(signInName);
  const at = new Date(actor.at);
  const fixed = { emailVerified: false, isDemo: false, createdAt: at, updatedAt: at };
  db.insert(people)
    .values({ id, name, email, role, ...fixed })
    .run();
  record(db, actor, 'added', email, role);
  return id;
}

function putPassword(db: Database, id: string, password: string, at: Date): void {
  db.delete(accounts).where(eq(accounts.userId, id)).run();
  const row = { id: randomUUID(), userId: id, accountId: id, providerId: 'credential', password };
  db.insert(accounts)
    .values({ ...row, createdAt: at, updatedAt: at })
    .run();
}

/** Writes down what was done to a person. Not in the site's change log, which everybody may read. */
function record(
  db: Database,
  { who, at }: Actor,
  what: PeopleChange,
  email: string,
  role: Role | null = null,
) {
  const person = signInNameOfAddress(email);
  db.insert(peopleChanges).values({ who, at, person, what, role }).run();
}
