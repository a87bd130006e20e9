import { eq } from 'drizzle-orm';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Role } from '../../lib/model/permissions.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { LINK_VALID_HOURS, makeLink, purposeOfLink, takeLink } from '../../lib/store/one-time-links.ts';
import { type Database, openDatabase } from '../../lib/store/open-database.ts';
import {
  addFirstAdministrator,
  addPerson,
  changeRole,
  disablePerson,
  enablePerson,
  endSessions,
  findPerson,
  listPeople,
  makePasswordLink,
  needsAdministrator,
  passwordHashOf,
  readPeopleChanges,
  replacePassword,
  setPasswordByLink,
} from '../../lib/store/people.ts';
import { readRevision } from '../../lib/store/read-site.ts';
import { holdsDemo, rememberDemo } from '../../lib/store/settings.ts';
import { countTry, forgiveTry, TRIES, TRY_WINDOW_MS } from '../../lib/store/sign-in-limit.ts';
import { people, sessions, signInFailures, verifications } from '../../lib/store/tables/people.ts';
import { makeSite } from '../site-builder.ts';

const AT = new Date('2026-03-02T06:00:00Z');
const ACTOR = { who: 'Ada Moss (ada)', at: AT.toISOString() };
const later = (ms: number) => new Date(AT.getTime() + ms);
const VALID_MS = LINK_VALID_HOURS * 3_600_000;

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
});

function firstAdministrator(): string {
  const token = makeLink(db, { kind: 'first-administrator' }, AT);
  const person = { name: 'Ada Moss', signInName: 'ada' };
  const saved = addFirstAdministrator(db, { token, person, passwordHash: 'hash-1' }, AT);
  if (!saved.ok) throw new Error(saved.why);
  return saved.id;
}

function person(signInName: string, role: Role): string {
  const saved = addPerson(db, { name: `Name of ${signInName}`, signInName, role }, ACTOR);
  if (!saved.ok) throw new Error(saved.why);
  return saved.id;
}

function session(id: string, userId: string) {
  db.insert(sessions)
    .values({ id, token: `token-${id}`, userId, expiresAt: later(1000), createdAt: AT, updatedAt: AT })
    .run();
}

