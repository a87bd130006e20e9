import { nearestTo } from '../../lib/model/refusal.ts';

/** What was typed or read cannot be used: each line goes to standard error, and the command ends with exit code 1. */
export class CommandFault extends Error {
  readonly lines: readonly string[];

  constructor(lines: string | readonly string[]) {
    super('the question or the site file cannot be used');
    this.name = 'CommandFault';
    this.lines = typeof lines === 'string' ? [lines] : lines;
  }
}

const MOST_SUGGESTIONS = 3;

/** The fault of a name that is not among the known ones: what came, what was expected, the nearest of them. */
export function unknownName(
  what: string,
  came: string,
  known: Iterable<string>,
  expected: string,
): CommandFault {
  const nearest = nearestFew(came, new Set(known)).map((name) => JSON.stringify(name));
  const hint = nearest.length === 0 ? '' : ` Did you mean ${nearest.join(' or ')}?`;
  return new CommandFault(`${what}: ${JSON.stringify(came)} came, ${expected} was expected.${hint}`);
}

function nearestFew(came: string, left: Set<string>): string[] {
  const few: string[] = [];
  while (few.length < MOST_SUGGESTIONS) {
    const nearest = nearestTo(came, left);
    if (nearest === null) break;
    few.push(nearest);
    left.delete(nearest);
  }
  return few;
}
