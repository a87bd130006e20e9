import 'server-only';
import * as z from 'zod';
import { addressOfSignInName } from '@/lib/model/person.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { isFromOwnPage, networkAddressOf, serverSignIn } from '@/lib/store/sign-in.ts';
import { countTry, forgiveTry } from '@/lib/store/sign-in-limit.ts';
import { tooManyTriesSentence } from '@/lib/words/people.ts';

/** What the sign-in screen shows when somebody is not let in. */
export type SignInRefused = { message: string };

const signInSchema = z.object({ name: z.string().max(200), password: z.string().max(1000) });

const WRONG =
  'This name and password do not go together. Nothing else is told, so that nobody can find out names.';
const NO_DEMO = 'Looking round without a password is for the demo, on the machine that it runs on.';

/**
 * The paths that are open: sign-in, demo-sign-in, sign-out. The library's other ones do not exist here, and what it
 * answers besides cookies is not handed on: a script must not learn the session's token. Only a page of ours may ask.
 */
export async function answerSignIn(request: Request): Promise<Response> {
  const { pathname } = new URL(request.url);
  if (!isFromOwnPage(request.headers)) {
    return refuse(403, 'This request does not come from a page of Tinewise.');
  }
  switch (pathname) {
    case '/api/auth/sign-in':
      return signIn(request);
    case '/api/auth/sign-out':
      return cookiesOf(await serverSignIn().library.handler(request));
    case '/api/auth/demo-sign-in': {
      const answer = await serverSignIn().library.handler(request);
      return answer.ok ? cookiesOf(answer) : refuse(403, NO_DEMO);
    }
    default:
      return refuse(404, 'There is nothing at this address.');
  }
}

async function signIn(request: Request): Promise<Response> {
  const body = signInSchema.safeParse(await request.json().catch(() => null));
  if (!body.success) return refuse(400, 'A name and a password were expected.');
  const email = addressOfSignInName(body.data.name);
  const tried = { account: email, address: networkAddressOf(request.headers) };
  const db = serverDatabase();
  const waitS = countTry(db, tried, new Date());
  if (waitS > 0) return refuse(429, tooManyTriesSentence(waitS), { 'retry-after': String(waitS) });
  const answer = await askLibrary(request, { email, password: body.data.password });
  if (!answer.ok) return refuse(401, WRONG);
  forgiveTry(db, tried);
  return cookiesOf(answer);
}

function cookiesOf(answer: Response): Response {
  const headers = new Headers({ 'cache-control': 'no-store' });
  for (const cookie of answer.headers.getSetCookie()) headers.append('set-cookie', cookie);
  return new Response(null, { status: answer.ok ? 204 : answer.status, headers });
}

function askLibrary(request: Request, body: { email: string; password: string }): Promise<Response> {
  const headers = new Headers(request.headers);
  headers.delete('content-length');
  const url = new URL('/api/auth/sign-in/email', request.url);
  return serverSignIn().library.handler(
    new Request(url, { method: 'POST', headers, body: JSON.stringify(body) }),
  );
}

function refuse(status: number, message: string, headers: Record<string, string> = {}): Response {
  const body: SignInRefused = { message };
  return Response.json(body, { status, headers: { 'cache-control': 'no-store', ...headers } });
}
