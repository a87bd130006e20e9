import { readFileSync } from 'node:fs';
import { CommandFault, unknownName } from './commands/command-fault.ts';
import { standardOutput } from './commands/standard-output.ts';

const HELP = `tinewise - which lift trucks can reach and lift which rack locations safely, and why

  tinewise check SITE.json --load ID [options]   judge one load at every location with every truck
  tinewise audit FILE... [options]               find what to act on in one or many site files
  tinewise demo                                  write the demo depot as a site file
  tinewise backup FILE [--force]                 copy the database to a file while the server runs
  tinewise restore FILE                          put a backup in the place of the database
  tinewise COMMAND --help                        what a command takes
  tinewise --help | --version

SITE.json may be "-": the site is then read from standard input. Exit code: 0 answered (whatever the verdicts),
1 the question or a site file could not be used, 2 an audit has a finding that says stop.
`;

type Command = (args: readonly string[]) => Promise<number>;

const COMMANDS: Record<string, () => Promise<Command>> = {
  check: async () => answering((await import('./commands/check.ts')).check),
  audit: async () => (await import('./commands/audit.ts')).audit,
  demo: async () => answering((await import('./commands/demo.ts')).demo),
  backup: async () => answering((await import('./commands/backup.ts')).backup),
  restore: async () => answering((await import('./commands/restore.ts')).restore),
};

/** A command that either answers or throws what stood against it. */
function answering(run: (args: readonly string[]) => Promise<void>): Command {
  return async (args) => {
    await run(args);
    return 0;
  };
}

/**
 * Runs the command that was typed. Gives the exit code: 0 answered, 1 refused with the reasons on standard error, 2 as
 * the command says.
 */
export async function runTinewise(args: readonly string[]): Promise<number> {
  try {
    const [name, ...rest] = args;
    if (name === '--help' || name === '-h') await say(HELP);
    else if (name === '--version') await say(`${version()}\n`);
    else return await commandNamed(name)(rest);
    return 0;
  } catch (error) {
    if (!(error instanceof CommandFault)) throw error;
    process.stderr.write(`${error.lines.join('\n')}\n`);
    return 1;
  }
}

function commandNamed(name: string | undefined): Command {
  const names = Object.keys(COMMANDS);
  if (name === undefined) {
    throw new CommandFault([
      `Command: nothing came, one of ${names.join(', ')} was expected.`,
      'See tinewise --help.',
    ]);
  }
  if (!Object.hasOwn(COMMANDS, name)) {
    throw unknownName('Command', name, names, `one of ${names.join(', ')}`);
  }
  return async (args) => (await COMMANDS[name]!())(args);
}

async function say(text: string): Promise<void> {
  const output = standardOutput();
  await output.write(text);
  await output.end();
}

function version(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