describe('a one-time link', () => {
  it.each([
    ['a moment before its end', VALID_MS - 1, true],
    ['at its end', VALID_MS, false],
    ['a moment after', VALID_MS + 1, false],
  ])('%s: good? %s', (_when, ms, isGood) => {
    const token = makeLink(db, { kind: 'first-administrator' }, AT);
    expect(purposeOfLink(db, token, later(ms)) !== null).toBe(isGood);
    expect(takeLink(db, token, later(ms)) !== null).toBe(isGood);
  });

  it('is good once', () => {
    const token = makeLink(db, { kind: 'password', person: 'p' }, AT);
    expect(takeLink(db, token, AT)).toEqual({ kind: 'password', person: 'p' });
    expect(takeLink(db, token, AT)).toBeNull();
  });

  it('makes the one before for the same purpose void, and no other', () => {
    const old = makeLink(db, { kind: 'password', person: 'p' }, AT);
    const other = makeLink(db, { kind: 'password', person: 'q' }, AT);
    const fresh = makeLink(db, { kind: 'password', person: 'p' }, AT);
    expect([old, other, fresh].map((token) => purposeOfLink(db, token, AT) !== null)).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('stands in the database as a hash alone', () => {
    const token = makeLink(db, { kind: 'first-administrator' }, AT);
    expect(token).toMatch(/^[\w-]{32}$/);
    expect(JSON.stringify(db.select().from(verifications).all())).not.toContain(token);
  });
});

describe('the first administrator', () => {
  it('is made by the link, once', () => {
    expect(needsAdministrator(db)).toBe(true);
    const token = makeLink(db, { kind: 'first-administrator' }, AT);
    const made = { token, person: { name: 'Ada', signInName: 'ada' }, passwordHash: 'h' };
    expect(addFirstAdministrator(db, made, AT).ok).toBe(true);
    expect(needsAdministrator(db)).toBe(false);
    const again = { ...made, person: { name: 'Eve', signInName: 'eve' } };
    expect(addFirstAdministrator(db, again, AT)).toEqual({ ok: false, why: 'link-is-void' });
    expect(listPeople(db).map(({ signInName, role }) => [signInName, role])).toEqual([
      ['ada', 'administrator'],
    ]);
  });

  it('is not made by a link for a password, nor by a new link when there is somebody', () => {
    firstAdministrator();
    const made = { person: { name: 'Eve', signInName: 'eve' }, passwordHash: 'h' };
    const wrong = makeLink(db, { kind: 'password', person: 'p' }, AT);
    expect(addFirstAdministrator(db, { ...made, token: wrong }, AT).ok).toBe(false);
    const late = makeLink(db, { kind: 'first-administrator' }, AT);
    expect(addFirstAdministrator(db, { ...made, token: late }, AT).ok).toBe(false);
    expect(listPeople(db)).toHaveLength(1);
  });
});

describe('people', () => {
  it('are added without a password and choose one by a link, which ends their sessions', () => {
    firstAdministrator();
    const id = person('jo', 'planner');
    expect(findPerson(db, id)).toMatchObject({ signInName: 'jo', hasPassword: false, role: 'planner' });
    session('s', id);
    const link = makePasswordLink(db, id, ACTOR);
    if (!link.ok) throw new Error(link.why);
    expect(setPasswordByLink(db, { token: link.token, passwordHash: 'h' }, AT)).toEqual({ ok: true, id });
    expect(passwordHashOf(db, id)).toBe('h');
    expect(findPerson(db, id)?.sessionCount).toBe(0);
    expect(setPasswordByLink(db, { token: link.token, passwordHash: 'i' }, AT).ok).toBe(false);
    expect(passwordHashOf(db, id)).toBe('h');
  });

  it('have sign-in names of their own', () => {
    person('jo', 'planner');
    expect(addPerson(db, { name: 'J', signInName: 'jo', role: 'viewer' }, ACTOR)).toEqual({
      ok: false,
      why: 'sign-in-name-taken',
    });
  });

  it('who change their password stay signed in here and nowhere else, and links for them are void', () => {
    const id = firstAdministrator();
    session('here', id);
    session('there', id);
    const link = makePasswordLink(db, id, ACTOR);
    replacePassword(db, { id, keepSession: 'here', passwordHash: 'hash-2' }, AT);
    expect(
      db
        .select()
        .from(sessions)
        .all()
        .map((row) => row.id),
    ).toEqual(['here']);
    expect(passwordHashOf(db, id)).toBe('hash-2');
    expect(link.ok && purposeOfLink(db, link.token, AT)).toBeNull();
  });

  it('who are disabled lose sessions and links at once, and get no new link until they are let in again', () => {
    firstAdministrator();
    const id = person('jo', 'planner');
    session('s', id);
    const link = makePasswordLink(db, id, ACTOR);
    expect(disablePerson(db, id, ACTOR).ok).toBe(true);
    expect(findPerson(db, id)).toMatchObject({ isDisabled: true, sessionCount: 0 });
    expect(link.ok && purposeOfLink(db, link.token, AT)).toBeNull();
    expect(makePasswordLink(db, id, ACTOR).ok).toBe(false);
    expect(enablePerson(db, id, ACTOR).ok).toBe(true);
    expect(makePasswordLink(db, id, ACTOR).ok).toBe(true);
  });

  it('always keep an administrator who can sign in', () => {
    const ada = firstAdministrator();
    const last = { ok: false, why: 'last-administrator' };
    expect(changeRole(db, ada, 'viewer', ACTOR)).toEqual(last);
    expect(disablePerson(db, ada, ACTOR)).toEqual(last);
    const bo = person('bo', 'administrator');
    expect(disablePerson(db, ada, ACTOR)).toEqual(last); // bo has no password yet
    const link = makePasswordLink(db, bo, ACTOR);
    setPasswordByLink(db, { token: link.ok ? link.token : '', passwordHash: 'h' }, AT);
    expect(disablePerson(db, ada, ACTOR).ok).toBe(true);
    expect(changeRole(db, bo, 'planner', ACTOR)).toEqual(last);
  });

  it('are signed out one by one', () => {
    firstAdministrator();
    const [jo, bo] = [person('jo', 'planner'), person('bo', 'viewer')];
    for (const [id, userId] of [
      ['1', jo],
      ['2', jo],
      ['3', bo],
    ] as const)
      session(id, userId);
    expect(endSessions(db, jo, ACTOR).ok).toBe(true);
    expect(listPeople(db).map(({ signInName, sessionCount }) => [signInName, sessionCount])).toEqual([
      ['ada', 0],
      ['bo', 1],
      ['jo', 0],
    ]);
  });

  it('are changed on record, apart from the log of the site, and the revision stays', () => {
    importSite(db, makeSite(), ACTOR);
    const revision = readRevision(db);
    firstAdministrator();
    const id = person('jo', 'planner');
    changeRole(db, id, 'shift-lead', ACTOR);
    disablePerson(db, id, ACTOR);
    expect(readPeopleChanges(db, 10).map(({ who, what, person, role }) => [who, what, person, role])).toEqual(
      [
        ['Ada Moss (ada)', 'disabled', 'jo', null],
        ['Ada Moss (ada)', 'role-changed', 'jo', 'shift-lead'],
        ['Ada Moss (ada)', 'added', 'jo', 'planner'],
        ['Ada Moss (ada)', 'added', 'ada', 'administrator'],
      ],
    );
    expect(readRevision(db)).toBe(revision);
    expect(readChanges(db, { limit: 10 })).toHaveLength(1);
  });
});

describe('the demo', () => {
  it('is over with its people when another site is read in', () => {
    importSite(db, makeSite(), ACTOR);
    rememberDemo(db, ACTOR.at);
    db.insert(people)
      .values({
        id: 'demo-viewer',
        name: 'Demo viewer',
        email: 'd@x.invalid',
        emailVerified: false,
        role: 'viewer',
        isDemo: true,
        createdAt: AT,
        updatedAt: AT,
      })
      .run();
    session('s', 'demo-viewer');
    expect([holdsDemo(db), needsAdministrator(db), listPeople(db)]).toEqual([true, true, []]);
    importSite(db, makeSite(), ACTOR);
    expect(holdsDemo(db)).toBe(false);
    expect(db.select().from(people).where(eq(people.isDemo, true)).all()).toEqual([]);
    expect(db.select().from(sessions).all()).toEqual([]);
  });
});

describe('wrong tries to sign in', () => {
  const tried = { account: 'jo@x', address: '192.0.2.7' };
  const tryTimes = (times: number, who = tried, at = AT) =>
    Array.from({ length: times }, () => countTry(db, who, at));

  it('go on until the account has had its number, then wait for the rest of the window', () => {
    expect(tryTimes(TRIES.account)).toEqual(Array(TRIES.account).fill(0));
    expect(countTry(db, tried, AT)).toBe(TRY_WINDOW_MS / 1000);
    expect(countTry(db, tried, later(60_000))).toBe(TRY_WINDOW_MS / 1000 - 60);
  });

  it.each([
    ['just before the window ends', TRY_WINDOW_MS - 1, false],
    ['when it ends', TRY_WINDOW_MS, true],
    ['after it', TRY_WINDOW_MS + 1, true],
  ])('%s: may go on? %s', (_when, ms, mayGoOn) => {
    tryTimes(TRIES.account);
    expect(countTry(db, tried, later(ms)) === 0).toBe(mayGoOn);
  });

  it('on one account do not stop another one', () => {
    tryTimes(TRIES.account + 1);
    expect(countTry(db, { ...tried, account: 'bo@x' }, AT)).toBe(0);
  });

  it('from one address are stopped whichever accounts they are for', () => {
    for (let n = 0; n < TRIES.address; n++) {
      expect(countTry(db, { account: `a${n}@x`, address: tried.address }, AT)).toBe(0);
    }
    expect(countTry(db, { account: 'fresh@x', address: tried.address }, AT)).toBeGreaterThan(0);
    expect(countTry(db, { account: 'fresh@x', address: '192.0.2.8' }, AT)).toBe(0);
  });

  it('are forgiven by a right one: the account starts anew, the address has one less', () => {
    tryTimes(3);
    forgiveTry(db, tried);
    const counts = db.select().from(signInFailures).all();
    expect(counts.map(({ key, count }) => [key.split(':')[0], count])).toEqual([['address', 2]]);
  });

  it('are kept without the names that were typed', () => {
    tryTimes(1);
    expect(JSON.stringify(db.select().from(signInFailures).all())).not.toContain('jo@x');
  });
});
