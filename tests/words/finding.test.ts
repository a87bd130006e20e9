import { describe, expect, it } from 'vitest';
import { auditSite } from '../../lib/audit/audit-site.ts';
import { ADVICE_CODES, FINDING_KINDS, type Finding, SEVERITIES } from '../../lib/audit/finding.ts';
import { figuresOf, makeFinding, ruleSource } from '../../lib/audit/make-finding.ts';
import { DEMO_AS_OF, demoSite } from '../../lib/demo/demo-site.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { findingSentence, findingSourceWords, findingWithAdvice } from '../../lib/words/finding.ts';
import { adviceSentence } from '../../lib/words/finding-advice.ts';
import { findingTitle, severityMeaning, severityWord } from '../../lib/words/finding-kind.ts';
import { findAll } from '../audit/find.ts';
import { makeBay, makeFrame, makeLevel, makeLoad, makeRun, makeTruck } from '../site-builder.ts';

const SENTENCE = /^[A-Z0-9].*\.$/s;
const plain = (text: string) => text.replaceAll('\u202f', ' ');

/** Sites that between them bring up every kind the demo depot lacks. */
const others: Finding[] = findAll({
  runs: [
    makeRun({
      frameDepthMm: 1300,
      bays: [
        makeBay('a1', {
          clearWidthMm: 1800,
          maxBayLoadKg: null,
          levels: [
            makeLevel('a1', 0),
            makeLevel('a1', 1, { maxUnitKg: null }),
            makeLevel('a1', 2, { pairCapacityKg: 500 }),
          ],
        }),
        makeBay('a2'),
      ],
      frames: [makeFrame({ id: 'a-f1' }), makeFrame({ id: 'a-f2' }), makeFrame({ id: 'a-f3' })],
    }),
  ],
  aisles: [{ id: 'aisle-1', clearWidthMm: 4200, overheadClearMm: 9000, sprinklerMm: 4800 }],
  trucks: [
    makeTruck({ fittedAttachment: 'clamp' }),
    makeTruck({
      id: 'odd',
      plate: {
        ratings: [
          { mast: 'vertical', liftHeightMm: 3000, loadCentreMm: 600, capacityKg: 1000 },
          { mast: 'vertical', liftHeightMm: 3000, loadCentreMm: 600, capacityKg: 1100 },
          { mast: 'vertical', liftHeightMm: 6000, loadCentreMm: 600, capacityKg: 1200 },
        ],
      },
    }),
  ],
  checks: [],
  loads: [makeLoad(), makeLoad({ id: 'sacks', grossKg: null })],
  stock: [
    { location: 'a1-2-1', load: 'crates' },
    { location: 'a1-2-2', load: 'sacks' },
  ],
});
const all = [...auditSite(indexSite(demoSite()), { asOf: DEMO_AS_OF }).findings, ...others];

describe('the words of findings', () => {
  it('are tried on every kind there is', () => {
    const tried = new Set(all.map(({ kind }) => kind));
    expect(FINDING_KINDS.filter((kind) => !tried.has(kind))).toEqual([]);
  });

  it.each(FINDING_KINDS)('make whole sentences of %s, in kilograms and in pounds', (kind) => {
    expect(findingTitle(kind)).toMatch(/^[A-Z]/);
    for (const finding of all.filter((entry) => entry.kind === kind)) {
      for (const units of ['metric', 'lb-in'] as const) {
        const sentence = findingSentence(finding, units);
        expect(sentence).toMatch(SENTENCE);
        expect(sentence).not.toMatch(/null|undefined|NaN|Infinity|\[object| {2}/);
        expect(findingWithAdvice(finding, units).startsWith(sentence)).toBe(true);
      }
      expect(findingSourceWords(finding.source)).toMatch(/\S/);
    }
  });

  it.each(ADVICE_CODES)('say what to do: %s', (advice) => {
    expect(adviceSentence(advice)).toMatch(SENTENCE);
  });

  it.each(SEVERITIES)('name the severity %s and what it asks for', (severity) => {
    expect(severityWord(severity).toLowerCase()).toBe(severity);
    expect(severityMeaning(severity)).toMatch(SENTENCE);
  });

  it('say at least where a pallet beside was never weighed', () => {
    const overload = others.find(({ kind }) => kind === 'beam-level-overload')!;
    expect(plain(findingSentence(overload, 'metric'))).toBe(
      'Run a, bay a1, level 2: at least 800 kg stands on the pair of beams, which carries 500 kg: 300 kg too much.',
    );
  });

  it('round a need up and a limit down, so that no shown number flatters', () => {
    const finding = makeFinding({
      kind: 'bay-overload',
      severity: 'stop',
      subject: { of: 'bay', run: 'r', bay: 'b' },
      figures: figuresOf(1000.04, 999.96, 'kg'),
      source: ruleSource('bay-load'),
      advice: 'take-load-off',
    });
    expect(plain(findingSentence(finding, 'metric'))).toContain(
      '1 000.1 kg stands on the beams of the bay, which carries 999.9 kg: 0.1 kg',
    );
  });

  it('name a few places and how many more there are', () => {
    const far = all.find(({ subject }) => subject.of === 'locations' && subject.locations.length > 4)!;
    expect(findingSentence(far, 'metric')).toMatch(/^\S+, \S+, \S+ and \d[\d\u202f]* more locations: /);
  });
});
