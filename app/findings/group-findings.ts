import type { FindingsQuery } from '@/app/findings/findings-query.ts';
import type { Whereabouts } from '@/app/findings/where-found.ts';
import {
  FINDING_KINDS,
  type Finding,
  type FindingKind,
  SEVERITIES,
  type Severity,
} from '@/lib/audit/finding.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { findingSourceWords, findingWithAdvice } from '@/lib/words/finding.ts';
import { findingTitle } from '@/lib/words/finding-kind.ts';

/** A finding with where it is and the words that a search looks in. */
export type FoundThing = { finding: Finding; where: Whereabouts; words: string };
export type FindingGroup = { kind: FindingKind; severity: Severity; things: FoundThing[] };

/** The words of a finding, as they are shown and without their thin spaces, in small letters. */
export function findWords(finding: Finding, { runs, trucks }: Whereabouts, units: DisplayUnits): string {
  const shown = `${findingTitle(finding.kind)} ${findingWithAdvice(finding, units)} ${findingSourceWords(finding.source)}`;
  return plainText(`${shown} ${runs.length > 3 ? '' : runs.join(' ')} ${trucks.join(' ')}`);
}

function plainText(text: string): string {
  return text.replaceAll('\u202f', ' ').toLowerCase();
}

/** Which findings does a query keep? All of its parts at once; of the text every word. The order stays. */
export function keepFindings(
  things: readonly FoundThing[],
  query: FindingsQuery,
  index: SiteIndex,
): FoundThing[] {
  const { severity, kind, truck, where } = query;
  const wanted = plainText(query.find).trim().split(/\s+/);
  const runs =
    where === null
      ? null
      : new Set(
          where.of === 'run'
            ? [where.id]
            : index.site.runs.filter(({ aisleId }) => aisleId === where.id).map(({ id }) => id),
        );
  return things.filter(
    ({ finding, where: at, words }) =>
      (severity === null || finding.severity === severity) &&
      (kind === null || finding.kind === kind) &&
      (truck === null || at.trucks.includes(truck)) &&
      (runs === null || at.runs.some((run) => runs.has(run))) &&
      wanted.every((word) => words.includes(word)),
  );
}

/**
 * Findings by kind, the kind with the gravest finding first. Within a kind the gravest first and then the largest
 * excess, or the largest excess whatever its severity; an excess that is not known comes last.
 */
export function groupFindings(things: readonly FoundThing[], order: FindingsQuery['order']): FindingGroup[] {
  const groups = new Map<FindingKind, FoundThing[]>();
  for (const thing of things) {
    const group = groups.get(thing.finding.kind);
    if (group) group.push(thing);
    else groups.set(thing.finding.kind, [thing]);
  }
  const rank = ({ finding }: FoundThing) => SEVERITIES.indexOf(finding.severity);
  const excess = ({ finding }: FoundThing) => finding.figures.excess ?? -Number.MAX_VALUE;
  return [...groups]
    .map(([kind, group]) => ({
      kind,
      severity: SEVERITIES[Math.min(...group.map(rank))]!,
      things: group.sort((a, b) =>
        order === 'severity'
          ? rank(a) - rank(b) || excess(b) - excess(a)
          : excess(b) - excess(a) || rank(a) - rank(b),
      ),
    }))
    .sort(
      (a, b) =>
        SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity) ||
        FINDING_KINDS.indexOf(a.kind) - FINDING_KINDS.indexOf(b.kind),
    );
}

/** How many findings there are of each severity. */
export function countSeverities(things: readonly FoundThing[]): Record<Severity, number> {
  const counts: Record<Severity, number> = { stop: 0, plan: 0, note: 0 };
  for (const { finding } of things) counts[finding.severity] += 1;
  return counts;
}
