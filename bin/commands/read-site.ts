import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import type { Site } from '../../lib/model/site.ts';
import { readSiteText } from '../../lib/model/site-file.ts';
import { refusalSentence, refusalsAdvice } from '../../lib/words/refusal.ts';
import { CommandFault } from './command-fault.ts';

/** The site in a file, or on standard input where the path is "-". Throws a CommandFault with every refusal. */
export async function readSiteFrom(path: string): Promise<Site> {
  const reading = readSiteText(await textOf(path));
  if (reading.ok) return reading.site;
  throw new CommandFault([...reading.refusals.map(refusalSentence), refusalsAdvice(reading.refusals.length)]);
}

async function textOf(path: string): Promise<string> {
  try {
    return await (path === '-' ? text(process.stdin) : readFile(path, 'utf8'));
  } catch (error) {
    const reason = (error as Error).message;
    throw new CommandFault(
      `Site file: ${JSON.stringify(path)} came, a file that can be read was expected (${reason}).`,
    );
  }
}
