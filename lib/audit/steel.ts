import { EMPTY } from '../grid/compiled-site.ts';
import type { Condition, Run } from '../model/racking.ts';
import type { AuditCase } from './audit-case.ts';
import type { Finding, Subject } from './finding.ts';
import { figuresOf, makeFinding } from './make-finding.ts';

/**
 * Which damaged levels and frames are still loaded? A frame is loaded by what stands on the beam levels of the bays
 * beside it. Red: emptied at once (`stop`). Amber: may stay, is not reloaded once emptied (`plan`). Source: EN 15635.
 */
export function damagedSteelLoaded(audit: AuditCase): Finding[] {
  const pallets = palletsOnLevels(audit);
  const findings: Finding[] = [];
  let levelRow = 0;
  for (const run of audit.index.site.runs) {
    const onBeams = new Array<number>(run.bays.length).fill(0);
    for (const [at, bay] of run.bays.entries()) {
      for (const { level, condition } of bay.levels) {
        const count = pallets[levelRow]!;
        if (level > 0) onBeams[at]! += count;
        findings.push(...loaded(condition, { of: 'level', run: run.id, bay: bay.id, level }, count));
        levelRow += 1;
      }
    }
    findings.push(...loadedFrames(run, onBeams));
  }
  return findings;
}

function loadedFrames(run: Run, onBeams: readonly number[]): Finding[] {
  return run.frames.flatMap((frame, at) => {
    const count = (onBeams[at - 1] ?? 0) + (onBeams[at] ?? 0);
    return loaded(frame.condition, { of: 'frame', run: run.id, frame: frame.id }, count);
  });
}

function palletsOnLevels({ site }: AuditCase): Uint32Array {
  const pallets = new Uint32Array(site.levels.length);
  for (const [at, level] of site.levelOf.entries()) if (site.standing[at] !== EMPTY) pallets[level]! += 1;
  return pallets;
}

function loaded(condition: Condition, subject: Subject, count: number): Finding[] {
  if (condition === 'sound' || count === 0) return [];
  const red = condition === 'red';
  return [
    makeFinding({
      kind: red ? 'red-steel-loaded' : 'amber-steel-loaded',
      severity: red ? 'stop' : 'plan',
      subject,
      figures: figuresOf(count, 0, 'pallets'),
      source: { of: 'standard', name: 'EN 15635' },
      advice: red ? 'empty-and-cordon' : 'do-not-reload',
    }),
  ];
}
