import { type Instant, instant } from '../../lib/model/quantities.ts';
import { CommandFault } from './command-fault.ts';
import type { Arguments } from './read-arguments.ts';

/** The time of --as-of, or null where none was given. Throws a CommandFault on what is not a time. */
export function timeOf(typed: Arguments): Instant | null {
  const came = typed.values.get('as-of');
  if (came === undefined) return null;
  const read = instant.safeParse(came);
  if (read.success) return read.data;
  throw new CommandFault(
    `Option --as-of: ${JSON.stringify(came)} came, a time in UTC such as "2026-03-02T06:30:00Z" was expected.`,
  );
}
