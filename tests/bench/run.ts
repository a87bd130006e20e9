import { strict as assert } from 'node:assert';
import { checkLift } from '../../lib/check/check-lift.ts';
import { type Context, VERDICTS } from '../../lib/check/step.ts';
import { answerInSlices } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import type { CompiledSite } from '../../lib/grid/compiled-site.ts';
import { editSheet } from '../../lib/grid/edit-sheet.ts';
import { type GridSheet, openSheet } from '../../lib/grid/grid-sheet.ts';
import type { GridQuestion } from '../../lib/grid/question.ts';
import {
  answerTakeDown,
  compileTakeDown,
  emptyTakeDownAnswer,
  type TakeDownTables,
} from '../../lib/grid/whole-site.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import type { Site } from '../../lib/model/site.ts';
import { indexSite, type SiteIndex } from '../../lib/model/site-index.ts';
import { benchLoad, benchSite } from './bench-site.ts';
import { line, machine, measure, type Timing } from './measure.ts';
import { answerByPlainLoop, answerByPlainObjects, digestOf, plateQuestion } from './plate-question.ts';
import { answerBySpreadsheet } from './spreadsheet-peer.ts';
import { openDuckDb, openPlateGrid, openSqlite } from './sql-peers.ts';
import { answerTakeDownLoop, takeDownLoop } from './take-down-loop.ts';

/*
 * How fast is the grid, beside peers that answer the same question with equal results? Run by `npm run bench`, by hand,
 * on a quiet machine; never part of the tests. `npm run bench -- small` leaves out the million.
 */

const small = process.argv.includes('small');
const say = (text = '') => console.log(text);
const load = benchLoad(0, 5, 812);

type Prepared = { site: Site; index: SiteIndex; compiled: CompiledSite; trucks: string[] };

function prepare(locations: number, trucks: number): Prepared {
  const site = benchSite({ locations, trucks, seed: 1 });
  const index = indexSite(site);
  return { site, index, compiled: compileSite(index), trucks: site.trucks.map(({ id }) => id) };
}

function contextOf(operation: Context['operation']): Context {
  return { operation, asOf: null, operator: null, stock: 'as-is', from: null };
}

function work(compiled: CompiledSite, question: GridQuestion, former?: GridSheet): GridSheet {
  const sheet = openSheet(compiled, question, former);
  for (const _ of answerInSlices(sheet));
  return sheet;
}

const TAKING_DOWN = 'one load, taking down';

/** The same full grid by a plain loop that asks every rule of it, and by DuckDB, which stores what the plate proves. */
async function fullGridPeers(index: SiteIndex, answer: GridSheet['answer'], grid: Timing): Promise<void> {
  const loop = takeDownLoop(index, load);
  const stored = {
    verdicts: new Uint8Array(answer.verdicts.length),
    governing: new Uint8Array(answer.governing.length),
    mostKg: new Float64Array(answer.mostKg.length),
  };
  const plain = await measure('  plain loop, every rule, equal in every cell', 9, () =>
    answerTakeDownLoop(loop, stored),
  );
  assert.deepEqual(stored.verdicts, answer.verdicts);
  assert.deepEqual(stored.governing, answer.governing);
  assert.deepEqual(stored.mostKg, answer.mostKg);
  say(`${line(plain, grid)} the grid's`);
  const peer = await openPlateGrid(loop);
  let proven = 0;
  const sql = await measure('  DuckDB, plate rule only, margin of each pair stored', 3, async () => {
    proven = await peer.ask();
  });
  peer.close();
  // a pair is proven where the plate has a line that carries the load: count them from the plain numbers
  const expected = loop.places.reduce(
    (sum, { liftMm }) =>
      sum +
      loop.trucks.filter(({ ratings }) =>
        ratings.some(
          (rating) =>
            rating.liftHeightMm >= liftMm &&
            rating.loadCentreMm >= loop.load.centreMm &&
            rating.capacityKg >= loop.load.kg,
        ),
      ).length,
    0,
  );
  assert.equal(proven, expected);
  say(`${line(sql, grid)} the grid's`);
}

