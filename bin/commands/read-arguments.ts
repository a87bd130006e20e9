import { parseArgs } from 'node:util';
import { CommandFault, unknownName } from './command-fault.ts';

export type OptionTypes = Record<string, { type: 'string' | 'boolean' }>;

export type Arguments = {
  /** Each named at most once. */
  values: ReadonlyMap<string, string>;
  switches: ReadonlySet<string>;
  positionals: readonly string[];
};

/** What was typed after the command's name. Throws a CommandFault that names what came and what was expected. */
export function readArguments(args: readonly string[], options: OptionTypes): Arguments {
  const { tokens, positionals } = parseArgs({
    args: [...args],
    options,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const values = new Map<string, string>();
  const switches = new Set<string>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const type = Object.hasOwn(options, token.name) ? options[token.name]!.type : null;
    if (type === null) {
      const known = Object.keys(options).map((name) => `--${name}`);
      throw unknownName('Option', token.rawName, known, `one of ${known.join(', ')}`);
    }
    if (values.has(token.name) || switches.has(token.name)) {
      throw new CommandFault(`Option ${token.rawName}: it came twice, one was expected.`);
    }
    if (type === 'boolean') {
      if (token.value !== undefined) {
        throw new CommandFault(
          `Option ${token.rawName}: ${JSON.stringify(token.value)} came, no value was expected.`,
        );
      }
      switches.add(token.name);
      continue;
    }
    const value = token.value;
    if (value === undefined || value === '') {
      throw new CommandFault(`Option ${token.rawName}: nothing came, a value was expected.`);
    }
    if (!token.inlineValue && value.startsWith('-')) {
      throw new CommandFault(
        `Option ${token.rawName}: ${JSON.stringify(value)} came, a value was expected (a value that begins with a dash is written ${token.rawName}=VALUE).`,
      );
    }
    values.set(token.name, value);
  }
  return { values, switches, positionals };
}

/** One of a few fixed words, or the default where the option was not given. */
export function oneOf<T extends string>(args: Arguments, name: string, words: readonly T[], otherwise: T): T {
  const came = args.values.get(name);
  if (came === undefined) return otherwise;
  const word = words.find((entry) => entry === came);
  if (word === undefined) throw unknownName(`Option --${name}`, came, words, words.join(' or '));
  return word;
}
