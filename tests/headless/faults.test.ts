import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CHECKOUT, runProcess, runTinewise } from './run-tinewise.ts';
import { SMALL_SITE } from './small-site.ts';

const SITE = JSON.stringify(SMALL_SITE);
const elsewhere = mkdtempSync(join(tmpdir(), 'tinewise-'));
afterAll(() => rmSync(elsewhere, { recursive: true }));

describe('what cannot be used is refused with exit code 1, on standard error alone', () => {
  it.each([
    { args: [], says: 'Command: nothing came, one of check, audit, demo, ' },
    {
      args: ['chek'],
      says: 'was expected. Did you mean "check"?',
    },
    { args: ['toString'], says: 'Command: "toString" came' },
    { args: ['demo', 'more'], says: 'Argument: "more" came, nothing more was expected.' },
    { args: ['check'], says: 'Option --load: nothing came' },
    { args: ['check', '--load', 'asked'], says: 'Site file: nothing came' },
    { args: ['check', '-', 'b.json', '--load', 'asked'], says: 'Argument: "b.json" came' },
    { args: ['check', 'no-such-file', '--load', 'asked'], says: 'Site file: "no-such-file" came' },
    {
      args: ['check', '-', '--load', 'askd'],
      says: '"askd" came, the id of a load of the site was expected. Did you mean "asked"?',
    },
    { args: ['check', '-', '--lod', 'asked'], says: 'Did you mean "--load"' },
    { args: ['check', '-', '--load', 'asked', '--constructor', 'x'], says: 'Option: "--constructor" came' },
    { args: ['check', '-', '--load'], says: 'Option --load: nothing came, a value was expected.' },
    { args: ['check', '-', '--load', '--json'], says: 'Option --load: "--json" came' },
    { args: ['check', '-', '--load=asked', '--load=asked'], says: 'Option --load: it came twice' },
    { args: ['check', '-', '--load=asked', '--json=yes'], says: 'Option --json: "yes" came, no value' },
    {
      args: ['check', '-', '--load=asked', '--truck=U'],
      says: 'Option --truck: "U" came, the id of a truck of the site',
    },
    { args: ['check', '-', '--load=asked', '--location=beam-3'], says: 'Did you mean "beam-1" or "beam-2"' },
    { args: ['check', '-', '--load=asked', '--from=beam-3'], says: 'Option --from: "beam-3" came' },
    { args: ['check', '-', '--load=asked', '--operator=P'], says: 'Option --operator: "P" came' },
    {
      args: ['check', '-', '--load=asked', '--operation=plce'],
      says: '"plce" came, place or retrieve was expected. Did you mean "place"?',
    },
    {
      args: ['check', '-', '--load=asked', '--stock=full'],
      says: '"full" came, as-is or empty was expected.',
    },
    { args: ['check', '-', '--load=asked', '--as-of=today'], says: '"today" came, a time in UTC' },
    { args: ['check', '-', '--load=asked', '--as-of=2026-02-30'], says: '"2026-02-30" came, a time in UTC' },
  ])('$says', async ({ args, says }) => {
    const { code, stdout, stderr } = await runTinewise(args, SITE);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain(says);
    expect(stderr).not.toContain('    at '); // no stack: it is not a bug
  });

  it('lists every fault of a site file', async () => {
    const [aisle] = SMALL_SITE.aisles;
    const bad = {
      ...SMALL_SITE,
      aisles: [{ ...aisle, clearWidthMm: -1 }],
      stock: [{ location: 'beam-2', load: 'standin' }],
      extra: 1,
    };
    const { code, stdout, stderr } = await runTinewise(
      ['check', '-', '--load', 'asked', '--json'],
      JSON.stringify(bad),
    );
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain('$.aisles[0].clearWidthMm: -1 came');
    expect(stderr).toContain('$.stock[0].load: "standin" came');
    expect(stderr).toContain('$.extra');
  });

  it.each(['', '{', 'null', '[]'])('refuses the text %j as a site file', async (text) => {
    const { code, stdout, stderr } = await runTinewise(['check', '-', '--load', 'asked'], text);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).not.toBe('');
  });
});

describe('the command is found', () => {
  it('from any working directory, with paths that start there', async () => {
    writeFileSync(join(elsewhere, 'site.json'), SITE);
    writeFileSync(join(elsewhere, 'tsconfig.json'), 'not a JSON text');
    const args = ['check', 'site.json', '--load', 'asked', '--location', 'beam-1', '--json'];
    const { code, stdout, stderr } = await runTinewise(args, '', elsewhere);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(JSON.parse(stdout)).toMatchObject([{ location: 'beam-1', truck: 'T', verdict: 'thin' }]);
  });

  it.each([
    { file: 'npx', args: ['--offline', 'tinewise', '--version'] },
    { file: 'npm', args: ['run', '-s', 'tinewise', '--', '--version'] },
  ])('by $file in the checkout', async ({ file, args }) => {
    const { code, stdout } = await runProcess(file, args, '', CHECKOUT);
    expect({ code, stdout }).toEqual({ code: 0, stdout: '0.1.0\n' });
  });

  it.each(['--help', 'check --help', 'demo --help'])('and %s says what it takes', async (typed) => {
    const { code, stdout, stderr } = await runTinewise(typed.split(' '));
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toMatch(/^tinewise/);
  });
});
