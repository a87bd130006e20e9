import { readFileSync } from 'node:fs';
import { CommandFault, unknownName } from './commands/command-fault.ts';
import { standardOutput } from './commands/standard-output.ts';

const HELP = `tinewise - which lift trucks can reach and lift which rack locations safely, and why

  tinewise check SITE.json --load ID [options]   judge one load at every location with every truck
  tinewise demo                                  write the demo depot as a site file
  tinewise COMMAND --help                        what a command takes
  tinewise --help | --version

SITE.json may be "-": the site is then read from standard input. Exit code: 0 answered (whatever the verdicts),
1 the question or the site file could not be used; the reasons then stand on standard error.
`;

const COMMANDS = {
  check: async () => (await import('./commands/check.ts')).check,
  demo: async () => (await import('./commands/demo.ts')).demo,
};

/** Runs the command that was typed. Gives the exit code: 0 answered, 1 refused with the reasons on standard error. */
export async function runTinewise(args: readonly string[]): Promise<number> {
  try {
    const [name, ...rest] = args;
    if (name === '--help' || name === '-h') await say(HELP);
    else if (name === '--version') await say(`${version()}\n`);
    else await commandNamed(name)(rest);
    return 0;
  } catch (error) {
    if (!(error instanceof CommandFault)) throw error;
    process.stderr.write(`${error.lines.join('\n')}\n`);
    return 1;
  }
}

function commandNamed(name: string | undefined): (args: readonly string[]) => Promise<void> {
  const names = Object.keys(COMMANDS);
  if (name === undefined) {
    throw new CommandFault([
      `Command: nothing came, ${names.join(' or ')} was expected.`,
      'See tinewise --help.',
    ]);
  }
  if (!Object.hasOwn(COMMANDS, name)) throw unknownName('Command', name, names, names.join(' or '));
  return async (args) => (await COMMANDS[name as keyof typeof COMMANDS]())(args);
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
