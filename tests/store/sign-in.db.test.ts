import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashPassword } from 'better-auth/crypto';
import { eq } from 'drizzle-orm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { importSite } from '../../lib/store/import-site.ts';
import { makeSignIn, type SignIn } from '../../lib/store/make-sign-in.ts';
import { makeLink } from '../../lib/store/one-time-links.ts';
import { type Database, openDatabase } from '../../lib/store/open-database.ts';
import { addFirstAdministrator, addPerson, disablePerson, listPeople } from '../../lib/store/people.ts';
import { addressOf, isDemoOffered, isOwnOrigin } from '../../lib/store/request-origin.ts';
import { rememberDemo } from '../../lib/store/settings.ts';
import { isLoopback, readSignInSettings, type SignInSettings } from '../../lib/store/sign-in-settings.ts';
import { people, sessions } from '../../lib/store/tables/people.ts';
import { makeSite } from '../site-builder.ts';

const PASSWORD = 'seven tall blue racks';
const SETTINGS: SignInSettings = {
  secret: 'a secret for the tests that is long enough, 0123456789',
  url: null,
  sessionHours: 12,
  isLoopbackOnly: true,
  isBehindProxy: false,
};
const HERE = { host: '127.0.0.1:4173', 'x-forwarded-for': '127.0.0.1' };

const hashed = hashPassword(PASSWORD);

let db: Database;
let signIn: SignIn;
let ada: string;
beforeEach(async () => {
  db = openDatabase(':memory:');
  signIn = makeSignIn(db, SETTINGS);
  const now = new Date();
  const token = makeLink(db, { kind: 'first-administrator' }, now);
  const passwordHash = await hashed;
  const person = { name: 'Ada Moss', signInName: 'ada' };
  const saved = addFirstAdministrator(db, { token, person, passwordHash }, now);
  ada = saved.ok ? saved.id : '';
});

function post(path: string, body: unknown, library = signIn): Promise<Response> {
  const headers = { 'content-type': 'application/json', origin: 'http://127.0.0.1:4173', ...HERE };
  const url = `http://127.0.0.1:4173/api/auth/${path}`;
  return library.handler(new Request(url, { method: 'POST', headers, body: JSON.stringify(body) }));
}

const enter = (password = PASSWORD, email = 'ada@sign-in-name.invalid') =>
  post('sign-in/email', { email, password });

/** The request headers of a browser that got this answer. */
function browserAfter(answer: Response): Headers {
  const cookies = answer.headers.getSetCookie().map((cookie) => cookie.split(';')[0]);
  return new Headers({ ...HERE, cookie: cookies.join('; ') });
}

describe('signing in', () => {
  it('gives a session whose cookie no script may read and no other site sends along', async () => {
    const answer = await enter();
    expect(answer.status).toBe(200);
    const cookie = answer.headers.getSetCookie().find((text) => text.includes('session_token'))!;
    expect(cookie).toMatch(/^tinewise\.session_token=/);
    expect(cookie).toMatch(/; HttpOnly/i);
    expect(cookie).toMatch(/; SameSite=Lax/i);
    expect(cookie).toMatch(/; Max-Age=43200/i);
    expect(cookie).not.toMatch(/Secure/i);
    const found = await signIn.api.getSession({ headers: browserAfter(answer) });
    expect(found?.user).toMatchObject({ id: ada, role: 'administrator', isDemo: false });
  });

  it('takes a secure cookie where Tinewise is opened by https', async () => {
    const url = new URL('https://tinewise.example');
    const library = makeSignIn(db, { ...SETTINGS, url });
    const body = { email: 'ada@sign-in-name.invalid', password: PASSWORD };
    const request = new Request('https://tinewise.example/api/auth/sign-in/email', {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: url.origin },
      body: JSON.stringify(body),
    });
    const cookie = (await library.handler(request)).headers.getSetCookie().join('\n');
    expect(cookie).toMatch(/^__Secure-tinewise\.session_token=/);
    expect(cookie).toMatch(/; Secure/);
  });

  it.each([
    ['a wrong password', 'seven tall blue rocks', 'ada@sign-in-name.invalid'],
    ['somebody who is not there', PASSWORD, 'eve@sign-in-name.invalid'],
  ])('with %s is answered the same way', async (_what, password, email) => {
    const answer = await enter(password, email);
    expect(answer.status).toBe(401);
    expect(await answer.json()).toEqual(await (await enter('another wrong one', 'x@y.example')).json());
  });

  it('is not for somebody without a password, nor for a disabled one', async () => {
    const now = new Date().toISOString();
    addPerson(db, { name: 'Jo', signInName: 'jo', role: 'administrator' }, { who: 'Ada', at: now });
    expect((await enter(PASSWORD, 'jo@sign-in-name.invalid')).status).toBe(401);
    db.update(people).set({ disabledAt: new Date() }).where(eq(people.id, ada)).run();
    const answer = await enter();
    expect(answer.ok).toBe(false);
    expect(answer.headers.getSetCookie().join()).not.toMatch(/session_token=[^;]{20}/);
    expect(db.select().from(sessions).all()).toEqual([]);
  });

  it('up is off: nobody lets themselves in', async () => {
    const answer = await post('sign-up/email', { name: 'Eve', email: 'eve@x.example', password: PASSWORD });
    expect(answer.ok).toBe(false);
    expect(listPeople(db)).toHaveLength(1);
  });
});

