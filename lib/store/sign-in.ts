import 'server-only';
import type { Role } from '../model/permissions.ts';
import { type Person, signInNameOfAddress } from '../model/person.ts';
import { dataFolder } from './data-folder.ts';
import { makeSignIn, type SignIn } from './make-sign-in.ts';
import { addressOf, isDemoOffered, isOwnOrigin } from './request-origin.ts';
import { serverDatabase } from './server-database.ts';
import { readSignInSettings, type SignInSettings } from './sign-in-settings.ts';

// On globalThis for the same reasons as the database.
const held = globalThis as typeof globalThis & {
  tinewiseSignIn?: { library: SignIn; settings: SignInSettings };
};

/** A person with the session by which they are known. */
export type SignedIn = { person: Person; sessionId: string };

/** The server's sign-in library and the settings it was made with. */
export function serverSignIn() {
  if (held.tinewiseSignIn === undefined) {
    const db = serverDatabase();
    const settings = readSignInSettings(process.env, dataFolder());
    held.tinewiseSignIn = { library: makeSignIn(db, settings), settings };
  }
  return held.tinewiseSignIn;
}

/** Who sends this request, or null: no session, one that has ended, a disabled person, a demo person after the demo. */
export async function whoIsSignedIn(headers: Headers): Promise<SignedIn | null> {
  const found = await serverSignIn().library.api.getSession({ headers, query: { disableRefresh: true } });
  return signedInOf(found, headers);
}

/** The same, and the session's end is moved on: the cookies that the browser should get for it come along. */
export async function keepSignedIn(headers: Headers): Promise<{ by: SignedIn | null; cookies: string[] }> {
  const { response, headers: answered } = await serverSignIn().library.api.getSession({
    headers,
    returnHeaders: true,
  });
  return { by: signedInOf(response, headers), cookies: answered.getSetCookie() };
}

export function serverOffersDemo(headers: Headers): boolean {
  return isDemoOffered(serverDatabase(), headers, serverSignIn().settings);
}

export function isFromOwnPage(headers: Headers): boolean {
  return isOwnOrigin(headers, serverSignIn().settings);
}

export function networkAddressOf(headers: Headers): string {
  return addressOf(headers, serverSignIn().settings);
}

type Session = Awaited<ReturnType<SignIn['api']['getSession']>>;

function signedInOf(found: Session, headers: Headers): SignedIn | null {
  if (found === null) return null;
  const { user, session } = found;
  if (user.disabledAt) return null;
  if (user.isDemo && !serverOffersDemo(headers)) return null;
  const { id, name, isDemo } = user;
  const signInName = signInNameOfAddress(user.email);
  return { person: { id, name, signInName, role: user.role as Role, isDemo }, sessionId: session.id };
}
