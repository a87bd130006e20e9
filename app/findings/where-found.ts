import type { Finding, Subject } from '@/lib/audit/finding.ts';
import type { Bay, Run } from '@/lib/model/racking.ts';
import { byId, type Place, type SiteIndex } from '@/lib/model/site-index.ts';

/** Where a finding is to be looked at: the runs it concerns, the place to mark, the trucks and the load it names. */
export type Whereabouts = {
  runs: readonly string[];
  place: Place | null;
  trucks: readonly string[];
  load: string | null;
};

/** Answers for each finding of a site where it is; runs are looked up once for all. */
export function whereaboutsIn(index: SiteIndex): (finding: Finding) => Whereabouts {
  const runs = byId(index.site.runs);
  return ({ subject, truck }) => {
    const places = placesAbout(index, runs, subject);
    const run = 'run' in subject ? [subject.run] : [];
    return {
      runs: [...new Set([...run, ...runsAbout(index, subject), ...places.map((place) => place.run.id)])],
      place: places.find(({ id }) => index.stockAt.has(id)) ?? places[0] ?? null,
      trucks: 'truck' in subject ? [subject.truck] : truck === null ? [] : [truck],
      load: 'load' in subject ? subject.load : null,
    };
  };
}

/** The places that a finding is about, those of a frame on both sides of it. What stands there is marked first. */
function placesAbout(index: SiteIndex, runs: ReadonlyMap<string, Run>, subject: Subject): Place[] {
  const placed = (ids: readonly string[]) => ids.flatMap((id) => index.places.get(id) ?? []);
  switch (subject.of) {
    case 'stored-load':
      return placed([subject.location]);
    case 'load':
    case 'locations':
      return placed(subject.locations);
    case 'level': {
      const bay = runs.get(subject.run)?.bays.find(({ id }) => id === subject.bay);
      return placed(bay?.levels.find(({ level }) => level === subject.level)?.locations ?? []);
    }
    case 'bay': {
      const bay = runs.get(subject.run)?.bays.find(({ id }) => id === subject.bay);
      return placed(bay === undefined ? [] : onBeams(bay));
    }
    case 'frame': {
      const run = runs.get(subject.run);
      const at = run?.frames.findIndex(({ id }) => id === subject.frame) ?? -1;
      const beside = run === undefined || at < 0 ? [] : run.bays.slice(Math.max(at - 1, 0), at + 1);
      return placed(beside.flatMap(onBeams));
    }
    case 'aisle':
    case 'truck':
    case 'plate':
    case 'authorisation':
      return [];
  }
}

/** What bears on the frames of a bay does not stand on the floor. */
function onBeams(bay: Bay): string[] {
  return bay.levels.filter(({ level }) => level > 0).flatMap(({ locations }) => locations);
}

function runsAbout(index: SiteIndex, subject: Subject): string[] {
  if (subject.of !== 'aisle') return [];
  return index.site.runs.filter(({ aisleId }) => aisleId === subject.aisle).map(({ id }) => id);
}
