/**
 * How long do a reading and a dry run take? `npx tsx tests/bench/import-speed.ts [rows]`
 * Prints wall and processor time of each step for a site of that many locations, one stored load in each.
 */
import { exportList } from '../../lib/import/export-lists.ts';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import type { ListName } from '../../lib/import/lists.ts';
import { planImport } from '../../lib/import/plan-import.ts';
import { readTable } from '../../lib/import/read-table.ts';
import { cellText, type Table } from '../../lib/import/table.ts';
import type { Run } from '../../lib/model/racking.ts';
import type { Site } from '../../lib/model/site.ts';
import { makeSpreadsheet } from '../import/spreadsheet-builder.ts';
import { makeBay, makeFrame, makeLevel, makeRun, makeSite } from '../site-builder.ts';

const LOCATIONS_PER_RUN = 500;

function bigSite(locations: number): Site {
  const runs = Array.from({ length: Math.ceil(locations / LOCATIONS_PER_RUN) }, (_, r): Run => {
    const bays = Array.from({ length: 50 }, (_, b) => {
      const id = `R${r}-${b}`;
      return makeBay(id, { levels: [0, 1, 2, 3, 4].map((level) => makeLevel(id, level)) });
    });
    const frames = Array.from({ length: 51 }, (_, f) => makeFrame({ id: `R${r}-f${f}` }));
    return makeRun({ id: `R${r}`, bays, frames });
  });
  const places = runs.flatMap((run) =>
    run.bays.flatMap((bay) => bay.levels.flatMap((level) => level.locations)),
  );
  return makeSite({ runs, stock: places.map((location) => ({ location, load: 'crates' })) });
}

function asSpreadsheet(table: Table): Uint8Array {
  const strings: string[] = [];
  const at = new Map<string, number>();
  const shared = (text: string) => {
    const known = at.get(text);
    if (known !== undefined) return known;
    at.set(text, strings.length);
    return strings.push(text) - 1;
  };
  const rows = [table.header, ...table.rows].map((cells, r) => {
    const inRow = cells.map((cell, c) => {
      const text = cellText(cell);
      const reference = `${c >= 26 ? 'A' : ''}${String.fromCharCode(65 + (c % 26))}${r + 1}`;
      if (text === '') return '';
      return /^\d+$/.test(text)
        ? `<c r="${reference}"><v>${text}</v></c>`
        : `<c r="${reference}" t="s"><v>${shared(text)}</v></c>`;
    });
    return `<row r="${r + 1}">${inRow.join('')}</row>`;
  });
  return makeSpreadsheet({ sheet: rows.join(''), strings: strings.map((text) => `<t>${text}</t>`) });
}

async function measure(what: string, bytes: Uint8Array, list: ListName, site: Site): Promise<Table> {
  const started = { wall: performance.now(), cpu: process.cpuUsage() };
  const steps: string[] = [];
  let last = 0;
  const step = (name: string) => {
    const wall = performance.now() - started.wall;
    steps.push(`${name} ${Math.round(wall - last)}`);
    last = wall;
  };
  const reading = await readTable(bytes, 'list');
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusal));
  step('read');
  const { mapping } = guessMapping(list, reading.table);
  step('guess');
  const plan = planImport(site, list, reading.table, mapping, { mode: 'good-rows-only' });
  step('plan');
  const { user, system } = process.cpuUsage(started.cpu);
  console.log(
    `${what}: ${reading.table.rows.length} rows, ${steps.join(', ')}, in all ${Math.round(last)} ms (processor ${Math.round((user + system) / 1000)} ms); ` +
      `added ${plan.added.length}, changed ${plan.changed.length}, unchanged ${plan.unchanged}, refused ${plan.refused.length}`,
  );
  return reading.table;
}

const site = bigSite(Number(process.argv[2] ?? 100_000));
const encode = (text: string) => new TextEncoder().encode(text);
const locations = encode(exportList(site, 'locations'));
const stock = exportList(site, 'stock');
const table = await measure('locations, CSV, new', locations, 'locations', { ...site, runs: [], stock: [] });
await measure('locations, CSV, the same', locations, 'locations', site);
await measure('stock, CSV, new', encode(stock), 'stock', { ...site, stock: [] });
await measure('stock, CSV, every row wrong', encode(stock.replaceAll(',crates', ',crate')), 'stock', {
  ...site,
  stock: [],
});
await measure('locations, spreadsheet, new', asSpreadsheet(table), 'locations', {
  ...site,
  runs: [],
  stock: [],
});
