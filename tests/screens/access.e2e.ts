import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type APIRequestContext, expect, request, test } from '@playwright/test';
import { may, type Permission, ROLES } from '../../lib/model/permissions.ts';
import { SIGNED_OUT, signedInAs } from './signed-in.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What a page, a route handler or an action asks for: a permission, or `open` for those who are not signed in. */
type Needs = Permission | 'open';

/** Every page, by an address of it that exists in the demo. */
const PAGES: Record<string, { address: string; needs: Needs }> = {
  '(overview)': { address: '/', needs: 'read' },
  account: { address: '/account', needs: 'read' },
  changes: { address: '/changes', needs: 'read' },
  'changes/[id]': { address: '/changes/1', needs: 'read' },
  export: { address: '/export', needs: 'read' },
  findings: { address: '/findings', needs: 'read' },
  'first-start': { address: '/first-start', needs: 'open' },
  'hand-pick': { address: '/hand-pick', needs: 'read' },
  import: { address: '/import', needs: 'read' },
  loads: { address: '/loads', needs: 'read' },
  'loads/[id]': { address: '/loads/ODD-12', needs: 'read' },
  'loads/[id]/edit': { address: '/loads/ODD-12/edit', needs: 'change-loads' },
  'loads/new': { address: '/loads/new', needs: 'change-loads' },
  people: { address: '/people', needs: 'manage-people' },
  'rack-advice': { address: '/rack-advice', needs: 'read' },
  'rack-shape': { address: '/rack-shape', needs: 'read' },
  'rack-shape/[run]': { address: '/rack-shape/A5-L', needs: 'read' },
  racks: { address: '/racks', needs: 'read' },
  'set-password': { address: '/set-password', needs: 'open' },
  'sign-in': { address: '/sign-in', needs: 'open' },
  site: { address: '/site', needs: 'read' },
  'site/policy': { address: '/site/policy', needs: 'set-policy' },
  trucks: { address: '/trucks', needs: 'read' },
  'trucks/[id]': { address: '/trucks/CB-2', needs: 'read' },
  'trucks/[id]/edit': { address: '/trucks/CB-2/edit', needs: 'change-trucks' },
  'trucks/new': { address: '/trucks/new', needs: 'change-trucks' },
  wear: { address: '/wear', needs: 'read' },
  'which-truck': { address: '/which-truck', needs: 'read' },
  working: { address: '/working', needs: 'read' },
};

/**
 * Every method of every route handler, and what somebody gets who may ask, 200 unless told. `/api/auth` judges by itself:
 * see sign-in.e2e.ts.
 */
const HANDLERS: Record<string, { address: string; needs: Needs; allowed?: number }> = {
  'api/auth/[...all] POST': { address: '/api/auth/nowhere', needs: 'open', allowed: 404 },
  'api/lift GET': { address: '/api/lift?load=ODD-12&location=A1-L-01-1-1&truck=CB-2', needs: 'read' },
  'api/load-change GET': { address: '/api/load-change', needs: 'read', allowed: 400 }, // no load is named
  'api/plate-photos/[hash] GET': { address: '/api/plate-photos/none', needs: 'read', allowed: 404 },
  'api/site GET': { address: '/api/site', needs: 'read' },
  'api/site/changes GET': { address: '/api/site/changes?since=1', needs: 'read' },
  'api/suggestions GET': { address: '/api/suggestions?of=load&find=o', needs: 'read' },
  'changes/[id]/file GET': { address: '/changes/1/file', needs: 'read', allowed: 404 }, // nothing stood before the first
  'export/[file] GET': { address: '/export/site.json', needs: 'read' },
  'import/apply POST': { address: '/import/apply', needs: 'import-lists', allowed: 422 }, // an empty form
  'site/file GET': { address: '/site/file', needs: 'read' },
};

/**
 * Every server action, what it is called with, and what it asks for before it looks at that. The open ones ask for a
 * one-time link instead; which facts may be changed is then judged by CHANGE_PERMISSION.
 */
const ACTIONS: Record<string, { needs: Needs; takes: 'form' | 'state-and-form' | 'nothing' }> = {
  'app/_parts/units-action.ts chooseUnits': { needs: 'read', takes: 'form' },
  'app/account/actions.ts changePassword': { needs: 'read', takes: 'state-and-form' },
  'app/changes/actions.ts undoChange': { needs: 'read', takes: 'form' },
  'app/first-start/actions.ts makeFirstAdministrator': { needs: 'open', takes: 'state-and-form' },
  'app/loads/_entry/actions.ts deleteLoadEntry': { needs: 'change-loads', takes: 'state-and-form' },
  'app/loads/_entry/actions.ts saveLoadEntry': { needs: 'change-loads', takes: 'state-and-form' },
  'app/people/actions.ts changePerson': { needs: 'manage-people', takes: 'state-and-form' },
  'app/people/actions.ts letIn': { needs: 'manage-people', takes: 'state-and-form' },
  'app/rack-shape/actions.ts deleteRunShape': { needs: 'change-racks', takes: 'nothing' },
  'app/rack-shape/actions.ts saveRunShape': { needs: 'read', takes: 'nothing' }, // then by what the change touches
  'app/rack-shape/actions.ts undoRunShape': { needs: 'read', takes: 'nothing' },
  'app/set-password/actions.ts setPassword': { needs: 'open', takes: 'state-and-form' },
  'app/site/actions.ts importSiteFile': { needs: 'import-site', takes: 'state-and-form' },
  'app/site/policy/actions.ts saveChangedPolicy': { needs: 'set-policy', takes: 'state-and-form' },
  'app/trucks/_entry/actions.ts deleteTruckEntry': { needs: 'change-trucks', takes: 'state-and-form' },
  'app/trucks/_entry/actions.ts saveTruckEntry': { needs: 'change-trucks', takes: 'state-and-form' },
};

