import { demoSite } from '../../lib/demo/demo-site.ts';
import { writeSiteText } from '../../lib/model/site-file.ts';
import { CommandFault } from './command-fault.ts';
import { readArguments } from './read-arguments.ts';
import { standardOutput } from './standard-output.ts';

const HELP = `tinewise demo > site.json

Writes the demo depot as a site file on standard output: the same text each time.
`;

/** Writes the demo depot as a site file. */
export async function demo(args: readonly string[]): Promise<void> {
  const typed = readArguments(args, { help: { type: 'boolean' } });
  if (typed.positionals.length > 0) {
    throw new CommandFault(
      `Argument: ${JSON.stringify(typed.positionals[0])} came, nothing more was expected.`,
    );
  }
  const output = standardOutput();
  await output.write(typed.switches.has('help') ? HELP : writeSiteText(demoSite()));
  await output.end();
}
