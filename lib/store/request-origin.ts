import type { Database } from './open-database.ts';
import { holdsDemo } from './settings.ts';
import { isLoopback, type SignInSettings } from './sign-in-settings.ts';

/** The origins that a page of ours may have, as this request was addressed. */
export function originsOf(headers: Headers, settings: SignInSettings): string[] {
  if (settings.url !== null) return [settings.url.origin];
  const host = headers.get('host');
  return host === null ? [] : [`http://${host}`, `https://${host}`];
}

/** Did a page of ours send this? A request that changes something and does not say where it comes from did not. */
export function isOwnOrigin(headers: Headers, settings: SignInSettings): boolean {
  const origin = headers.get('origin');
  return origin !== null && originsOf(headers, settings).includes(origin);
}

/**
 * The network address that a request came from. instrumentation.ts appends the caller's own to X-Forwarded-For, so the
 * last one cannot be made up; a proxy of the house, where there is one, appended the one before.
 */
export function addressOf(headers: Headers, settings: SignInSettings): string {
  return forwardedFor(headers).at(settings.isBehindProxy ? -2 : -1) ?? 'unknown';
}

/**
 * May whoever asks look round without a password? Only while the database holds the demo, the server listens to this
 * machine alone, and the request was addressed to it by this machine, through nobody else.
 */
export function isDemoOffered(db: Database, headers: Headers, settings: SignInSettings): boolean {
  if (!settings.isLoopbackOnly) return false;
  const host = (headers.get('host') ?? '').replace(/:\d+$/, '');
  const addresses = forwardedFor(headers);
  return isLoopback(host) && addresses.length > 0 && addresses.every(isLoopback) && holdsDemo(db);
}

function forwardedFor(headers: Headers): string[] {
  const text = headers.get('x-forwarded-for') ?? '';
  return text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
}