/** The first statement of whatever is not open. */
const ASKS_FIRST = /^\s*(?:const (?:\w+|\{ \w+ \}) = )?await require(?:Permission|Actor)\('([\w-]+)'\);/;

const VISITORS = ['nobody', ...ROLES] as const;
type Visitor = (typeof VISITORS)[number];

test.describe('the lists above', () => {
  test('name every page, and no page that is not there', () => {
    const found = filesNamed('page.tsx')
      .map((path) => path.replace(/\/?page\.tsx$/, ''))
      .sort();
    expect(found).toEqual(Object.keys(PAGES).sort());
  });

  test('name every method of every route handler', () => {
    const found = filesNamed('route.ts').flatMap((path) => {
      const text = readFileSync(join(root, 'app', path), 'utf8');
      const methods = [...text.matchAll(/^export (?:async function|const) (GET|POST|PUT|PATCH|DELETE)\b/gm)];
      return methods.map(([, method]) => `${path.replace(/\/route\.ts$/, '')} ${method}`);
    });
    expect(found.sort()).toEqual(Object.keys(HANDLERS).sort());
  });

  test('name every server action that was built', () => {
    expect(
      builtActions()
        .map(({ name }) => name)
        .sort(),
    ).toEqual(Object.keys(ACTIONS).sort());
  });

  test('are what each page, handler and action asks for before it does anything else', () => {
    const asked = [
      ...Object.entries(PAGES).map(([page, { needs }]) => [`${page}/page.tsx`, 'default', needs] as const),
      ...Object.entries(HANDLERS).map(([handler, { needs }]) => {
        const [folder, method] = handler.split(' ');
        return [`${folder}/route.ts`, method!, needs] as const;
      }),
      ...Object.entries(ACTIONS).map(([action, { needs }]) => {
        const [file, name] = action.split(' ');
        return [relative('app', file!), name!, needs] as const;
      }),
    ].filter(([, , needs]) => needs !== 'open');
    const wrong = asked.filter(([file, name, needs]) => {
      const body = bodyOf(readFileSync(join(root, 'app', file), 'utf8'), name);
      return ASKS_FIRST.exec(body)?.[1] !== needs;
    });
    expect(wrong).toEqual([]);
  });
});

for (const visitor of VISITORS) {
  test.describe(visitor, () => {
    let context: APIRequestContext;
    test.beforeAll(async ({ baseURL }) => {
      context = await request.newContext({
        baseURL: baseURL!,
        extraHTTPHeaders: { origin: baseURL! },
        storageState: visitor === 'nobody' ? SIGNED_OUT : signedInAs(visitor),
      });
    });
    test.afterAll(() => context.dispose());

    for (const [page, { address, needs }] of Object.entries(PAGES)) {
      test(`asks for the page ${page}`, async () => {
        const answer = await context.get(address, { maxRedirects: 0 });
        if (visitor === 'nobody' && needs !== 'open') {
          expect(answer.status()).toBe(303);
          const next = address === '/' ? '' : `?next=${encodeURIComponent(address)}`;
          expect(answer.headers().location).toBe(`/sign-in${next}`);
        } else if (visitor !== 'nobody' && page === 'sign-in') {
          expect(answer.status()).toBe(307); // is signed in already
        } else {
          expect(answer.status()).toBe(mayAsk(visitor, needs) ? 200 : 403);
        }
        expectHeaders(answer.headers());
        expect(answer.headers()['content-security-policy']).toMatch(/script-src 'self' 'nonce-[\w+/=]{20,}'/);
      });
    }

    for (const [handler, { address, needs, allowed }] of Object.entries(HANDLERS)) {
      test(`asks ${handler}`, async () => {
        const method = handler.split(' ')[1]!;
        const form = method === 'POST' ? { multipart: { asked: '' } } : {};
        const answer = await context.fetch(address, { method, maxRedirects: 0, ...form });
        const signedOut = method === 'POST' || address.startsWith('/api/') ? 401 : 303;
        const refused = visitor === 'nobody' ? signedOut : 403;
        expect(answer.status()).toBe(mayAsk(visitor, needs) ? (allowed ?? 200) : refused);
        expectHeaders(answer.headers());
      });
    }

    for (const [action, { needs }] of Object.entries(ACTIONS)) {
      test(`calls ${action}`, async () => {
        const status = await callAction(context, action, '/sign-in');
        if (mayAsk(visitor, needs)) expect(status).toBeLessThan(400);
        else expect(status).toBe(visitor === 'nobody' ? 401 : 403);
      });
    }
  });
}

