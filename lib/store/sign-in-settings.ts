import { randomBytes } from 'node:crypto';
import { chmodSync, linkSync, readFileSync, unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export type SignInSettings = {
  /** Signs the session cookies. */
  secret: string;
  /** The address at which people open Tinewise, where it is told: `https:` makes cookies secure. */
  url: URL | null;
  /** Hours without a request after which a session ends. */
  sessionHours: number;
  /** Is the server heard by this machine alone? Not known is not. */
  isLoopbackOnly: boolean;
  /** Does a proxy of the house stand before the server and append the caller's address to X-Forwarded-For? */
  isBehindProxy: boolean;
};

const SECRET_LENGTH = 32;
const SESSION_HOURS = 12;

/** Reads the settings of signing in from the environment; what cannot be meant is refused, never guessed. */
export function readSignInSettings(env: Record<string, string | undefined>, folder: string): SignInSettings {
  return {
    secret: secretOf(env.TINEWISE_SECRET, folder),
    url: urlOf(env.TINEWISE_URL),
    sessionHours: hoursOf(env.TINEWISE_SESSION_HOURS),
    isLoopbackOnly: isLoopback(env.TINEWISE_HOST ?? ''),
    isBehindProxy: env.TINEWISE_BEHIND_PROXY === '1',
  };
}

/** Is this host name or address the machine itself? `127.0.0.1`, `::1`, `[::1]`, `localhost`, `::ffff:127.0.0.1`. */
export function isLoopback(host: string): boolean {
  const name = host.toLowerCase().replace(/^\[|\]$/g, '');
  return name === 'localhost' || name === '::1' || /^(?:::ffff:)?127(?:\.\d{1,3}){3}$/.test(name);
}

/** TINEWISE_SECRET, else what the data folder keeps, made at the first start and readable by the owner alone. */
function secretOf(set: string | undefined, folder: string): string {
  if (set) {
    if (set.length >= SECRET_LENGTH) return set;
    throw new Error(`TINEWISE_SECRET has ${set.length} characters; at least ${SECRET_LENGTH} were expected.`);
  }
  const path = join(/* turbopackIgnore: true */ folder, 'sign-in-secret');
  const mine = `${path}.${process.pid}`;
  writeFileSync(mine, randomBytes(48).toString('base64url'), { mode: 0o600 });
  try {
    linkSync(mine, path); // whole or not at all, and never over another process's
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    unlinkSync(mine);
  }
  chmodSync(path, 0o600);
  return readFileSync(path, 'utf8');
}

function urlOf(set: string | undefined): URL | null {
  if (!set) return null;
  if (URL.canParse(set) && /^https?:$/.test(new URL(set).protocol)) return new URL(set);
  throw new Error(
    `TINEWISE_URL is ${JSON.stringify(set)}; an address like https://tinewise.example was expected.`,
  );
}

function hoursOf(set: string | undefined): number {
  if (!set) return SESSION_HOURS;
  const hours = Number(set);
  if (hours > 0 && hours <= 24 * 30) return hours;
  throw new Error(
    `TINEWISE_SESSION_HOURS is ${JSON.stringify(set)}; hours above 0, at most 720, were expected.`,
  );
}
