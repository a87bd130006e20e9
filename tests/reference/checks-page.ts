import { NOT_COMPUTED } from './not-computed.ts';
import { answersAround, differenceOf, type LimitCheck, type ReferenceCheck } from './reference-check.ts';
import { CHAPTERS } from './registry.ts';

const OPENING = `# Checked against the outside

Written from tests/reference/registry.ts by \`CHECKS_PAGE=write npx vitest run --config tests/vitest.config.ts tests/reference\`;
a test fails when this page and the registry differ. "Ours" is what the program computes, through functions a screen or
the headless command reaches.

How far a published figure is known: **seen** on a page of the source, a regulator, a university or a standards body;
**secondary source**: on a page that quotes the standard; **from memory**: recalled, to be verified before it is relied on;
**common practice**: a fact of the trade without a source; **derived**: reckoned here by a stated formula, a guard against
change and no more.
`;

/** The whole of docs/checks.md. */
export function renderChecksPage(): string {
  const all = CHAPTERS.flatMap(({ checks }) => checks);
  const limits = CHAPTERS.flatMap((chapter) => chapter.limits);
  const counted = `${all.length} figures and ${limits.length} limits, the limits with three rows each.`;
  const chapters = CHAPTERS.map(({ title, checks, limits: around }) =>
    [`## ${title}`, figureTable(checks), ...(around.length === 0 ? [] : [limitTable(around)])].join('\n\n'),
  );
  return `${[OPENING.trim(), counted, ...chapters, notComputed()].join('\n\n')}\n`;
}

function figureTable(checks: readonly ReferenceCheck[]): string {
  const head = ['quantity', 'for', 'ours', 'published', 'difference', 'accepted', 'source', 'known'];
  return table(
    head,
    checks.map((check) => {
      const { quantity, inputs, unit, published, tolerance, source, confidence, note } = check;
      const difference = differenceOf(check);
      return [
        quantity,
        inputs,
        withUnit(show(check.ours()), unit),
        withUnit(show(published), unit),
        difference === null ? 'same' : show(difference),
        typeof published === 'string' || tolerance === 0 ? 'exact' : `± ${show(tolerance)}`,
        note === undefined ? source : `${source}; ${note}`,
        confidence,
      ];
    }),
  );
}

function limitTable(limits: readonly LimitCheck[]): string {
  return table(
    ['around a limit', 'limit', 'just below', 'at it', 'just above', 'source', 'known'],
    limits.map((limit) => [
      limit.quantity,
      withUnit(show(limit.limit), limit.unit),
      ...answersAround(limit),
      limit.source,
      limit.confidence,
    ]),
  );
}

function notComputed(): string {
  const rows = NOT_COMPUTED.map(({ what, source, why }) => [what, source, why]);
  return ['## Looked up, not computed by the program', table(['what', 'source', 'why not'], rows)].join(
    '\n\n',
  );
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** Four digits after the point at most: enough to see a difference, not so many that binary noise shows. */
function show(value: number | string): string {
  if (typeof value === 'string') return value;
  const rounded = Math.round(value * 1e4) / 1e4;
  return String(rounded === 0 ? 0 : rounded);
}

function withUnit(value: string, unit: string): string {
  return unit === '' ? value : `${value} ${unit}`;
}
