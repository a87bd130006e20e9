import { createHash } from 'node:crypto';
import { eq, inArray, lte, sql } from 'drizzle-orm';
import type { Database } from './open-database.ts';
import { signInFailures } from './tables/people.ts';
import { writeTransaction } from './transaction.ts';

/** Wrong tries allowed within the window, for one account and from one network address (where many may sit). */
export const TRIES = { account: 6, address: 30 } as const;
export const TRY_WINDOW_MS = 15 * 60_000;

/** Who tries: the account as it was typed, whether there is one or not, and the network address. */
export type Tried = { account: string; address: string };

/**
 * Counts one try before the password is looked at, so that tries at the same time cannot slip past together. Answers
 * how many seconds to wait, 0 for a try that may go on. A try that proves right is given back by `forgiveTry`.
 */
export function countTry(db: Database, tried: Tried, at: Date): number {
  return writeTransaction(db, () => {
    const over = new Date(at.getTime() - TRY_WINDOW_MS);
    db.delete(signInFailures).where(lte(signInFailures.since, over)).run();
    const keys = keysOf(tried);
    const rows = db
      .select()
      .from(signInFailures)
      .where(inArray(signInFailures.key, Object.values(keys)));
    const waits = rows.all().map((row) => {
      const most = row.key === keys.account ? TRIES.account : TRIES.address;
      return row.count < most ? 0 : row.since.getTime() + TRY_WINDOW_MS - at.getTime();
    });
    const waitMs = Math.max(0, ...waits);
    if (waitMs > 0) return Math.ceil(waitMs / 1000);
    for (const key of Object.values(keys)) {
      db.insert(signInFailures)
        .values({ key, count: 1, since: at })
        .onConflictDoUpdate({
          target: signInFailures.key,
          set: { count: sql`${signInFailures.count} + 1` },
        })
        .run();
    }
    return 0;
  });
}

/** The try was right: the account starts anew, and the address has one wrong try less. */
export function forgiveTry(db: Database, tried: Tried): void {
  const { account, address } = keysOf(tried);
  writeTransaction(db, () => {
    db.delete(signInFailures).where(eq(signInFailures.key, account)).run();
    db.update(signInFailures)
      .set({ count: sql`max(0, ${signInFailures.count} - 1)` })
      .where(eq(signInFailures.key, address))
      .run();
  });
}

/** Hashed: people type passwords into the wrong field. */
function keysOf({ account, address }: Tried) {
  const hash = (text: string) => createHash('sha256').update(text).digest('base64url');
  return { account: `account:${hash(account)}`, address: `address:${hash(address)}` };
}
