import { betterAuth } from 'better-auth';
import { drizzleAdapter } from 'better-auth/adapters/drizzle';
import { createAuthEndpoint } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import { eq } from 'drizzle-orm';
import * as z from 'zod';
import { ROLES } from '../model/permissions.ts';
import { PASSWORD_LENGTH } from '../model/person.ts';
import { demoPerson } from './demo-people.ts';
import type { Database } from './open-database.ts';
import { isDemoOffered, originsOf } from './request-origin.ts';
import type { SignInSettings } from './sign-in-settings.ts';
import { accounts, people, sessions, verifications } from './tables/people.ts';

export type SignIn = ReturnType<typeof makeSignIn>;

/** A session's end is moved on at most this often. */
const MOVE_ON_S = 300;

/**
 * The sign-in library over our tables. It hashes and compares passwords and keeps sessions and their cookies; people are
 * added by lib/store/people.ts alone, so signing up is off. Its calls wait, ours do not: nothing of it runs inside a
 * transaction, and each of its steps (a session made, moved on, ended) is one statement.
 */
export function makeSignIn(db: Database, settings: SignInSettings) {
  const expiresIn = Math.round(settings.sessionHours * 3600);
  return betterAuth({
    appName: 'Tinewise',
    secret: settings.secret,
    baseURL: settings.url?.origin ?? 'http://127.0.0.1',
    basePath: '/api/auth',
    trustedOrigins: (request) => (request === undefined ? [] : originsOf(request.headers, settings)),
    database: drizzleAdapter(db, {
      provider: 'sqlite',
      schema: { user: people, session: sessions, account: accounts, verification: verifications },
    }),
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: PASSWORD_LENGTH.from,
      maxPasswordLength: PASSWORD_LENGTH.to,
    },
    user: {
      additionalFields: {
        role: { type: [...ROLES], required: true, input: false },
        isDemo: { type: 'boolean', required: true, input: false },
        disabledAt: { type: 'date', required: false, input: false },
      },
    },
    session: { expiresIn, updateAge: Math.min(MOVE_ON_S, Math.floor(expiresIn / 4)) },
    databaseHooks: {
      session: { create: { before: async (session) => !isDisabled(db, session.userId) } },
    },
    advanced: {
      cookiePrefix: 'tinewise',
      useSecureCookies: settings.url?.protocol === 'https:',
      ipAddress: { disableIpTracking: true },
    },
    rateLimit: { enabled: false }, // lib/store/sign-in-limit.ts counts, by account too
    logger: { level: 'error' },
    telemetry: { enabled: false },
    plugins: [demoSignIn(db, settings)],
  });
}

function isDisabled(db: Database, id: string): boolean {
  const row = db.select({ disabledAt: people.disabledAt }).from(people).where(eq(people.id, id)).all()[0];
  return row === undefined || row.disabledAt !== null;
}

/** Signs in as a built-in person, without a password: while the demo is offered to whoever asks, and never else. */
function demoSignIn(db: Database, settings: SignInSettings) {
  const body = z.object({ role: z.enum(ROLES) });
  return {
    id: 'demo-sign-in',
    endpoints: {
      demoSignIn: createAuthEndpoint(
        '/demo-sign-in',
        { method: 'POST', body, requireHeaders: true },
        async (ctx) => {
          if (!isDemoOffered(db, ctx.headers, settings)) throw ctx.error('FORBIDDEN');
          const user = demoPerson(db, ctx.body.role, new Date());
          const session = await ctx.context.internalAdapter.createSession(user.id);
          await setSessionCookie(ctx, { session, user });
          return ctx.json({ role: user.role });
        },
      ),
    },
  };
}
