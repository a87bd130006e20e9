import { eq } from 'drizzle-orm';
import type { Role } from '../model/permissions.ts';
import { addressOfSignInName } from '../model/person.ts';
import type { Database } from './open-database.ts';
import { people } from './tables/people.ts';

/** The built-in person who looks round the demo in this role, made at the first visit. Has no password and gets none. */
export function demoPerson(db: Database, role: Role, at: Date): typeof people.$inferSelect {
  const id = `demo-${role}`;
  const fixed = { emailVerified: false, isDemo: true, createdAt: at, updatedAt: at };
  const name = `Demo ${role.replace('-', ' ')}`;
  db.insert(people)
    .values({ id, name, email: addressOfSignInName(`demo.${role}`), role, ...fixed })
    .onConflictDoNothing()
    .run();
  return db.select().from(people).where(eq(people.id, id)).all()[0]!;
}