describe('a session', () => {
  it('is nobody once it has ended, and is gone from the database', async () => {
    const browser = browserAfter(await enter());
    expect(await signIn.api.getSession({ headers: browser })).not.toBeNull();
    db.update(sessions)
      .set({ expiresAt: new Date(Date.now() - 1) })
      .run();
    expect(await signIn.api.getSession({ headers: browser })).toBeNull();
    expect(db.select().from(sessions).all()).toEqual([]);
  });

  it('moves its end on while it is used', async () => {
    const browser = browserAfter(await enter());
    const soon = new Date(Date.now() + 3_600_000);
    db.update(sessions).set({ expiresAt: soon }).run();
    await signIn.api.getSession({ headers: browser, query: { disableRefresh: true } });
    expect(db.select().from(sessions).all()[0]!.expiresAt).toEqual(soon);
    const { headers } = await signIn.api.getSession({ headers: browser, returnHeaders: true });
    const end = db.select().from(sessions).all()[0]!.expiresAt.getTime();
    expect(Math.abs(end - Date.now() - 12 * 3_600_000)).toBeLessThan(60_000);
    expect(headers.getSetCookie().join()).toContain('Max-Age=43200');
  });

  it('ends at once when its person is disabled', async () => {
    const browser = browserAfter(await enter());
    const actor = { who: 'Bo', at: new Date().toISOString() };
    db.insert(people)
      .values({
        ...db.select().from(people).all()[0]!,
        id: 'bo',
        email: 'bo@x.invalid',
        role: 'administrator',
      })
      .run();
    db.run(`INSERT INTO accounts SELECT 'bo', 'bo', 'bo', provider_id, password, null, null, null, null, null, null,
      created_at, updated_at FROM accounts`);
    expect(disablePerson(db, ada, actor).ok).toBe(true);
    expect(await signIn.api.getSession({ headers: browser })).toBeNull();
  });

  it('is not made up: a cookie with another signature is nobody', async () => {
    const browser = browserAfter(await enter());
    const cookie = browser.get('cookie')!;
    const forged = new Headers({ ...HERE, cookie: cookie.replace(/\.[^.;]{6}/, '.AAAAAA') });
    expect(forged.get('cookie')).not.toBe(cookie);
    expect(await signIn.api.getSession({ headers: forged })).toBeNull();
    const other = makeSignIn(db, {
      ...SETTINGS,
      secret: 'another secret that is long enough too, 9876543210',
    });
    expect(await other.api.getSession({ headers: browser })).toBeNull();
  });
});

describe('looking round the demo without a password', () => {
  const asked = (headers: Record<string, string>, settings = SETTINGS) =>
    isDemoOffered(db, new Headers(headers), settings);

  beforeEach(() => {
    importSite(db, makeSite(), { who: 'the demo', at: '2026-03-02T06:00:00Z' });
    rememberDemo(db, '2026-03-02T06:00:00Z');
  });

  it.each([
    ['from the machine itself', HERE, true],
    ['by its name', { host: 'localhost:4173', 'x-forwarded-for': '::1' }, true],
    ['by IPv6', { host: '[::1]:4173', 'x-forwarded-for': '::ffff:127.0.0.1' }, true],
    ['by another name, as after a rebound name', { ...HERE, host: 'evil.example:4173' }, false],
    ['from another machine', { ...HERE, 'x-forwarded-for': '192.0.2.7' }, false],
    ['through a proxy', { ...HERE, 'x-forwarded-for': '192.0.2.7, 127.0.0.1' }, false],
    ['from nobody knows where', { host: '127.0.0.1:4173' }, false],
    ['without a host', { 'x-forwarded-for': '127.0.0.1' }, false],
  ])('%s: offered? %s', (_where, headers, expected) => {
    expect(asked(headers as Record<string, string>)).toBe(expected);
  });

  it('is not offered when the server listens to more than its own machine', () => {
    expect(asked(HERE, { ...SETTINGS, isLoopbackOnly: false })).toBe(false);
  });

  it('gives a session of a built-in person in that role', async () => {
    const answer = await post('demo-sign-in', { role: 'shift-lead' });
    expect(answer.status).toBe(200);
    const found = await signIn.api.getSession({ headers: browserAfter(answer) });
    expect(found?.user).toMatchObject({ name: 'Demo shift lead', role: 'shift-lead', isDemo: true });
    expect((await post('demo-sign-in', { role: 'shift-lead' })).status).toBe(200);
    expect((await post('demo-sign-in', { role: 'owner' })).status).toBe(400);
  });

  it('is refused once another site was read in, and on a server that others reach', async () => {
    const open = makeSignIn(db, { ...SETTINGS, isLoopbackOnly: false });
    expect((await post('demo-sign-in', { role: 'viewer' }, open)).status).toBe(403);
    importSite(db, makeSite(), { who: 'Ada', at: '2026-03-02T07:00:00Z' });
    expect((await post('demo-sign-in', { role: 'viewer' })).status).toBe(403);
    expect(db.select().from(sessions).all()).toEqual([]);
  });
});

