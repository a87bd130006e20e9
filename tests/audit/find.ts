import type { z } from 'zod';
import { auditSite } from '../../lib/audit/audit-site.ts';
import type { Finding, FindingKind } from '../../lib/audit/finding.ts';
import type { siteSchema } from '../../lib/model/site.ts';
import { makeIndex } from '../site-builder.ts';

/** The checks of the small site are fresh then. */
export const AS_OF = '2026-03-02T10:00:00Z';

type Overrides = Partial<z.input<typeof siteSchema>>;

/** All findings of the small site with these overrides. */
export function findAll(overrides: Overrides = {}, asOf: string | null = AS_OF): Finding[] {
  return auditSite(makeIndex(overrides), { asOf }).findings;
}

/** Those of one kind. */
export function find(kind: FindingKind, overrides: Overrides = {}, asOf: string | null = AS_OF): Finding[] {
  return findAll(overrides, asOf).filter((finding) => finding.kind === kind);
}

/** What the findings of a kind say in short: severity, need and have. */
export function inShort(findings: readonly Finding[]): [string, number | null, number | null][] {
  return findings.map(({ severity, figures }) => [severity, figures.need, figures.have]);
}
