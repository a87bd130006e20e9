import { describe, expect, it } from 'vitest';
import { runTinewise } from './run-tinewise.ts';
import { SMALL_SITE } from './small-site.ts';

const SITE = JSON.stringify(SMALL_SITE);

type Answer = {
  verdict: string;
  governing: string;
  mostKg: number | null;
  steps: { rule: string; outcome: string; need: unknown; have: unknown; unit: string; cause?: string }[];
};

async function ask(...args: string[]): Promise<Answer> {
  const { code, stdout, stderr } = await runTinewise(['check', '-', ...args, '--json'], SITE);
  expect([code, stderr]).toEqual([0, '']);
  return (JSON.parse(stdout) as [Answer])[0];
}

describe('a lift checked by hand from the plate and the notice', () => {
  it('comes out of the command with the same numbers', async () => {
    const answer = await ask('--load', 'asked', '--location', 'beam-1', '--truck', 'T');
    // Declared 900 kg + 10 % = 990 kg. Forks to 3000 + 100 + 150 = 3250 mm, load centre 1200 / 2 = 600 mm: the plate's
    // 4000 mm line proves 3000 kg. Turn (VDI 2198, load no wider than twice the offset): 2000 + 450 + 1200 + 200 =
    // 3850 mm. Arms (ISO 2330 marking): 1500 x 500 / 600 = 1250 kg each.
    // Mast: 2200 + (5700 - 2200) x 3250 / 5000 + 100 = 4575 mm. Load: 3250 - 100 + 1000 + 100 = 4250 mm.
    // Two such loads in the bay (EN 15620 class 400, from memory): 2 x 800 + 2 x 75 + 75 = 1825 mm.
    // With the 1000 kg beside it the pair and the bay
    // carry 1990 kg, each end frame half of that. Unit: 990 of 1000 kg, past 90 %: thin.
    expect(answer.steps.map(({ rule, outcome, need, have }) => [rule, outcome, need, have])).toEqual([
      ['truck-fit', 'not-applicable', null, null],
      ['operator-authorised', 'not-applicable', null, null],
      ['slot-free', 'pass', 'empty', 'empty'],
      ['depth-reach', 'pass', 1, 1],
      ['lift-height', 'pass', 3250, 5000],
      ['aisle-turn', 'pass', 3850, 4000],
      ['plate-capacity', 'pass', 990, 3000],
      ['tilt-capacity', 'not-applicable', null, null],
      ['centre-height', 'not-applicable', null, null],
      ['fork-length', 'pass', 900, 1100],
      ['fork-arms', 'pass', 495, 1250],
      ['mast-overhead', 'pass', 4575, 6000],
      ['load-overhead', 'pass', 4250, 6000],
      ['opening-height', 'not-applicable', null, null],
      ['sprinkler-clearance', 'not-applicable', null, null],
      ['opening-width', 'pass', 1825, 2700],
      ['pallet-support', 'pass', 1000, 1200],
      ['unit-load', 'thin', 990, 1000],
      ['beam-level', 'pass', 1990, 2400],
      ['bay-load', 'pass', 1990, 5000],
      ['frame-load', 'pass', 995, 4000],
      ['rack-condition', 'pass', 'sound', 'sound'],
    ]);
    // Most: the least of plate 3000, arms 2500, unit 1000, pair 1400, bay 4000, frame 2 x (4000 - 500) = 7000.
    expect([answer.verdict, answer.governing, answer.mostKg]).toEqual(['thin', 'unit-load', 1000]);
  });

  it.each([
    { args: ['--stock', 'empty'], rule: 'beam-level', need: 990, why: 'empty racks: only the load itself' },
    { args: ['--from', 'beam-2'], rule: 'beam-level', need: 990, why: 'what is moved does not count twice' },
    { args: ['--operation', 'retrieve'], rule: 'beam-level', need: null, why: 'taking down adds nothing' },
    { args: ['--as-of', '2026-09-14'], rule: 'truck-fit', need: 'in service', why: 'a date is a time too' },
    { args: ['--operator', 'O'], rule: 'operator-authorised', need: 'counterbalance', why: 'who drives' },
  ])('heeds $args ($why)', async ({ args, rule, need }) => {
    const answer = await ask('--load', 'asked', '--location', 'beam-1', '--truck', 'T', ...args);
    expect(answer.steps.find((step) => step.rule === rule)?.need).toBe(need);
  });

  it('judges fitness only at a time that is given', async () => {
    const answer = await ask('--load', 'asked', '--location', 'beam-1', '--as-of', '2026-09-14T06:00:00Z');
    expect([answer.verdict, answer.governing]).toEqual(['unproven', 'truck-fit']);
    expect(answer.steps[0]).toMatchObject({ rule: 'truck-fit', outcome: 'unknown', cause: 'never-checked' });
  });
});