test('an action called for another page by nobody is refused before it runs', async ({ baseURL }) => {
  const context = await request.newContext({
    baseURL: baseURL!,
    extraHTTPHeaders: { origin: baseURL! },
    storageState: SIGNED_OUT,
  });
  expect(await callAction(context, 'app/site/actions.ts importSiteFile', '/site')).toBe(401);
  await context.dispose();
});

test('an action called from another site is refused', async ({ baseURL }) => {
  const context = await request.newContext({
    baseURL: baseURL!,
    extraHTTPHeaders: { origin: 'http://evil.example' },
    storageState: signedInAs('administrator'),
  });
  expect(await callAction(context, 'app/site/actions.ts importSiteFile', '/site')).toBeGreaterThanOrEqual(
    400,
  );
  await context.dispose();
});

test('static files and the sign carry the headers too', async ({ baseURL }) => {
  const context = await request.newContext({ baseURL: baseURL!, storageState: SIGNED_OUT });
  const page = await (await context.get('/sign-in')).text();
  const script = page.match(/\/_next\/static\/[^"]+\.js/)![0];
  const style = page.match(/\/_next\/static\/[^"]+\.css/)![0];
  for (const address of [script, style, '/icon.svg']) {
    const answer = await context.get(address);
    expect(answer.status()).toBe(200);
    expectHeaders(answer.headers());
  }
  await context.dispose();
});

function mayAsk(visitor: Visitor, needs: Needs): boolean {
  return needs === 'open' || (visitor !== 'nobody' && may(visitor, needs));
}

function expectHeaders(headers: Record<string, string>) {
  expect(headers).toMatchObject({
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'same-origin',
    'cross-origin-opener-policy': 'same-origin',
  });
  expect(headers['permissions-policy']).toContain('camera=(self)');
  expect(headers['x-powered-by']).toBeUndefined();
}

function filesNamed(name: string): string[] {
  const app = join(root, 'app');
  return readdirSync(app, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name === name)
    .map((entry) => relative(app, join(entry.parentPath ?? entry.path, entry.name)))
    .sort();
}

/** What stands between the braces of an exported async function, from its first statement on. */
function bodyOf(text: string, name: string): string {
  const start = text.search(new RegExp(`export (?:default async function|async function ${name}\\()`));
  const opening = /\)(?:: Promise<[^{]*>)? \{\n/.exec(text.slice(Math.max(start, 0)));
  if (start < 0 || opening === null) throw new Error(`${name} was not found`);
  return text.slice(start + opening.index + opening[0].length);
}

/** The server actions of the build that is being tested, as Next has written them down, with a page that each is for. */
function builtActions(): { id: string; name: string; page: string }[] {
  const dist = process.env.NEXT_DIST_DIR ?? '.next';
  const manifest = JSON.parse(
    readFileSync(join(root, dist, 'server/server-reference-manifest.json'), 'utf8'),
  );
  type Entry = { filename: string; exportedName: string; workers: Record<string, unknown> };
  return Object.entries(manifest.node as Record<string, Entry>).map(([id, entry]) => {
    const page = Object.keys(entry.workers).find((worker) => !worker.includes('_not-found'))!;
    return { id, name: `${entry.filename} ${entry.exportedName}`, page };
  });
}

/** Calls an action as a page's script would, with an empty form: its status. */
async function callAction(context: APIRequestContext, name: string, elsewhere: string): Promise<number> {
  const { id, page } = builtActions().find((action) => action.name === name)!;
  // the address of a page that has the action: another page would hand it on and answer 200 itself
  const own = PAGES[page.replace(/^app\//, '').replace(/\/page$/, '')]?.address ?? elsewhere;
  const answer = await context.post(own, {
    headers: {
      'next-action': id,
      accept: 'text/x-component',
      'content-type': `multipart/form-data; boundary=${BOUNDARY}`,
    },
    data: argumentsOf(ACTIONS[name]!.takes),
    maxRedirects: 0,
  });
  return answer.status();
}

const BOUNDARY = 'tinewise-empty-form';

/** What React sends for a call: the arguments as JSON, an empty form among them as `$K1`. */
function argumentsOf(takes: 'form' | 'state-and-form' | 'nothing'): string {
  const part = (field: string, text: string) =>
    `--${BOUNDARY}\r\ncontent-disposition: form-data; name="${field}"\r\n\r\n${text}\r\n`;
  const args = { form: '["$K1"]', 'state-and-form': '[{"state":"none","faults":[]},"$K1"]', nothing: '[]' }[
    takes
  ];
  return `${part('1_none', '')}${part('0', args)}--${BOUNDARY}--\r\n`;
}
