import { spawn } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkLift } from '../../lib/check/check-lift.ts';
import { DEMO_AS_OF, DEMO_OPERATOR, demoSite } from '../../lib/demo/demo-site.ts';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import { readSiteText } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { COMMAND_FILE, runTinewise } from './run-tinewise.ts';

const site = demoSite();
const index = indexSite(site);
let siteText = '';

type Row = Record<string, unknown> & { steps: Record<string, unknown>[] };

beforeAll(async () => {
  siteText = (await runTinewise(['demo'])).stdout;
});

async function rows(...args: string[]): Promise<Row[]> {
  const { code, stdout, stderr } = await runTinewise(['check', '-', ...args, '--json'], siteText);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout) as Row[];
}

describe('tinewise demo', () => {
  it('writes the demo depot as a site file that reads back as it was', () => {
    expect(readSiteText(siteText)).toEqual({ ok: true, site });
  });
});

describe('tinewise check --json', () => {
  it('answers for every location and truck, in the order of the site: locations, then trucks', async () => {
    const answers = await rows('--load', 'TILE-010');
    expect(answers.map(({ location, truck, load }) => `${location} ${truck} ${load}`)).toEqual(
      [...index.places.keys()].flatMap((place) =>
        site.trucks.map((truck) => `${place} ${truck.id} TILE-010`),
      ),
    );
  });

  it('has exactly the keys that were promised, and the rules in their order', async () => {
    const answers = await rows('--load', 'STONE-001', '--truck', 'CB-2');
    const keys = new Set(answers.map((answer) => Object.keys(answer).join()));
    expect([...keys]).toEqual(['location,truck,load,verdict,governing,assessedKg,mostKg,steps']);
    for (const answer of answers) expect(answer.steps.map((step) => step.rule)).toEqual(RULE_IDS);
    const stepKeys = new Set(
      answers.flatMap((answer) => answer.steps.map((step) => Object.keys(step).join())),
    );
    expect(stepKeys).toEqual(new Set(['rule,outcome,need,have,unit', 'rule,outcome,need,have,unit,cause']));
  });

  it('says what lib/check says, the working with it where it is asked for', async () => {
    const args = ['--location', 'A3-L-07-2-1', '--as-of', DEMO_AS_OF, '--operator', DEMO_OPERATOR];
    const answers = await rows('--load', 'TILE-010', '--working', ...args);
    const context = {
      operation: 'place',
      asOf: DEMO_AS_OF,
      operator: DEMO_OPERATOR,
      stock: 'as-is',
      from: null,
    } as const;
    const load = index.loads.get('TILE-010')!;
    const place = index.places.get('A3-L-07-2-1')!;
    const expected = site.trucks.map((truck) => checkLift(index, { load, truck, place, context }));
    expect(answers).toEqual(JSON.parse(JSON.stringify(expected)));
  });

  it('is an empty array for a site without trucks', async () => {
    const text = JSON.stringify({ ...site, trucks: [], checks: [] });
    const { code, stdout } = await runTinewise(['check', '-', '--load', 'TILE-010', '--json'], text);
    expect([code, stdout]).toEqual([0, '[]\n']);
  });

  it('ends quietly when the reader goes away', async () => {
    const child = spawn(process.execPath, [COMMAND_FILE, 'check', '-', '--load', 'TILE-010', '--json']);
    let stderr = '';
    child.stderr.on('data', (piece: Buffer) => {
      stderr += piece;
    });
    child.stdin.end(siteText);
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect([code, stderr]).toEqual([0, '']);
  });
});