async function fullGrid(locations: number, trucks: number, runs: number): Promise<void> {
  say(
    `\nEvery rule, every location x truck, verdict, governing rule and mostKg stored: ${locations} x ${trucks}, one thread`,
  );
  const { site, index, compiled, trucks: ids } = prepare(locations, trucks);
  const questions: [string, GridQuestion][] = [
    ['one load, placing', { load: { kind: 'one', load }, trucks: ids, context: contextOf('place') }],
    [TAKING_DOWN, { load: { kind: 'one', load }, trucks: ids, context: contextOf('retrieve') }],
    [
      'what stands there, taking down',
      { load: { kind: 'stored' }, trucks: ids, context: contextOf('retrieve') },
    ],
    [
      'what stands there, placing back',
      { load: { kind: 'stored' }, trucks: ids, context: contextOf('place') },
    ],
  ];
  for (const [name, question] of questions) {
    let sheet: GridSheet | undefined;
    const whole = await measure(name, runs, () => {
      sheet = work(compiled, question, sheet);
    });
    say(line(whole));
    if (name === TAKING_DOWN) await fullGridPeers(index, sheet!.answer, whole);
    const truck = site.trucks[3]!;
    const edits = [0, 1].map(
      (i) => ({ kind: 'truck', truck: { ...truck, maxLiftMm: truck.maxLiftMm + i } }) as const,
    );
    let turn = 0;
    const next = (values: number) => {
      turn += 1;
      return turn % values;
    };
    say(line(await measure('  one truck edited', runs, () => editSheet(sheet!, edits[next(2)]!))));
    const run = site.runs[0]!;
    const bay = run.bays[3]!;
    const level = bay.levels[2]!;
    say(
      line(
        await measure('  one level edited', runs, () =>
          editSheet(sheet!, {
            kind: 'level',
            runId: run.id,
            bayId: bay.id,
            level: { ...level, beamTopMm: 3000 + next(9) },
          }),
        ),
      ),
    );
    editSheet(sheet!, { kind: 'level', runId: run.id, bayId: bay.id, level });
    const stored = site.loads[77]!;
    say(
      line(
        await measure('  one stored load edited', runs, () =>
          editSheet(sheet!, { kind: 'load', load: { ...stored, grossKg: 500 + next(9) } }),
        ),
      ),
    );
    editSheet(sheet!, { kind: 'load', load: stored });
    editSheet(sheet!, { kind: 'truck', truck });
  }
  if (locations > 10_000) return;
  const [, question] = questions[0]!;
  const { answer } = work(compiled, question);
  const readable = await measure('the readable check in a loop, one load, placing', 1, () => {
    let cell = 0;
    for (const place of index.places.values()) {
      for (const truck of site.trucks) {
        const one = checkLift(index, { load, truck, place, context: question.context });
        assert.equal(VERDICTS[answer.verdicts[cell]!], one.verdict);
        assert.equal(RULE_IDS[answer.governing[cell]!], one.governing);
        assert.equal(answer.mostKg[cell], one.mostKg ?? -1);
        cell += 1;
      }
    }
  });
  say(line(readable));
  say('  (equal in every cell)');
}

/** Reads and writes what the whole-site answer reads and writes, and decides nothing. */
function plainPass(tables: TakeDownTables, answer: ReturnType<typeof emptyTakeDownAnswer>): void {
  const { site, kindOf } = tables;
  const { standing, loads } = site;
  for (let location = 0; location < kindOf.length; location += 1) {
    const row = standing[location]!;
    answer.able[location] = row;
    answer.bestTruck[location] = kindOf[location]!;
    answer.verdict[location] = row;
    answer.governing[location] = row;
    answer.marginKg[location] = row < 0 ? 0 : loads.assessedKg[row]!;
  }
}

