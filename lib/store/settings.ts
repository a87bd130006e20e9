import { eq } from 'drizzle-orm';
import type { Database } from './open-database.ts';
import { people, settings } from './tables/people.ts';

/** Does the database hold the demo site, as it was made or changed since, and no other? */
export function holdsDemo(db: Database): boolean {
  return db.select().from(settings).where(eq(settings.key, 'demo')).all().length > 0;
}

/** From now on the database counts as a demo. Belongs in the transaction that brings the demo site in. */
export function rememberDemo(db: Database, at: string): void {
  db.insert(settings).values({ key: 'demo', value: at }).onConflictDoNothing().run();
}

/** The demo is over: nobody of its built-in people is signed in any longer. */
export function forgetDemo(db: Database): void {
  db.delete(settings).where(eq(settings.key, 'demo')).run();
  db.delete(people).where(eq(people.isDemo, true)).run();
}
