/** What becomes of a request before any screen sees it. */
export type Gate = { kind: 'open' } | { kind: 'go-to'; path: string } | { kind: 'signed-out' };

type Standing = {
  isSignedIn: boolean;
  isDemoOffered: () => boolean;
  needsAdministrator: () => boolean;
};

/** Screens for those who are not signed in. The library's own paths below /api/auth judge for themselves. */
const OPEN = ['/sign-in', '/first-start', '/set-password'];

/**
 * Who is not signed in is sent to the sign-in screen, and from there back; to the screen that says where the link is
 * while there is nobody who could sign in. Data and actions are not sent anywhere: 401.
 */
export function gateOf(method: string, url: { pathname: string; search: string }, standing: Standing): Gate {
  const { pathname, search } = url;
  if (standing.isSignedIn || pathname.startsWith('/api/auth/')) return { kind: 'open' };
  const isLocked = standing.needsAdministrator() && !standing.isDemoOffered();
  if (OPEN.includes(pathname) && !(isLocked && pathname !== '/first-start')) return { kind: 'open' };
  const isPage = (method === 'GET' || method === 'HEAD') && !pathname.startsWith('/api/');
  if (!isPage) return { kind: 'signed-out' };
  if (isLocked) return { kind: 'go-to', path: '/first-start' };
  if (pathname === '/' && search === '') return { kind: 'go-to', path: '/sign-in' };
  return { kind: 'go-to', path: `/sign-in?next=${encodeURIComponent(pathname + withoutMarks(search))}` };
}

/** The address within Tinewise to go to after signing in; the overview for anything else. */
export function nextAddress(asked: unknown): string {
  if (typeof asked !== 'string' || !asked.startsWith('/')) return '/';
  const url = URL.canParse(asked, 'http://here') ? new URL(asked, 'http://here') : null;
  return url !== null && url.origin === 'http://here' ? url.pathname + url.search : '/';
}

/** Next marks what its own script fetches by `_rsc`; that is nothing to come back to. */
function withoutMarks(search: string): string {
  const params = new URLSearchParams(search);
  params.delete('_rsc');
  return params.size === 0 ? '' : `?${params}`;
}
