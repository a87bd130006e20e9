import { index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { ROLES } from '../../model/permissions.ts';

export const PEOPLE_CHANGES = [
  'added',
  'link-made',
  'password-set',
  'role-changed',
  'disabled',
  'enabled',
  'sessions-ended',
] as const;

const when = (name: string) => integer(name, { mode: 'timestamp_ms' });
const created = () => when('created_at').notNull();
const updated = () => when('updated_at').notNull();

/** Who may sign in. The columns from `role` on are ours, the others the sign-in library's. */
export const people = sqliteTable('people', {
  id: text('id').primaryKey(),
  name: text('name').notNull(),
  email: text('email').notNull().unique(),
  emailVerified: integer('email_verified', { mode: 'boolean' }).notNull(),
  image: text('image'),
  createdAt: created(),
  updatedAt: updated(),
  role: text('role', { enum: ROLES }).notNull(),
  /** A built-in person of the demo: no password, and nobody once the demo is gone. */
  isDemo: integer('is_demo', { mode: 'boolean' }).notNull(),
  disabledAt: when('disabled_at'),
});

const person = () =>
  text('person')
    .notNull()
    .references(() => people.id, { onDelete: 'cascade' });

export const sessions = sqliteTable(
  'sessions',
  {
    id: text('id').primaryKey(),
    token: text('token').notNull().unique(),
    userId: person(),
    expiresAt: when('expires_at').notNull(),
    ipAddress: text('ip_address'),
    userAgent: text('user_agent'),
    createdAt: created(),
    updatedAt: updated(),
  },
  (table) => [index('sessions_of_person').on(table.userId)],
);

/** How somebody signs in: here always by a password, kept as the library's hash of it. */
export const accounts = sqliteTable(
  'accounts',
  {
    id: text('id').primaryKey(),
    userId: person(),
    accountId: text('account_id').notNull(),
    providerId: text('provider_id').notNull(),
    password: text('password'),
    accessToken: text('access_token'),
    refreshToken: text('refresh_token'),
    idToken: text('id_token'),
    accessTokenExpiresAt: when('access_token_expires_at'),
    refreshTokenExpiresAt: when('refresh_token_expires_at'),
    scope: text('scope'),
    createdAt: created(),
    updatedAt: updated(),
  },
  (table) => [index('accounts_of_person').on(table.userId)],
);

/** Things that are good once and for a time. Ours: links, of which only the hash is kept. */
export const verifications = sqliteTable(
  'verifications',
  {
    id: text('id').primaryKey(),
    identifier: text('identifier').notNull(),
    value: text('value').notNull(),
    expiresAt: when('expires_at').notNull(),
    createdAt: created(),
    updatedAt: updated(),
  },
  (table) => [index('verifications_by_identifier').on(table.identifier)],
);

/** What administrators did to people, rows only ever added. Apart from the site's change log: only they may read it. */
export const peopleChanges = sqliteTable('people_changes', {
  id: integer('id').primaryKey({ autoIncrement: true }),
  at: text('at').notNull(),
  who: text('who').notNull(),
  /** The sign-in name, which stays when a person does not. */
  person: text('person').notNull(),
  what: text('what', { enum: PEOPLE_CHANGES }).notNull(),
  role: text('role', { enum: ROLES }),
});

/** Wrong tries to sign in, counted for each account and each address from the first one on. */
export const signInFailures = sqliteTable('sign_in_failures', {
  key: text('key').primaryKey(),
  count: integer('count').notNull(),
  since: when('since').notNull(),
});

/** What the server remembers about itself; `demo` while the database holds the demo site. */
export const settings = sqliteTable('settings', {
  key: text('key').primaryKey(),
  value: text('value').notNull(),
});