describe('where a request comes from', () => {
  const here = 'http://127.0.0.1:4173';
  it.each([
    ['a page of ours', { host: '127.0.0.1:4173', origin: here }, null, true],
    ['another site', { host: '127.0.0.1:4173', origin: 'http://evil.example' }, null, false],
    ['another port', { host: '127.0.0.1:4173', origin: 'http://127.0.0.1:4174' }, null, false],
    ['nobody says', { host: '127.0.0.1:4173' }, null, false],
    ['a page without an origin', { host: '127.0.0.1:4173', origin: 'null' }, null, false],
    [
      'the told address',
      { host: 'x', origin: 'https://tinewise.example' },
      'https://tinewise.example/',
      true,
    ],
    ['not the told address', { host: 'x', origin: 'http://x' }, 'https://tinewise.example/', false],
  ])('%s: our own? %s', (_what, headers, url, expected) => {
    const settings = { ...SETTINGS, url: url === null ? null : new URL(url) };
    expect(isOwnOrigin(new Headers(headers as Record<string, string>), settings)).toBe(expected);
  });

  it('is the last address told, since that one the server itself has added; behind a proxy the one before', () => {
    const headers = new Headers({ 'x-forwarded-for': '1.1.1.1, 2.2.2.2, 3.3.3.3' });
    expect(addressOf(headers, SETTINGS)).toBe('3.3.3.3');
    expect(addressOf(headers, { ...SETTINGS, isBehindProxy: true })).toBe('2.2.2.2');
    expect(addressOf(new Headers(), SETTINGS)).toBe('unknown');
  });

  it.each([
    ['127.0.0.1', true],
    ['127.1.2.3', true],
    ['localhost', true],
    ['::1', true],
    ['[::1]', true],
    ['::ffff:127.0.0.1', true],
    ['0.0.0.0', false],
    ['::', false],
    ['', false],
    ['127.0.0.1.evil.example', false],
    ['192.168.1.5', false],
    ['localhost.evil.example', false],
  ])('%s is this machine alone: %s', (host, expected) => {
    expect(isLoopback(host)).toBe(expected);
  });
});

describe('the settings', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'tinewise-secret-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('make a secret at the first start, keep it, and let nobody else read it', () => {
    const first = readSignInSettings({}, folder);
    expect(first.secret).toMatch(/^[\w-]{64}$/);
    expect(readSignInSettings({}, folder).secret).toBe(first.secret);
    expect(statSync(join(folder, 'sign-in-secret')).mode & 0o777).toBe(0o600);
    const elsewhere = mkdtempSync(join(tmpdir(), 'tinewise-secret-'));
    expect(readSignInSettings({}, elsewhere).secret).not.toBe(first.secret);
    rmSync(elsewhere, { recursive: true });
  });

  it('take TINEWISE_SECRET of at least 32 characters', () => {
    const of = (length: number) => readSignInSettings({ TINEWISE_SECRET: 'x'.repeat(length) }, folder).secret;
    expect(() => of(31)).toThrow('at least 32');
    expect([of(32).length, of(33).length]).toEqual([32, 33]);
  });

  it.each([
    ['0', null],
    ['0.5', 0.5],
    ['720', 720],
    ['721', null],
    ['soon', null],
    [undefined, 12],
  ])('sessions of %s hours', (told, expected) => {
    const hours = () => readSignInSettings({ TINEWISE_SESSION_HOURS: told }, folder).sessionHours;
    if (expected === null) expect(hours).toThrow('TINEWISE_SESSION_HOURS');
    else expect(hours()).toBe(expected);
  });

  it('take an address of http or https alone, and a server that is told nothing is not for this machine alone', () => {
    expect(() => readSignInSettings({ TINEWISE_URL: 'tinewise.example' }, folder)).toThrow('TINEWISE_URL');
    expect(() => readSignInSettings({ TINEWISE_URL: 'ftp://x' }, folder)).toThrow('TINEWISE_URL');
    expect(readSignInSettings({ TINEWISE_URL: 'https://t.example' }, folder).url?.origin).toBe(
      'https://t.example',
    );
    const alone = (host?: string) => readSignInSettings({ TINEWISE_HOST: host }, folder).isLoopbackOnly;
    expect([alone(), alone('0.0.0.0'), alone('127.0.0.1')]).toEqual([false, false, true]);
  });
});
