import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { auditSite } from '../../lib/audit/audit-site.ts';
import { DEMO_AS_OF, demoSite } from '../../lib/demo/demo-site.ts';
import { writeSiteText } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { CHECKOUT, COMMAND_FILE, runTinewise } from './run-tinewise.ts';
import { SMALL_SITE } from './small-site.ts';

const folder = mkdtempSync(join(tmpdir(), 'tinewise-audit-'));
afterAll(() => rmSync(folder, { recursive: true }));

function put(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const demo = put('demo.json', writeSiteText(demoSite()));
const small = put('small.json', JSON.stringify(SMALL_SITE)); // one truck: its loss strands the load, nothing to stop for
const bad = put('bad.json', JSON.stringify({ ...SMALL_SITE, extra: 1, aisles: [] }));
put('notes.txt', 'not a site');

const parsed = (stdout: string) => JSON.parse(stdout) as { file: string; ok: boolean; site: string | null }[];

describe('the exit code tells', () => {
  it.each([
    { files: [small], code: 0, why: 'nothing to stop for' },
    { files: [small, demo], code: 2, why: 'a finding says stop' },
    { files: [demo, bad], code: 1, why: 'a file could not be used' },
    { files: [join(folder, 'absent.json')], code: 1, why: 'a file is not there' },
  ])('$code: $why', async ({ files, code }) => {
    const ending = await runTinewise(['audit', ...files, '--json', '--jobs', '1']);
    expect(ending.code).toBe(code);
    expect(parsed(ending.stdout).map(({ file }) => file)).toEqual(files);
  });
});

describe('one bad file among three', () => {
  it('is named with its refusals, and the others are audited, in the order that was typed', async () => {
    const args = ['audit', demo, bad, small, '--json', '--as-of', DEMO_AS_OF];
    const [alone, two] = await Promise.all([
      runTinewise([...args, '--jobs', '1']),
      runTinewise([...args, '--jobs', '2']),
    ]);
    expect(two).toEqual(alone); // to the letter, however the threads finish
    const entries = parsed(alone.stdout);
    expect(entries).toMatchObject([
      { file: demo, ok: true, site: 'Tamblewick Quay Depot' },
      { file: bad, ok: false, site: null, counts: null },
      { file: small, ok: true, site: 'One bay' },
    ]);
    expect(entries[1]).toMatchObject({
      refusals: [{ path: '$.extra' }, { path: '$.runs[0].aisleId', expected: { is: 'id-in' } }],
    });
    expect(alone).toMatchObject({ code: 1, stderr: `${bad}: not audited, 2 faults.\n` });
  });

  it('has its reasons in the report for people as well, and the totals leave it out', async () => {
    const { stdout } = await runTinewise(['audit', small, bad]);
    expect(stdout).toContain(`${bad}: not audited\n  $.extra: `);
    expect(stdout).toContain('All files: 1 site audited, 1 file not\n');
    expect(stdout).toContain('No time was given');
  });
});

describe('the answer', () => {
  it('is the audit of the library, whole', async () => {
    const { stdout } = await runTinewise(['audit', demo, '--json', '--as-of', DEMO_AS_OF]);
    const { counts, findings } = auditSite(indexSite(demoSite()), { asOf: DEMO_AS_OF });
    expect(parsed(stdout)).toMatchObject([{ counts, findings: JSON.parse(JSON.stringify(findings)) }]);
  });

  it('for people has the counts, the worst first in sentences, and how many more there are', async () => {
    const { stdout } = await runTinewise(['audit', demo, '--as-of', DEMO_AS_OF]);
    const text = stdout.replaceAll('\u202f', ' ');
    expect(text).toContain('3 500 locations, 14 trucks, 2 000 stored loads; judged at 2026-09-14 06:40 UTC');
    expect(text).toContain('  Stop: Load ODD-04 at A3-L-14-5-1: it is assessed at 1 501 kg;');
    expect(text).toMatch(/\d+ more findings: --json lists every one\.\n/);
  });

  it('of a folder is that of its *.json files by name; of "-" that of standard input', async () => {
    mkdirSync(join(folder, 'sites'));
    for (const name of ['b.json', 'a.json']) put(join('sites', name), JSON.stringify(SMALL_SITE));
    put(join('sites', 'read-me.txt'), 'not a site');
    const ending = await runTinewise(
      ['audit', join(folder, 'sites'), '-', '--json'],
      JSON.stringify(SMALL_SITE),
    );
    const files = [join(folder, 'sites', 'a.json'), join(folder, 'sites', 'b.json'), '-'];
    expect(parsed(ending.stdout).map(({ file }) => file)).toEqual(files);
  });

  it('tells how far it is on standard error when asked, and otherwise not', async () => {
    const told = await runTinewise(['audit', small, small, '--json', '--progress', '--jobs', '1']);
    expect(told.stderr).toBe(`Audited 1 of 2: ${small}\nAudited 2 of 2: ${small}\n`);
    expect((await runTinewise(['audit', small, '--json'])).stderr).toBe('');
  });

  it('tries every location with the reference load that is given', async () => {
    const args = ['audit', small, '--json'];
    const reach = async (reference: string[]) => {
      const { stdout } = await runTinewise([...args, ...reference]);
      const [entry] = JSON.parse(stdout) as { counts: { kinds: Record<string, number> } }[];
      return entry!.counts.kinds['out-of-reach'];
    };
    expect(await reach([])).toBeUndefined();
    expect(await reach(['--reference', '1001,1200,800,1000'])).toBe(1); // the notice allows 1000 kg for one unit
  });
});

describe('against an earlier audit', () => {
  const changed = structuredClone(SMALL_SITE);
  changed.runs[0]!.bays[0]!.maxBayLoadKg = 900; // 1000 kg stands on the beam level, and the reference load weighs as much
  const now = put('now.json', JSON.stringify(changed));
  const since = async (against: string) => {
    const { code, stdout } = await runTinewise(['audit', now, '--json', '--against', against]);
    const [entry] = JSON.parse(stdout) as { since: unknown }[];
    return { code, since: entry!.since };
  };

  it('tells what is new, whether that audit was kept or its site file was', async () => {
    const { stdout } = await runTinewise(['audit', small, '--json']);
    const kept = put('kept.txt', stdout);
    const expected = {
      fresh: ['bay-overload/R/B', 'out-of-reach/bay-load/'],
      gone: [],
      worse: [],
      better: [],
    };
    for (const against of [kept, small]) {
      expect(await since(against)).toMatchObject({ code: 2, since: expected });
    }
    const told = await runTinewise(['audit', now, '--against', kept]);
    expect(told.stdout).toContain('Since the earlier audit: 2 new, 0 worse, 0 better, 0 gone, ');
    expect(told.stdout).toContain('    New: Run R, bay B: ');
  });

  it.each([
    { against: 'absent.json', files: [small], says: 'a file that can be read was expected' },
    { against: bad, files: [small], says: 'an earlier --json output or a site file was expected' },
    { against: small, files: [small, demo], says: 'a site file came with 2 files to audit' },
  ])('$says', async ({ against, files, says }) => {
    const { code, stdout, stderr } = await runTinewise(['audit', ...files, '--against', against]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain(says);
  });
});

describe('what cannot be used is refused before anything is audited', () => {
  it.each([
    { args: [], says: 'Site file: nothing came' },
    { args: [small, '--jobs', '0'], says: 'Option --jobs: "0" came, a whole number from 1 to 256' },
    { args: [small, '--jobs', '1.5'], says: 'Option --jobs: "1.5" came' },
    { args: [small, '--reference', '1000,1200,800'], says: 'Option --reference: "1000,1200,800" came' },
    { args: [small, '--reference', '1000,1200,800,'], says: 'Option --reference' },
    { args: [small, '--reference', '1000,1200,0,900'], says: 'Option --reference' },
    { args: [small, '--as-of', 'today'], says: 'Option --as-of: "today" came, a time in UTC' },
    { args: [small, '--jsn'], says: 'Did you mean "--json"' },
  ])('$says', async ({ args, says }) => {
    const { code, stdout, stderr } = await runTinewise(['audit', ...args]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain(says);
  });

  it('a folder without site files', async () => {
    mkdirSync(join(folder, 'empty'));
    const { code, stderr } = await runTinewise(['audit', join(folder, 'empty')]);
    expect(code).toBe(1);
    expect(stderr).toContain('a folder with site files (*.json) was expected');
  });
});

it('ends quietly when the reader goes away, threads and all', async () => {
  const child = spawn(
    process.execPath,
    [COMMAND_FILE, 'audit', ...Array(12).fill(demo), '--json', '--jobs', '2'],
    {
      cwd: CHECKOUT,
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let stderr = '';
  child.stderr.on('data', (piece: Buffer) => {
    stderr += piece.toString('utf8');
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
}, 60_000);
