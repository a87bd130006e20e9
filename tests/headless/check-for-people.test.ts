import { describe, expect, it } from 'vitest';
import { RULE_IDS } from '../../lib/model/rule-ids.ts';
import { ruleTitle } from '../../lib/words/rule.ts';
import { runTinewise } from './run-tinewise.ts';
import { SMALL_SITE } from './small-site.ts';

const SITE = JSON.stringify(SMALL_SITE);
const NOT_JUDGED = 'No time was given: checks, holds and the end of authorisations were not judged.';

describe('tinewise check for people', () => {
  it('gives a line to each location and truck, the count of each verdict, and says what was not judged', async () => {
    const { code, stdout, stderr } = await runTinewise(['check', '-', '--load', 'asked'], SITE);
    expect([code, stderr]).toEqual([0, '']);
    const lines = stdout.split('\n');
    expect(lines).toContain(NOT_JUDGED);
    const heading = lines.findIndex((line) => line.startsWith('Location'));
    expect(lines.slice(heading + 1, heading + 5).map((line) => line.split(/ {2,}/).slice(0, 3))).toEqual([
      ['floor-1', 'T', '= Clear'],
      ['floor-2', 'T', '= Clear'],
      ['beam-1', 'T', '– Thin'],
      ['beam-2', 'T', '× Refuse'],
    ]);
    expect(stdout).toMatch(/^= Clear +2 /m);
    expect(stdout).toMatch(/^× Refuse +1 /m);
  });

  it('gives the whole working where one location and one truck are named', async () => {
    const args = ['check', '-', '--load', 'asked', '--location', 'beam-1', '--truck', 'T'];
    const { code, stdout } = await runTinewise(args, SITE);
    expect(code).toBe(0);
    let from = 0;
    for (const rule of RULE_IDS) {
      const at = stdout.indexOf(`  ${ruleTitle(rule)}\n`, from);
      expect(at, rule).toBeGreaterThan(from);
      from = at;
    }
    expect(stdout).toContain(
      '990\u202fkg assessed; the notice allows 1\u202f000\u202fkg: 10\u202fkg to spare.',
    );
    expect(stdout).toContain(NOT_JUDGED);
    expect(stdout).toContain('The mass is declared, not weighed.');
  });

  it('leaves out the caution when a time is given', async () => {
    const args = ['check', '-', '--load', 'asked', '--as-of', '2026-09-14T06:00:00Z'];
    expect((await runTinewise(args, SITE)).stdout).not.toContain(NOT_JUDGED);
  });

  it('shows no control character that a name from the file may hold', async () => {
    const site = { ...SMALL_SITE, site: { name: 'Bay \u001b[31m one' } };
    const { code, stdout } = await runTinewise(['check', '-', '--load', 'asked'], JSON.stringify(site));
    expect(code).toBe(0);
    expect(stdout).not.toContain('\u001b');
  });
});
