import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { and, eq, gt, like } from 'drizzle-orm';
import type { Database } from './open-database.ts';
import { verifications } from './tables/people.ts';
import { writeTransaction } from './transaction.ts';

/** What a link lets its holder do: make the first administrator, or choose the password of one person. */
export type LinkPurpose = { kind: 'first-administrator' } | { kind: 'password'; person: string };

export const LINK_VALID_HOURS = 24;

/**
 * A new link's token for this purpose; links made before for the same are void. Only its hash is kept: who reads the
 * database finds no link in it.
 */
export function makeLink(db: Database, purpose: LinkPurpose, at: Date): string {
  const token = randomBytes(24).toString('base64url');
  writeTransaction(db, () => {
    voidLinks(db, purpose);
    const row = { id: randomUUID(), identifier: identifierOf(token), value: JSON.stringify(purpose) };
    const expiresAt = new Date(at.getTime() + LINK_VALID_HOURS * 3_600_000);
    db.insert(verifications)
      .values({ ...row, expiresAt, createdAt: at, updatedAt: at })
      .run();
  });
  return token;
}

/** What this link is good for, or null when there is none, it was used, or it is over (at its very end it is). */
export function purposeOfLink(db: Database, token: string, at: Date): LinkPurpose | null {
  const row = db.select().from(verifications).where(goodLink(token, at)).all()[0];
  return row === undefined ? null : JSON.parse(row.value);
}

/** The same, and the link is used up. Belongs in the transaction that does what the link is for. */
export function takeLink(db: Database, token: string, at: Date): LinkPurpose | null {
  const row = db.delete(verifications).where(goodLink(token, at)).returning().all()[0];
  return row === undefined ? null : JSON.parse(row.value);
}

export function voidLinks(db: Database, purpose: LinkPurpose): void {
  const same = eq(verifications.value, JSON.stringify(purpose));
  db.delete(verifications)
    .where(and(like(verifications.identifier, 'link:%'), same))
    .run();
}

function goodLink(token: string, at: Date) {
  return and(eq(verifications.identifier, identifierOf(token)), gt(verifications.expiresAt, at));
}

function identifierOf(token: string): string {
  return `link:${createHash('sha256').update(token).digest('base64url')}`;
}
