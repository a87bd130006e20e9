import type { SiteIndex } from '../model/site-index.ts';
import { type AuditCase, openAudit, type Reference } from './audit-case.ts';
import { endingAuthorisations } from './authorisations.ts';
import { FINDING_KINDS, type Finding, type FindingKind, SEVERITIES, type Severity } from './finding.ts';
import { heavyHandPicks } from './hand-picks.ts';
import { thinDeclared, unweighedLoads } from './masses.ts';
import { missingNoticeFacts } from './notice-gaps.ts';
import { oneTruck } from './one-truck.ts';
import { tooTall, tooWide } from './opening.ts';
import { outOfReach } from './out-of-reach.ts';
import { rackOverloads, unitOverloads } from './overload.ts';
import { plateGaps } from './plate-gaps.ts';
import { DEFAULT_REFERENCE } from './reference-load.ts';
import { nearSprinklers } from './sprinklers.ts';
import { damagedSteelLoaded } from './steel.ts';
import { stranded } from './stranded.ts';
import { underSupported } from './support.ts';
import { countTakeDown, type TakeDownCounts, takersOf } from './take-down.ts';
import { missingTruckFacts } from './truck-facts.ts';
import { trucksOutOfService } from './truck-service.ts';
import { unplaceable } from './unplaceable.ts';

const FAMILIES: readonly ((audit: AuditCase) => Finding[])[] = [
  unitOverloads,
  rackOverloads,
  damagedSteelLoaded,
  underSupported,
  tooTall,
  tooWide,
  nearSprinklers,
  stranded,
  oneTruck,
  unweighedLoads,
  thinDeclared,
  plateGaps,
  trucksOutOfService,
  missingTruckFacts,
  endingAuthorisations,
  missingNoticeFacts,
  outOfReach,
  unplaceable,
  heavyHandPicks,
];

export type AuditCounts = {
  locations: number;
  trucks: number;
  storedLoads: number;
  /** Stored loads by how many trucks can take them down: trucks fit at the time asked about, or all without a time. */
  takeDown: TakeDownCounts;
  findings: Record<Severity, number>;
  /** Kinds that occur, in the order of FINDING_KINDS. */
  kinds: Partial<Record<FindingKind, number>>;
};

/** What is asked of a site as a whole, and what was found. */
export type Audit = { asOf: string | null; reference: Reference; counts: AuditCounts; findings: Finding[] };

/**
 * What about this site should a person act on?
 *
 * Every finding once, the gravest first: by severity, then kind, then excess (not known: last), then as the site lists
 * them. Pure: time comes in as asOf (null: what depends on a time is not judged). Throws on an asOf that is no time.
 * `onProgress` hears the share that is done, from 0 to 1: the question of who can take down what, then each family.
 */
export function auditSite(
  index: SiteIndex,
  question: { asOf: string | null; reference?: Reference },
  onProgress?: (done: number) => void,
): Audit {
  const { asOf, reference = DEFAULT_REFERENCE } = question;
  const audit = openAudit(index, { asOf, reference });
  const stages = FAMILIES.length + 1;
  onProgress?.(1 / stages);
  const findings = FAMILIES.flatMap((find, at) => {
    const found = find(audit);
    onProgress?.((at + 2) / stages);
    return found;
  }).sort(gravestFirst);
  return { asOf, reference, counts: countFindings(audit, findings), findings };
}

function gravestFirst(a: Finding, b: Finding): number {
  return (
    SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity) ||
    FINDING_KINDS.indexOf(a.kind) - FINDING_KINDS.indexOf(b.kind) ||
    excessRank(b) - excessRank(a)
  );
}

/** Below every excess that is known, but never so far that two of them subtract to NaN. */
function excessRank({ figures }: Finding): number {
  return figures.excess ?? -Number.MAX_VALUE;
}

function countFindings(audit: AuditCase, findings: readonly Finding[]): AuditCounts {
  const bySeverity: Record<Severity, number> = { stop: 0, plan: 0, note: 0 };
  const byKind = new Map<FindingKind, number>();
  for (const { severity, kind } of findings) {
    bySeverity[severity] += 1;
    byKind.set(kind, (byKind.get(kind) ?? 0) + 1);
  }
  return {
    locations: audit.places.length,
    trucks: audit.index.site.trucks.length,
    storedLoads: audit.stored.length,
    takeDown: countTakeDown(takersOf(audit, audit.fit ?? audit.fleet)),
    findings: bySeverity,
    kinds: Object.fromEntries(
      FINDING_KINDS.flatMap((kind) => (byKind.has(kind) ? [[kind, byKind.get(kind)!]] : [])),
    ),
  };
}
