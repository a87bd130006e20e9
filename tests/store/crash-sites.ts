import type { Site } from '../../lib/model/site.ts';
import { bigSite } from './big-site.ts';

export type CrashWork = 'import' | 'save';

const LOCATIONS = { A: 800, B: 1200 };

/** The site that stands before the first change. */
export function firstSite(): Site {
  return { ...bigSite(LOCATIONS.A), site: { name: 'A', policy: {} } };
}

/** The site after the next change: the other of two for an import, its first run damaged or mended for a save. */
export function nextSite(site: Site, work: CrashWork): Site {
  if (work === 'import') {
    const name = site.site.name === 'A' ? 'B' : 'A';
    return { ...bigSite(LOCATIONS[name]), site: { name, policy: {} } };
  }
  const [run, ...others] = site.runs;
  const condition = run!.frames[0]!.condition === 'sound' ? 'amber' : 'sound';
  const frames = run!.frames.map((frame) => ({ ...frame, condition }) as const);
  const bays = run!.bays.map((bay) => ({
    ...bay,
    levels: bay.levels.map((level) => ({ ...level, condition }) as const),
  }));
  return { ...site, runs: [{ ...run!, frames, bays }, ...others] };
}
