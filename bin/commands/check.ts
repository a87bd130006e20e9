import { checkLift } from '../../lib/check/check-lift.ts';
import type { Context, LiftAnswer } from '../../lib/check/step.ts';
import type { Load } from '../../lib/model/load.ts';
import { indexSite, type Place, type SiteIndex } from '../../lib/model/site-index.ts';
import type { Truck } from '../../lib/model/truck.ts';
import { answerAsJson } from './answer-json.ts';
import { answerTable } from './answer-table.ts';
import { answerWorking } from './answer-working.ts';
import { CommandFault, unknownName } from './command-fault.ts';
import { type Arguments, type OptionTypes, oneOf, readArguments } from './read-arguments.ts';
import { readSiteFrom } from './read-site.ts';
import { timeOf } from './read-time.ts';
import { standardOutput, type TextSink } from './standard-output.ts';

const HELP = `tinewise check SITE.json --load ID [options]

Judges one load at every location with every truck, in the order of the site file: locations, then trucks.

  --load ID                     the load that is asked about
  --location ID                 only this location
  --truck ID                    only this truck
  --operation place|retrieve    default: place
  --stock as-is|empty           what stands in the racks counts, or not; default: as-is
  --from ID                     the location that the load comes from: what stands there does not count
  --as-of TIME                  ISO 8601, UTC: judges holds, checks and authorisations at that time;
                                without it the fitness of trucks is not judged
  --operator ID                 who would drive
  --json                        one JSON array instead of a table
  --working                     with --json: where each number came from

SITE.json may be "-" for standard input. A location and a truck named together, without --json, give the working.
`;

const OPTIONS: OptionTypes = {
  load: { type: 'string' },
  location: { type: 'string' },
  truck: { type: 'string' },
  operation: { type: 'string' },
  stock: { type: 'string' },
  from: { type: 'string' },
  'as-of': { type: 'string' },
  operator: { type: 'string' },
  json: { type: 'boolean' },
  working: { type: 'boolean' },
  help: { type: 'boolean' },
};

/** Judges one load at the locations and with the trucks that are named, or all of them. */
export async function check(args: readonly string[]): Promise<void> {
  const typed = readArguments(args, OPTIONS);
  const output = standardOutput();
  if (typed.switches.has('help')) await output.write(HELP);
  else await judge(typed, output);
  await output.end();
}

async function judge(typed: Arguments, output: TextSink): Promise<void> {
  const context = contextOf(typed);
  const loadId = needed(typed, 'load', 'the id of a load');
  const index = indexSite(await readSiteFrom(sitePath(typed)));
  const load = idIn(index.loads, loadId, 'load');
  if (context.operator !== null) idIn(index.operators, context.operator, 'operator');
  if (context.from !== null) idIn(index.places, context.from, 'from');
  const places = chosen(index.places, typed, 'location');
  const trucks = chosen(index.trucks, typed, 'truck');
  if (typed.switches.has('json')) {
    const answers = judgeAll(index, load, places, trucks, context);
    await writeAll(answerAsJson(answers, { working: typed.switches.has('working') }), output);
  } else if (typed.values.has('location') && typed.values.has('truck')) {
    const answer = checkLift(index, { load, truck: trucks[0]!, place: places[0]!, context });
    await output.write(answerWorking(index, load, context, answer));
  } else {
    await writeAll(answerTable(index, load, context, judgeAll(index, load, places, trucks, context)), output);
  }
}

/** One answer at a time, as the reader takes them: nothing is gathered. */
function* judgeAll(
  index: SiteIndex,
  load: Load,
  places: readonly Place[],
  trucks: readonly Truck[],
  context: Context,
): Generator<LiftAnswer> {
  for (const place of places) {
    for (const truck of trucks) yield checkLift(index, { load, truck, place, context });
  }
}

async function writeAll(pieces: Iterable<string>, output: TextSink): Promise<void> {
  for (const piece of pieces) {
    const room = output.write(piece);
    if (room !== null) await room;
  }
}

function sitePath(typed: Arguments): string {
  const [path, ...more] = typed.positionals;
  if (path === undefined) throw new CommandFault('Site file: nothing came, a path or "-" was expected.');
  if (more.length > 0) {
    throw new CommandFault(`Argument: ${JSON.stringify(more[0])} came, one site file was expected.`);
  }
  return path;
}

function contextOf(typed: Arguments): Context {
  return {
    operation: oneOf(typed, 'operation', ['place', 'retrieve'], 'place'),
    stock: oneOf(typed, 'stock', ['as-is', 'empty'], 'as-is'),
    asOf: timeOf(typed),
    operator: typed.values.get('operator') ?? null,
    from: typed.values.get('from') ?? null,
  };
}

function needed(typed: Arguments, name: string, expected: string): string {
  const value = typed.values.get(name);
  if (value === undefined)
    throw new CommandFault(`Option --${name}: nothing came, ${expected} was expected.`);
  return value;
}

function chosen<T>(entries: ReadonlyMap<string, T>, typed: Arguments, name: 'location' | 'truck'): T[] {
  const id = typed.values.get(name);
  return id === undefined ? [...entries.values()] : [idIn(entries, id, name)];
}

function idIn<T>(entries: ReadonlyMap<string, T>, id: string, option: keyof typeof LISTS): T {
  const entry = entries.get(id);
  if (entry === undefined) throw unknownName(`Option --${option}`, id, entries.keys(), LISTS[option]);
  return entry;
}

const LISTS = {
  load: 'the id of a load of the site',
  truck: 'the id of a truck of the site',
  location: 'the id of a location of the site',
  from: 'the id of a location of the site',
  operator: 'the id of an operator of the site',
} as const;
