import fc, { type GeneratorValue } from 'fast-check';
import { expect, it } from 'vitest';
import { answerInSlices } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import { editSheet } from '../../lib/grid/edit-sheet.ts';
import type { SiteEdit } from '../../lib/grid/edit-site.ts';
import { type GridSheet, openSheet } from '../../lib/grid/grid-sheet.ts';
import type { GridQuestion } from '../../lib/grid/question.ts';
import type { Site } from '../../lib/model/site.ts';
import { readSite } from '../../lib/model/site-file.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { chance, drawContext, drawLevel, drawLoad, drawSite, drawTruck, pick } from './arbitrary-site.ts';

const SEED = 20260303;

function answered(site: Site, question: GridQuestion): GridSheet {
  const sheet = openSheet(compileSite(indexSite(site)), question);
  for (const _ of answerInSlices(sheet));
  return sheet;
}

function drawQuestion(g: GeneratorValue, site: Site): GridQuestion {
  return {
    load: chance(g, 50) ? { kind: 'stored' } : { kind: 'one', load: drawLoad(g, 9) },
    trucks: site.trucks.map(({ id }) => id),
    context: drawContext(g, site),
  };
}

/** An edit that leaves the locations as they are, and the site after it. */
function drawEdit(g: GeneratorValue, site: Site): { edit: SiteEdit; after: Site } {
  const calm = { g, calm: chance(g, 50) };
  const kind = pick(g, ['truck', 'level', 'load'] as const);
  const after = structuredClone(site);
  if (kind === 'truck') {
    const at = site.trucks.indexOf(pick(g, site.trucks));
    const truck = drawTruck(calm, at, [1750, 3250]);
    after.trucks[at] = truck;
    return { edit: { kind, truck }, after };
  }
  if (kind === 'load') {
    const at = site.loads.indexOf(pick(g, site.loads));
    const load = drawLoad(g, at);
    after.loads[at] = load;
    return { edit: { kind, load }, after };
  }
  const run = pick(g, after.runs);
  const bay = pick(g, run.bays);
  const at = bay.levels.indexOf(pick(g, bay.levels));
  const before = bay.levels[at]!;
  const raisedMm = before.level === 0 ? 0 : pick(g, [0, 1, 50]);
  const redrawn = drawLevel(calm, 'unused', before.level, {
    beamTopMm: before.beamTopMm + raisedMm,
    depthPositions: before.depthPositions,
    columns: 0,
  });
  const level = { ...redrawn, locations: before.locations };
  bay.levels[at] = level;
  return { edit: { kind, runId: run.id, bayId: bay.id, level }, after };
}

it('answers an edited sheet as the edited site compiled anew', () => {
  const kinds = { truck: 0, level: 0, load: 0 };
  let changed = 0;
  fc.assert(
    fc.property(fc.gen(), (g) => {
      let site = drawSite(g);
      const question = drawQuestion(g, site);
      const sheet = answered(site, question);
      for (let i = 0; i < 4; i += 1) {
        const { edit, after } = drawEdit(g, site);
        expect(readSite(after).ok).toBe(true);
        const before = structuredClone(sheet.answer);
        editSheet(sheet, edit);
        expect(sheet.answer, edit.kind).toEqual(answered(after, question).answer);
        kinds[edit.kind] += 1;
        if (JSON.stringify(before) !== JSON.stringify(sheet.answer)) changed += 1;
        site = after;
      }
    }),
    { seed: SEED, numRuns: 150, endOnFailure: true },
  );
  console.info(`seed ${SEED}: edits ${JSON.stringify(kinds)}, ${changed} of them changed an answer`);
  expect(Math.min(...Object.values(kinds))).toBeGreaterThan(100);
  expect(changed).toBeGreaterThan(100);
});

it('refuses an edit of what the site does not have, and of a level whose locations differ', () => {
  fc.assert(
    fc.property(fc.gen(), (g) => {
      const site = drawSite(g);
      const sheet = answered(site, drawQuestion(g, site));
      const run = site.runs[0]!;
      const bay = run.bays[0]!;
      const level = bay.levels[0]!;
      const calm = { g, calm: true };
      expect(() => editSheet(sheet, { kind: 'truck', truck: drawTruck(calm, 99, []) })).toThrow(
        'no truck T99',
      );
      expect(() => editSheet(sheet, { kind: 'load', load: drawLoad(g, 99) })).toThrow('no load L99');
      const edit = { kind: 'level', runId: run.id, bayId: bay.id, level } as const;
      expect(() => editSheet(sheet, { ...edit, bayId: 'none' })).toThrow('no bay none');
      expect(() => editSheet(sheet, { ...edit, level: { ...level, level: 77 } })).toThrow('no level 77');
      const longer = { ...level, locations: [...level.locations, 'new'] };
      expect(() => editSheet(sheet, { ...edit, level: longer })).toThrow('compile the site anew');
    }),
    { seed: SEED, numRuns: 5, endOnFailure: true },
  );
});
