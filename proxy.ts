import { type NextRequest, NextResponse } from 'next/server';
import { contentPolicy } from '@/app/_parts/content-policy.ts';
import { gateOf } from '@/app/_parts/gate.ts';
import { needsAdministrator } from '@/lib/store/people.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';
import { keepSignedIn, serverOffersDemo } from '@/lib/store/sign-in.ts';

/**
 * Stands before every page, action and route handler: who is not signed in gets no further than the screens for signing
 * in. What somebody who is signed in may do is judged where it is done (requirePermission). Also gives each page its
 * content policy with a fresh nonce, and moves the end of the session on.
 */
export async function proxy(request: NextRequest): Promise<NextResponse> {
  const { by, cookies } = await keepSignedIn(request.headers);
  const gate = gateOf(request.method, request.nextUrl, {
    isSignedIn: by !== null,
    isDemoOffered: () => serverOffersDemo(request.headers),
    needsAdministrator: () => needsAdministrator(serverDatabase()),
  });
  const policy = contentPolicy(Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64'));
  const response = answer(request, gate, policy);
  response.headers.set('content-security-policy', policy);
  for (const cookie of cookies) response.headers.append('set-cookie', cookie);
  return response;
}

function answer(request: NextRequest, gate: ReturnType<typeof gateOf>, policy: string): NextResponse {
  switch (gate.kind) {
    case 'open': {
      const headers = new Headers(request.headers);
      headers.set('content-security-policy', policy); // Next takes the nonce for its scripts from here
      return NextResponse.next({ request: { headers } });
    }
    case 'go-to':
      return NextResponse.redirect(new URL(gate.path, request.url), 303);
    case 'signed-out':
      return new NextResponse('You are signed out. Load the page again to sign in.', {
        status: 401,
        headers: { 'content-type': 'text/plain', 'cache-control': 'no-store' },
      });
  }
}

export const config = { matcher: ['/((?!_next/static/|icon.svg$).*)'] };