async function wholeSite(
  locations: number,
  trucks: number,
  peers: readonly ('objects' | 'loop' | 'sqlite' | 'duckdb' | 'sheet')[],
): Promise<Timing> {
  say(`\nWho can take down each stored load: ${locations} locations x ${trucks} trucks, one thread`);
  const { site, index, trucks: ids } = prepare(locations, trucks);
  const question = { trucks: ids, asOf: null, operator: null };
  let compiled = compileSite(index);
  const columns = await measure('compile: the site to columns', 3, () => {
    compiled = compileSite(index);
  });
  let tables = compileTakeDown(compiled, question);
  const steps = await measure('compile: the trucks to steps of mass', 3, () => {
    tables = compileTakeDown(compiled, question);
  });
  const answer = emptyTakeDownAnswer(locations > 0 ? tables.kindOf.length : 0);
  const floor = await measure('floor: a plain pass over the same bytes', 15, () => plainPass(tables, answer));
  const grid = await measure('the grid, every rule', 15, () => answerTakeDown(tables, answer));
  const expected = digestOf(answer);
  for (const timing of [columns, steps]) say(line(timing));
  say(line(floor));
  say(line(grid, floor));
  const bytes = bytesOf(compiled) + bytesOf(tables) + bytesOf(compiled.loads) + bytesOf(answer);
  say(`  columns, tables and answer: ${(bytes / tables.kindOf.length).toFixed(1)} bytes a location`);
  say(`  able ${expected.able}, stranded ${expected.stranded}, margins ${expected.marginQuarterKg / 4} kg`);
  const asked = plateQuestion(site, compiled);
  const compare = async (name: string, runs: number, ask: () => unknown) => {
    let result: unknown;
    const timing = await measure(name, runs, async () => {
      result = await ask();
    });
    assert.deepEqual(result, expected, name);
    say(`${line(timing, grid)} the grid's`);
  };
  if (peers.includes('loop'))
    await compare('plain loop, plates found once per kind (plate rule only)', 3, () =>
      answerByPlainLoop(asked),
    );
  if (peers.includes('objects'))
    await compare('plain objects, plates read each time (plate rule only)', 3, () =>
      answerByPlainObjects(asked),
    );
  if (peers.includes('duckdb')) {
    const peer = await openDuckDb(asked);
    await compare('DuckDB, tables loaded (plate rule only)', 3, peer.ask);
    peer.close();
  }
  if (peers.includes('sqlite')) {
    const peer = openSqlite(asked);
    await compare('SQLite, tables loaded (plate rule only)', 3, peer.ask);
    peer.close();
  }
  if (peers.includes('sheet'))
    await compare('spreadsheet engine, built and calculated (plate rule only)', 1, () =>
      answerBySpreadsheet(asked),
    );
  return grid;
}

/** Bytes in the typed arrays of a structure, and 8 for each entry of its lists. */
function bytesOf(columns: object): number {
  return Object.values(columns).reduce((sum: number, column: unknown) => {
    if (ArrayBuffer.isView(column)) return sum + column.byteLength;
    return Array.isArray(column) ? sum + 8 * column.length : sum;
  }, 0);
}

say(machine());
say(
  'Medians of several runs in one process (least to most, first run). Equal results are asserted, not assumed.',
);
await fullGrid(10_000, 10, 9);
await fullGrid(100_000, 20, 15);
await wholeSite(2_000, 10, ['loop', 'objects', 'duckdb', 'sqlite', 'sheet']);
const ten = await wholeSite(10_000, 10, ['loop', 'objects', 'duckdb', 'sqlite']);
const hundred = await wholeSite(100_000, 20, ['loop', 'objects', 'duckdb', 'sqlite']);
if (!small) {
  const few = await wholeSite(1_000_000, 20, ['loop']);
  const million = await wholeSite(1_000_000, 200, ['loop', 'duckdb']);
  const perLocation = (timing: Timing, locations: number) =>
    `${((timing.medianMs * 1e6) / locations).toFixed(1)} ns`;
  say('\nGrowth');
  say(
    `  a location at 10 000 x 10, 100 000 x 20, 1 000 000 x 200: ${perLocation(ten, 1e4)}, ${perLocation(hundred, 1e5)}, ${perLocation(million, 1e6)}`,
  );
  say(
    `  ten times the trucks (1 000 000 x 20 to x 200): ${(million.medianMs / few.medianMs).toFixed(2)} x the time`,
  );
}
