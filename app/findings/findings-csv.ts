import Papa from 'papaparse';
import type { FoundThing } from '@/app/findings/group-findings.ts';
import { guardCell } from '@/lib/import/cell-guard.ts';
import { findingSentence, findingSourceWords, subjectWords } from '@/lib/words/finding.ts';
import { adviceSentence } from '@/lib/words/finding-advice.ts';
import { findingTitle } from '@/lib/words/finding-kind.ts';

const COLUMNS = [
  'severity',
  'kind',
  'title',
  'subject',
  'runs',
  'location',
  'load',
  'trucks',
  'need',
  'have',
  'excess',
  'unit',
  'needIs',
  'source',
  'found',
  'advice',
  'id',
] as const;

/**
 * The listed findings as CSV: masses in kg and lengths in mm, whatever is shown on the screen; blank where a figure is
 * not known. Text that a spreadsheet would take for a formula is made harmless.
 */
export function findingsCsv(things: readonly FoundThing[]): string {
  const lines = things.map(({ finding, where }) => {
    const { figures } = finding;
    const row: Record<(typeof COLUMNS)[number], string | number> = {
      severity: finding.severity,
      kind: finding.kind,
      title: findingTitle(finding.kind),
      subject: subjectWords(finding.subject),
      runs: where.runs.join(' '),
      location: where.place?.id ?? '',
      load: where.load ?? '',
      trucks: where.trucks.join(' '),
      need: figures.need ?? '',
      have: figures.have ?? '',
      excess: figures.excess ?? '',
      unit: figures.unit,
      needIs: figures.needIs,
      source: findingSourceWords(finding.source),
      found: findingSentence(finding, 'metric'),
      advice: adviceSentence(finding.advice),
      id: finding.id,
    };
    return COLUMNS.map((column) => {
      const cell = row[column];
      return typeof cell === 'string' ? guardCell(cell) : cell;
    });
  });
  return Papa.unparse({ fields: [...COLUMNS], data: lines }, { newline: '\r\n' });
}
