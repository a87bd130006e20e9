import type { Audit } from '../audit/audit-site.ts';
import { type DisplayUnits, formatLength, formatMass, groupDigits } from '../units/format-quantity.ts';
import { instantWords } from './plain-words.ts';

/** What an audit looked at: as of when, how much of what, and the load that every location was tried with. */
export function auditedWords({ asOf, counts, reference }: Audit, units: DisplayUnits): string {
  const when =
    asOf === null ? 'Checks, holds and expiry dates not judged' : `Judged as of ${instantWords(asOf)}`;
  const [depth, width, height] = [reference.depthMm, reference.widthMm, reference.heightMm].map((mm) =>
    formatLength(mm, units, 'up'),
  );
  const tried = `${formatMass(reference.massKg, units, 'up')}, ${depth} deep, ${width} wide, ${height} high`;
  const { locations, storedLoads, trucks } = counts;
  return `${when}. ${groupDigits(locations)} locations, ${groupDigits(storedLoads)} pallets standing, ${groupDigits(trucks)} trucks; reach tried with ${tried}.`;
}
